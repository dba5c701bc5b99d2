package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import java.io.IOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Writes a figure rounded by the unit in its name. A figure whose own name has no unit ({@code
 * low}, an entry of a list, an octave) takes that of what it stands in. What is not a number is
 * null.
 */
final class RoundedNumber extends JsonSerializer<Double> {

  private static final int MOST_NAMES = 4096;

  private final Map<String, Rounding> byName = new ConcurrentHashMap<>();

  @Override
  public void serialize(Double value, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    write(value, out);
  }

  void write(double value, JsonGenerator out) throws IOException {
    if (Double.isFinite(value)) {
      double rounded = inPlace(out.getOutputContext()).apply(value);
      if (rounded == (int) rounded) {
        // 13, not 13.0: as sheets and lines have it
        out.writeNumber((int) rounded);
      } else {
        out.writeNumber(rounded);
      }
    } else {
      out.writeNull();
    }
  }

  private Rounding inPlace(JsonStreamContext place) {
    for (JsonStreamContext at = place; at != null; at = at.getParent()) {
      String name = at.getCurrentName();
      if (name != null) {
        Rounding rounding = named(name);
        if (rounding != Rounding.SIGNIFICANT) {
          return rounding;
        }
      }
    }
    return Rounding.SIGNIFICANT;
  }

  private Rounding named(String name) {
    Rounding known = byName.get(name);
    if (known != null) {
      return known;
    }
    Rounding rounding = Rounding.of(name);
    // names of members are few; keys of maps come from catalogue files and must not grow this for
    // ever
    if (byName.size() < MOST_NAMES) {
      byName.put(name, rounding);
    }
    return rounding;
  }
}
