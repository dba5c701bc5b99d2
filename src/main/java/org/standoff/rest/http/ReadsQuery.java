package org.standoff.rest.http;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The method reads its whole query into a record, and the reader refuses what the record doesn't
 * have. The API description lists the members of the record as parameters.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface ReadsQuery {

  Class<? extends Record> value();
}
