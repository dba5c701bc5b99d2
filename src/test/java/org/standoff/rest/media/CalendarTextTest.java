package org.standoff.rest.media;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** By RFC 5545: 3.1 content lines, 3.3.5 moments, 3.3.11 texts. */
class CalendarTextTest {

  private static String line(String value) {
    CalendarText text = new CalendarText();
    text.text("SUMMARY", value);
    return text.toString();
  }

  /** As a reader joins folded lines and takes escapes away. */
  private static String read(String line) {
    String joined = line.replace("\r\n ", "");
    StringBuilder value = new StringBuilder();
    String escaped = joined.substring("SUMMARY:".length(), joined.length() - 2);
    for (int i = 0; i < escaped.length(); i++) {
      char character = escaped.charAt(i);
      if (character == '\\') {
        i++;
        value.append(escaped.charAt(i) == 'n' ? '\n' : escaped.charAt(i));
      } else {
        value.append(character);
      }
    }
    return value.toString();
  }

  @Test
  void aTextIsEscaped() {
    assertThat(line("a; b, c\\d\ne")).isEqualTo("SUMMARY:a\\; b\\, c\\\\d\\ne\r\n");
  }

  @Test
  void whatWouldBeginALineOfItsOwnStaysText() {
    assertThat(line("x\r\nATTENDEE:y")).isEqualTo("SUMMARY:x\\nATTENDEE:y\r\n");
  }

  @Test
  void aMomentIsInUtcToTheSecond() {
    CalendarText text = new CalendarText();
    text.moment("DTSTART", Instant.parse("2027-06-11T08:00:00.9Z"));
    assertThat(text).hasToString("DTSTART:20270611T080000Z\r\n");
  }

  @Test
  void aLineIsFoldedAfter75OctetsAndNotWithinACharacter() {
    assertThat(line("a".repeat(67))).isEqualTo("SUMMARY:" + "a".repeat(67) + "\r\n");
    assertThat(line("a".repeat(68))).isEqualTo("SUMMARY:" + "a".repeat(67) + "\r\n a\r\n");
    assertThat(line("a".repeat(66) + "é"))
        .as("of two octets, of which one would have room")
        .isEqualTo("SUMMARY:" + "a".repeat(66) + "\r\n é\r\n");
    assertThat(line("a".repeat(64) + "\uD83C\uDFA4"))
        .as("of four octets and two chars")
        .isEqualTo("SUMMARY:" + "a".repeat(64) + "\r\n \uD83C\uDFA4\r\n");
  }

  @Property(seed = "1", tries = 300)
  void everyTextIsReadAsItWasWrittenInLinesOf75Octets(@ForAll String value) {
    String wellFormed = new String(value.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    String written = line(wellFormed);
    assertThat(written).endsWith("\r\n");
    assertThat(written.split("\r\n"))
        .allMatch(part -> part.getBytes(StandardCharsets.UTF_8).length <= 75);
    String printable =
        wellFormed
            .codePoints()
            .filter(
                character ->
                    character == '\n' || character == '\t' || !Character.isISOControl(character))
            .mapToObj(Character::toString)
            .collect(Collectors.joining());
    assertThat(read(written)).isEqualTo(printable);
  }
}
