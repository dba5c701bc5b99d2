package org.standoff.contract.generated;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One request, as it goes over the wire.
 *
 * @param method in capitals
 * @param target path and query, percent-encoded
 * @param headers by name
 * @param body null where there is none
 */
record Call(String method, String target, Map<String, String> headers, byte[] body) {
  private static final int LONGEST_ON_A_LINE = 4_000;

  Call {
    headers = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(headers));
  }

  static Call get(String target) {
    return new Call("GET", target, Map.of("Accept", "application/json"), null);
  }

  Call with(String header, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(header, value);
    return new Call(method, target, more, body);
  }

  Call without(String header) {
    Map<String, String> fewer = new LinkedHashMap<>(headers);
    fewer.remove(header);
    return new Call(method, target, fewer, body);
  }

  /** With other names in its address and, byte for byte, in its body. */
  Call renamed(Map<String, String> names) {
    String address = target;
    String text = body == null ? null : new String(body, ISO_8859_1);
    for (Map.Entry<String, String> name : names.entrySet()) {
      address = address.replace(name.getKey(), name.getValue());
      text = text == null ? null : text.replace(name.getKey(), name.getValue());
    }
    return new Call(method, address, headers, text == null ? null : text.getBytes(ISO_8859_1));
  }

  Call by(String other) {
    return new Call(other, target, headers, body);
  }

  /** The same request for a shell; what is too long or no text goes into a file beside it. */
  String curl(String host) {
    StringBuilder line = new StringBuilder("curl -i --path-as-is -X ").append(method);
    headers.forEach((name, value) -> line.append(" -H ").append(quoted(name + ": " + value)));
    if (body != null && isText(body) && body.length <= LONGEST_ON_A_LINE) {
      line.append(" --data-binary ").append(quoted(new String(body, UTF_8)));
    } else if (body != null) {
      line.append(" --data-binary ").append(quoted("@" + kept()));
    }
    return line.append(' ').append(quoted(host + target)).toString();
  }

  private static boolean isText(byte[] bytes) {
    String text = new String(bytes, UTF_8);
    return text.indexOf('\0') < 0
        && !text.startsWith("@")
        && java.util.Arrays.equals(bytes, text.getBytes(UTF_8));
  }

  private Path kept() {
    try {
      Path folder = Files.createDirectories(Path.of("target", "generated-requests"));
      String name = Integer.toHexString(java.util.Arrays.hashCode(body)) + ".body";
      return Files.write(folder.resolve(name), body);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "'\\''") + "'";
  }

  @Override
  public String toString() {
    String sent = body == null ? "" : " " + Base64.getEncoder().encodeToString(body);
    return method + " " + target + " " + headers + sent;
  }
}
