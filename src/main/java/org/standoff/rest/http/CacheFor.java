package org.standoff.rest.http;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * How long anybody may keep the answer without asking again, and for as long once more while it is
 * asked for anew (RFC 5861). Without it a GET is asked each time.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface CacheFor {

  int seconds();
}
