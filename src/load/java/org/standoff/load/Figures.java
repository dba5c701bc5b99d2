package org.standoff.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the system tells about a process, and about itself; -1 where it tells nothing. */
public final class Figures {

  private Figures() {}

  /** Memory of a process that is in use, in MB. */
  static long residentMb(long process) {
    return status(process, "VmRSS:\\s+(\\d+)") / 1024;
  }

  static long threads(long process) {
    return status(process, "Threads:\\s+(\\d+)");
  }

  private static long status(long process, String pattern) {
    try {
      Matcher line =
          Pattern.compile(pattern)
              .matcher(Files.readString(Path.of("/proc/" + process + "/status")));
      return line.find() ? Long.parseLong(line.group(1)) : -1;
    } catch (IOException notLinux) {
      return -1;
    }
  }

  /** Mean of the processes that wanted a core, over the last minute. */
  public static String load() {
    try {
      return Files.readString(Path.of("/proc/loadavg")).split(" ")[0];
    } catch (IOException notLinux) {
      return "unknown";
    }
  }

  static void row(String name, String format, Object... values) {
    System.out.printf(Locale.ROOT, "%-44s %s%n", name, String.format(Locale.ROOT, format, values));
  }
}
