package org.standoff.rest.openapi;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A query that a GET answers. Each of its parameters shows its value under the name of the example,
 * so that values of one name make one call.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(QueryExamples.class)
public @interface QueryExample {

  /** Name of the example: lower case with hyphens. */
  String name();

  /** The query as it is written: {@code source=core/snare&placement=top}. */
  String query();
}
