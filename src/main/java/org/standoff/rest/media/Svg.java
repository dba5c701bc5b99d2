package org.standoff.rest.media;

import java.util.List;
import java.util.Locale;

/**
 * A drawing as SVG 1.1: plain strokes and greys that print in black and white, a title and a
 * description for those who don't see it, every text escaped, no script and no style sheet, so that
 * it shows under the strictest content policy.
 */
public final class Svg {
  public static final String MEDIA_TYPE = "image/svg+xml";

  /** Where a text stands from its point. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  /**
   * How a line is drawn.
   *
   * @param width of the stroke; 0 for none
   * @param dash lengths of stroke and gap, empty for a whole line
   * @param fill grey or {@code none}
   */
  public record Pen(double width, String dash, String fill) {
    /** A whole line of the usual weight. */
    public static final Pen LINE = new Pen(1.2, "", "none");

    /** A line that stays in the background. */
    public static final Pen THIN = new Pen(0.6, "", "none");

    /** A line that measures or limits. */
    public static final Pen DASHED = new Pen(1, "6 4", "none");

    /** A line that leads from a mark to its text. */
    public static final Pen DOTTED = new Pen(0.8, "1.5 3", "none");

    /** A shape on a white ground. */
    public static final Pen WHITE = new Pen(1.2, "", "#fff");

    /** A filled shape. */
    public static final Pen BLACK = new Pen(1.2, "", "#000");

    public Pen filled(String grey) {
      return new Pen(width, dash, grey);
    }
  }

  /** A point of the drawing: right and down from its upper left corner. */
  public record At(double x, double y) {}

  private static final double LETTER = 0.56;

  private final int width;
  private final String title;
  private final String description;
  private final StringBuilder content = new StringBuilder();

  public Svg(int width, String title, String description) {
    this.width = width;
    this.title = title;
    this.description = description;
  }

  public Svg line(At from, At to, Pen pen) {
    content.append("<line");
    number("x1", from.x());
    number("y1", from.y());
    number("x2", to.x());
    number("y2", to.y());
    return end(pen);
  }

  public Svg circle(At middle, double radius, Pen pen) {
    content.append("<circle");
    number("cx", middle.x());
    number("cy", middle.y());
    number("r", radius);
    return end(pen);
  }

  public Svg box(At corner, double across, double down, Pen pen) {
    content.append("<rect");
    number("x", corner.x());
    number("y", corner.y());
    number("width", across);
    number("height", down);
    return end(pen);
  }

  /** A line through all points, closed where {@code closed}. */
  public Svg path(List<At> points, boolean closed, Pen pen) {
    content.append("<path d=\"");
    for (int i = 0; i < points.size(); i++) {
      content.append(i == 0 ? "M" : " L");
      content.append(figure(points.get(i).x())).append(' ').append(figure(points.get(i).y()));
    }
    content.append(closed ? " Z\"" : "\"");
    return end(pen);
  }

  public Svg text(At at, Anchor anchor, double size, String text) {
    return text(at, anchor, size, "#000", text);
  }

  public Svg text(At at, Anchor anchor, double size, String grey, String text) {
    content.append("<text");
    number("x", at.x());
    number("y", at.y());
    number("font-size", size);
    content.append(" text-anchor=\"").append(anchor.name().toLowerCase(Locale.ROOT));
    content.append("\" fill=\"").append(grey).append("\">");
    content.append(escaped(text)).append("</text>\n");
    return this;
  }

  /** About how wide a text comes out; the viewer chooses the fount. */
  public static double widthOf(String text, double size) {
    return text.length() * size * LETTER;
  }

  /** The whole document. */
  public String document(double height) {
    return """
        <svg xmlns="http://www.w3.org/2000/svg" width="%1$d" height="%2$s" viewBox="0 0 %1$d %2$s" \
        role="img" aria-labelledby="title desc" font-family="sans-serif">
        <title id="title">%3$s</title>
        <desc id="desc">%4$s</desc>
        <rect width="%1$d" height="%2$s" fill="#fff"/>
        """
            .formatted(width, figure(height), escaped(title), escaped(description))
        + content
        + "</svg>\n";
  }

  private void number(String name, double value) {
    content.append(' ').append(name).append("=\"").append(figure(value)).append('"');
  }

  private Svg end(Pen pen) {
    content.append(" fill=\"").append(pen.fill()).append('"');
    if (pen.width() > 0) {
      content.append(" stroke=\"#000\"");
      number("stroke-width", pen.width());
    }
    if (!pen.dash().isEmpty()) {
      content.append(" stroke-dasharray=\"").append(pen.dash()).append('"');
    }
    content.append("/>\n");
    return this;
  }

  private static String figure(double value) {
    double tenths = Math.rint(value * 10) / 10 + 0.0;
    return tenths == Math.rint(tenths)
        ? String.valueOf((long) tenths)
        : String.format(Locale.ROOT, "%.1f", tenths);
  }

  private static String escaped(String text) {
    StringBuilder harmless = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              switch (point) {
                case '&' -> harmless.append("&amp;");
                case '<' -> harmless.append("&lt;");
                case '>' -> harmless.append("&gt;");
                case '"' -> harmless.append("&quot;");
                case '\'' -> harmless.append("&#39;");
                default -> harmless.appendCodePoint(isXml(point) ? point : 0xFFFD);
              }
            });
    return harmless.toString();
  }

  /** Char of XML 1.0; control characters and lone surrogates are none. */
  private static boolean isXml(int point) {
    return point == '\t'
        || point == '\n'
        || (point >= 0x20 && point <= 0xD7FF)
        || (point >= 0xE000 && point <= 0xFFFD)
        || point >= 0x10000;
  }
}
