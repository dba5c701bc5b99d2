package org.standoff.rest.media;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class SvgTest {
  @Test
  void whatAnybodyTypesStaysText() throws Exception {
    String typed = "</text><script>alert('x')</script>\u0000\ud800 & \"";
    Svg svg = new Svg(100, typed, typed);
    svg.text(new Svg.At(1, 2), Svg.Anchor.START, 12, typed);
    String document = svg.document(50);
    assertThat(document).doesNotContain("<script").doesNotContain("\u0000");
    Document parsed = parsed(document);
    assertThat(parsed.getElementsByTagName("text").item(0).getTextContent())
        .isEqualTo("</text><script>alert('x')</script>\ufffd\ufffd & \"");
  }

  @Test
  void aDrawingNamesItselfAndIsWellFormed() throws Exception {
    Svg svg = new Svg(100, "Title", "What it shows");
    svg.line(new Svg.At(0, 0), new Svg.At(10.04, -0.01), Svg.Pen.DASHED)
        .circle(new Svg.At(5, 5), 2, Svg.Pen.BLACK)
        .box(new Svg.At(1, 1), 3, 4, Svg.Pen.THIN.filled("#ccc"))
        .path(List.of(new Svg.At(0, 0), new Svg.At(1.25, 3)), true, Svg.Pen.LINE);
    Document parsed = parsed(svg.document(50));
    assertThat(parsed.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Title");
    assertThat(parsed.getElementsByTagName("desc").item(0).getTextContent())
        .isEqualTo("What it shows");
    assertThat(parsed.getDocumentElement().getAttribute("aria-labelledby")).isEqualTo("title desc");
    assertThat(svg.document(50))
        .contains("x2=\"10\" y2=\"0\"")
        .contains("d=\"M0 0 L1.2 3 Z\"")
        .doesNotContain("style=");
  }

  private static Document parsed(String document) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(document)));
  }
}
