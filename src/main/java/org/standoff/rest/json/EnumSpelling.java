package org.standoff.rest.json;

import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.NopAnnotationIntrospector;
import java.util.Locale;

/** Constants of the core are lower case with hyphens on the wire: {@code wide-cardioid}. */
public final class EnumSpelling extends NopAnnotationIntrospector {

  private static final long serialVersionUID = 1L;

  /** How a constant is spelt on the wire. */
  public static String of(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public String[] findEnumValues(
      MapperConfig<?> config, AnnotatedClass type, Enum<?>[] constants, String[] names) {
    // codes of problems are for programs and keep their upper case
    boolean code = type.getRawType().getSimpleName().endsWith("Code");
    for (int i = 0; i < constants.length; i++) {
      if (names[i] == null && !code) {
        names[i] = of(constants[i].name());
      }
    }
    return names;
  }
}
