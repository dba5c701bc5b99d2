package org.standoff.rest.http;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The operation will go. Stands beside {@link Deprecated}, which marks it in the API description;
 * its answers say so by header. Dates are days in UTC, as {@code 2027-01-31}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Retiring {

  /** Since when nobody should begin to use it. */
  String since();

  /** From when on it may be gone; not before {@link #since()}. */
  String until();

  /** Path of what to use instead. */
  String instead();
}
