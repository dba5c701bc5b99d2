package org.standoff.rest.openapi;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jboss.jandex.AnnotationInstance;
import org.jboss.jandex.AnnotationValue;
import org.jboss.jandex.ClassInfo;
import org.jboss.jandex.DotName;

/** What a record is called in the description. */
final class SchemaNames {

  private static final DotName TOLD = DotName.createSimple(Schema.class.getName());

  private SchemaNames() {}

  static String of(ClassInfo record) {
    AnnotationInstance told = record.declaredAnnotation(TOLD);
    AnnotationValue name = told == null ? null : told.value("name");
    return name == null ? record.simpleName() : name.asString();
  }
}
