package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.standoff.rest.problem.Fault;

/**
 * Says where and why a text can't be read. The library knows best what stood there and what it
 * wanted; it goes on to tell character codes, where it began, and which switch of its own would let
 * the text pass, and that helps nobody here.
 */
final class UnreadableJson {

  private static final Pattern CODE = Pattern.compile(" \\(code \\d+[^)]*\\)|, code \\d+");
  private static final Pattern AFTERTHOUGHT =
      Pattern.compile("(: enable `|: maybe a | \\(start marker).*", Pattern.DOTALL);
  private static final Pattern QUOTED = Pattern.compile("(['\"])(.+?)\\1(?!\\w)");

  private UnreadableJson() {}

  static Fault of(JsonProcessingException unreadable) {
    String words = CODE.matcher(unreadable.getOriginalMessage()).replaceAll("");
    String ours = AFTERTHOUGHT.matcher(words).replaceFirst("");
    Matcher quoted = QUOTED.matcher(ours);
    return of(unreadable, ours).found(quoted.find() ? quoted.group(2) : null);
  }

  static Fault of(JsonProcessingException unreadable, String detail) {
    JsonLocation place = unreadable.getLocation();
    return place == null
        ? Fault.atLine(1, 1, detail)
        : Fault.atLine(place.getLineNr(), place.getColumnNr(), detail);
  }
}
