package org.standoff.rest.json;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A request that may be what was read at the same address, so that a caller can read, edit and put
 * back. What the answer has and the request has not is read-only: only the service sets it, and it
 * is passed over where it comes back.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface TakesBack {

  /** The record that is answered. */
  Class<? extends Record> value();
}
