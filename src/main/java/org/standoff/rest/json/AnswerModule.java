package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializationConfig;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.BeanSerializerModifier;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.OptionalDouble;

/**
 * How figures leave the house: rounded by unit, and a level type of the core as its bare number.
 */
final class AnswerModule extends SimpleModule {

  private static final long serialVersionUID = 1L;
  private static final String CORE = "org.standoff.";
  private static final String LEVEL = "db";

  private final transient RoundedNumber number = new RoundedNumber();

  AnswerModule() {
    super("standoff-answers");
    addSerializer(Double.class, number);
    addSerializer(double.class, number);
    addSerializer(double[].class, new Figures());
    addSerializer(OptionalDouble.class, new Perhaps());
    setSerializerModifier(new Levels());
  }

  private final class Figures extends JsonSerializer<double[]> {

    @Override
    public void serialize(double[] values, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeStartArray();
      for (double value : values) {
        number.write(value, out);
      }
      out.writeEndArray();
    }
  }

  private final class Perhaps extends JsonSerializer<OptionalDouble> {

    @Override
    public boolean isEmpty(SerializerProvider provider, OptionalDouble value) {
      return value == null || value.isEmpty();
    }

    @Override
    public void serialize(OptionalDouble value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      number.write(value.orElse(Double.NaN), out);
    }
  }

  /**
   * The types that keep peak and rms apart have one component, and a name outside that says which.
   */
  private final class Levels extends BeanSerializerModifier {

    private static final long serialVersionUID = 1L;

    @Override
    public JsonSerializer<?> modifySerializer(
        SerializationConfig config, BeanDescription bean, JsonSerializer<?> serializer) {
      Class<?> type = bean.getBeanClass();
      if (!type.isRecord() || !type.getName().startsWith(CORE)) {
        return serializer;
      }
      RecordComponent[] components = type.getRecordComponents();
      boolean level =
          components.length == 1
              && components[0].getType() == double.class
              && components[0].getName().equals(LEVEL);
      return level ? new BareLevel(components[0]) : serializer;
    }
  }

  private final class BareLevel extends JsonSerializer<Object> {

    private final RecordComponent component;

    BareLevel(RecordComponent component) {
      this.component = component;
    }

    @Override
    public void serialize(Object level, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      try {
        number.write((double) component.getAccessor().invoke(level), out);
      } catch (ReflectiveOperationException impossible) {
        throw new IOException("A level type of the core is public", impossible);
      }
    }
  }
}
