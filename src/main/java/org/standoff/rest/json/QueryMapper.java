package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.util.regex.Pattern;

/** Reads texts of a query as the numbers, truth values and lists that the record wants. */
final class QueryMapper {

  private QueryMapper() {}

  static ObjectMapper from(ObjectMapper json) {
    ObjectMapper mapper = json.copy();
    mapper.setConfig(
        mapper.getDeserializationConfig().with(MapperFeature.ALLOW_COERCION_OF_SCALARS));
    mapper.enable(DeserializationFeature.ACCEPT_SINGLE_VALUE_AS_ARRAY);
    mapper
        .coercionConfigDefaults()
        .setCoercion(CoercionInputShape.EmptyString, CoercionAction.Fail)
        .setCoercion(CoercionInputShape.String, CoercionAction.TryConvert);
    SimpleModule module = new SimpleModule("standoff-query");
    module.addDeserializer(Double.class, new DecimalText());
    module.addDeserializer(Integer.class, new WholeText());
    module.addDeserializer(Boolean.class, new TruthText());
    mapper.registerModule(module);
    return mapper;
  }

  /** The library also reads null as nothing, and blanks around a number. */
  private static final class WholeText extends StdScalarDeserializer<Integer> {

    private static final long serialVersionUID = 1L;
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,18}");

    WholeText() {
      super(Integer.class);
    }

    @Override
    public Integer deserialize(JsonParser in, DeserializationContext context) throws IOException {
      String text = in.getValueAsString();
      if (text != null && WHOLE.matcher(text).matches()) {
        long value = Long.parseLong(text);
        if (value == (int) value) {
          return (int) value;
        }
      }
      return (Integer) context.handleUnexpectedToken(Integer.class, in);
    }
  }

  /** The library also reads null as nothing, and True and TRUE. */
  private static final class TruthText extends StdScalarDeserializer<Boolean> {

    private static final long serialVersionUID = 1L;

    TruthText() {
      super(Boolean.class);
    }

    @Override
    public Boolean deserialize(JsonParser in, DeserializationContext context) throws IOException {
      String text = in.getValueAsString();
      if ("true".equals(text) || "false".equals(text)) {
        return Boolean.valueOf(text);
      }
      return (Boolean) context.handleUnexpectedToken(Boolean.class, in);
    }
  }

  /** The library also reads NaN and Infinity, and texts that are no JSON number. */
  private static final class DecimalText extends StdScalarDeserializer<Double> {

    private static final long serialVersionUID = 1L;
    private static final Pattern NUMBER =
        Pattern.compile("-?\\d{1,40}(\\.\\d{1,40})?([eE][+-]?\\d{1,4})?");

    DecimalText() {
      super(Double.class);
    }

    @Override
    public Double deserialize(JsonParser in, DeserializationContext context) throws IOException {
      String text = in.getValueAsString();
      if (text != null && NUMBER.matcher(text).matches()) {
        double value = Double.parseDouble(text);
        if (Double.isFinite(value)) {
          return value;
        }
      }
      return (Double) context.handleUnexpectedToken(Double.class, in);
    }
  }
}
