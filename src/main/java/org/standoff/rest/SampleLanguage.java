package org.standoff.rest;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A language in which a call is written down, with no more than comes with it; Lua with LuaSocket.
 * The token is read from the environment and never stands in a text. Each ends badly where the
 * service refuses, and shows what it says.
 */
enum SampleLanguage {
  SHELL {
    @Override
    String write(SampleCall call) {
      StringBuilder text = new StringBuilder("curl -sS --fail-with-body");
      if (!call.method().equals(READ)) {
        text.append(" -X ").append(call.method());
      }
      text.append(' ').append(quoted(call.url()));
      call.headers().forEach((name, value) -> next(text, "-H " + quoted(name + ": " + value)));
      if (call.needsToken()) {
        next(text, "-H \"Authorization: Bearer $" + TOKEN + "\"");
      }
      call.body().ifPresent(body -> next(text, "--data-binary " + quoted(body)));
      return text.append('\n').toString();
    }

    private void next(StringBuilder text, String argument) {
      text.append(" \\\n  ").append(argument);
    }

    private String quoted(String text) {
      return "'" + text.replace("'", "'\\''") + "'";
    }
  },

  PYTHON {
    @Override
    String write(SampleCall call) {
      String imports =
          (call.needsToken() ? "import os\n" : "") + "import urllib.error\nimport urllib.request\n";
      return imports
          + call.body().map(body -> "\nbody = r'''" + body + "'''\n").orElse("\n")
          + "request = urllib.request.Request(\n    "
          + inQuotes(call.url())
          + ",\n    method="
          + inQuotes(call.method())
          + ",\n"
          + headers(call)
          + (call.body().isPresent() ? "    data=body.encode(),\n" : "")
          + ")\ntry:\n    with urllib.request.urlopen(request) as answer:\n"
          + "        print(answer.read().decode())\n"
          + "except urllib.error.HTTPError as refused:\n"
          + "    raise SystemExit(refused.read().decode())\n";
    }

    private String headers(SampleCall call) {
      Map<String, String> pairs = literals(call, " + os.environ[\"" + TOKEN + "\"]");
      return table(pairs, "%s: %s", "    headers={");
    }
  },

  LUA {
    @Override
    String write(SampleCall call) {
      String body = call.body().map(text -> "local body = [==[\n" + text + "]==]\n").orElse("");
      String sent =
          call.body().isPresent() ? "  source = require(\"ltn12\").source.string(body),\n" : "";
      return "local http = require(\"socket.http\")\nlocal answer = {}\n"
          + body
          + "local _, status = assert(http.request({\n  url = "
          + inQuotes(call.url())
          + ",\n  method = "
          + inQuotes(call.method())
          + ",\n"
          + headers(call)
          + sent
          + "  sink = require(\"ltn12\").sink.table(answer),\n}))\n"
          + "assert(status < 300, table.concat(answer))\nprint(table.concat(answer))\n";
    }

    private String headers(SampleCall call) {
      Map<String, String> pairs = literals(call, " .. os.getenv(\"" + TOKEN + "\")");
      if (call.body().isPresent()) {
        pairs.put(inQuotes("Content-Length"), "#body");
      }
      return table(pairs, "[%s] = %s", "  headers = {");
    }
  };

  private static final String READ = "GET";
  private static final String AUTHORIZATION = "Authorization";

  /** Where a caller keeps its token. */
  private static final String TOKEN = "STANDOFF_TOKEN";

  abstract String write(SampleCall call);

  /** As Python and Lua alike write a text. */
  private static String inQuotes(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  /**
   * Headers as they stand in a program.
   *
   * @param token what appends the token to a text
   */
  private static Map<String, String> literals(SampleCall call, String token) {
    Map<String, String> pairs = new TreeMap<>();
    call.headers().forEach((name, value) -> pairs.put(inQuotes(name), inQuotes(value)));
    if (call.needsToken()) {
      pairs.put(inQuotes(AUTHORIZATION), inQuotes("Bearer ") + token);
    }
    return pairs;
  }

  private static String table(Map<String, String> pairs, String pair, String opening) {
    return pairs.isEmpty()
        ? ""
        : pairs.entrySet().stream()
            .map(one -> pair.formatted(one.getKey(), one.getValue()))
            .collect(Collectors.joining(", ", opening, "},\n"));
  }

  /** Its name for people. */
  String title() {
    String name = name().toLowerCase(Locale.ROOT);
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }
}
