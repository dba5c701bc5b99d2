package org.standoff.rest.stereo;

import java.util.ArrayList;
import java.util.List;
import org.standoff.answers.stereo.GeometryAnswer.AskedPair;
import org.standoff.rest.media.Svg;
import org.standoff.rest.media.Words;

/** The head of a picture: which pair it is. */
final class PairHeading {
  private static final double LEFT = 24;

  private PairHeading() {}

  static String title(AskedPair pair) {
    return pair.title().orElse("Capsules as given");
  }

  /** Measures in one line: {@code cardioid · spacing 0.17 m · angle 110.0°}. */
  static String measures(AskedPair pair) {
    List<String> parts = new ArrayList<>();
    pair.pattern().ifPresent(parts::add);
    pair.parameters().forEach((name, value) -> parts.add(measure(name, value)));
    pair.place().ifPresent(place -> parts.add(Words.metres(place.positionM().z()) + " high"));
    pair.microphone().ifPresent(parts::add);
    return String.join(" · ", parts);
  }

  static void draw(Svg svg, AskedPair pair, String subject) {
    svg.text(new Svg.At(LEFT, 30), Svg.Anchor.START, 18, title(pair) + ": " + subject);
    svg.text(new Svg.At(LEFT, 50), Svg.Anchor.START, 13, "#333", measures(pair));
  }

  private static String measure(String name, double value) {
    int unit = name.lastIndexOf('_');
    String word = name.substring(0, unit).replace('_', ' ');
    return switch (name.substring(unit + 1)) {
      case "m" -> word + " " + Words.of(value, 3) + " m";
      case "deg" -> word + " " + Words.degrees(value);
      default -> name.replace('_', ' ') + " " + Words.of(value, 2);
    };
  }
}
