package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.type.LogicalType;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.regex.Pattern;

/**
 * How whole numbers and moments come into the house: as JSON Schema and RFC 3339 have them, which
 * the description promises, and not as the library does.
 */
final class RequestModule extends SimpleModule {

  private static final long serialVersionUID = 1L;

  RequestModule() {
    super("standoff-requests");
    addDeserializer(Integer.class, new Whole());
    addDeserializer(Long.class, new LongWhole());
    addDeserializer(Instant.class, new Moment());
  }

  /** 3.0 is a whole number too (JSON Schema 2020-12, Core 4.2.3). */
  private static boolean isWhole(JsonParser in, double most) throws IOException {
    if (!in.hasToken(JsonToken.VALUE_NUMBER_FLOAT)) {
      return false;
    }
    double value = in.getDoubleValue();
    return value == Math.rint(value) && Math.abs(value) <= most;
  }

  private static final class Whole extends StdScalarDeserializer<Integer> {

    private static final long serialVersionUID = 1L;

    Whole() {
      super(Integer.class);
    }

    /** Texts are no numbers, by the rules for this type. */
    @Override
    public LogicalType logicalType() {
      return LogicalType.Integer;
    }

    @Override
    public Integer deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return isWhole(in, Integer.MAX_VALUE)
          ? Integer.valueOf((int) in.getDoubleValue())
          : _parseInteger(in, context, Integer.class);
    }
  }

  private static final class LongWhole extends StdScalarDeserializer<Long> {

    private static final long serialVersionUID = 1L;

    /** Beyond it a binary64 skips some of them. */
    private static final double MOST = 0x1p53;

    LongWhole() {
      super(Long.class);
    }

    /** Texts are no numbers, by the rules for this type. */
    @Override
    public LogicalType logicalType() {
      return LogicalType.Integer;
    }

    @Override
    public Long deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return isWhole(in, MOST)
          ? Long.valueOf((long) in.getDoubleValue())
          : _parseLong(in, context, Long.class);
    }
  }

  /** The library also reads seconds since 1970, offsets without a colon and years without end. */
  private static final class Moment extends StdScalarDeserializer<Instant> {

    private static final long serialVersionUID = 1L;
    private static final Pattern FORM = Pattern.compile(JsonSetup.MOMENT);

    Moment() {
      super(Instant.class);
    }

    @Override
    public Instant deserialize(JsonParser in, DeserializationContext context) throws IOException {
      String text = in.hasToken(JsonToken.VALUE_STRING) ? in.getText() : "";
      if (FORM.matcher(text).matches()) {
        try {
          return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException noSuchDay) {
          return (Instant)
              context.handleWeirdStringValue(Instant.class, text, "%s", noSuchDay.getMessage());
        }
      }
      return (Instant) context.handleUnexpectedToken(Instant.class, in);
    }
  }
}
