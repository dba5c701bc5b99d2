package org.standoff.load;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.standoff.fixture.PackagedService;
import org.standoff.story.LentHouse;

/**
 * Two hundred clients on the packaged service, one in twenty of them hostile: what the decent ones
 * are told and how soon, against ten decent ones alone; memory and threads. Prints a table and
 * asserts nothing.
 */
public final class CrowdBench {

  private static final int SECONDS = Integer.getInteger("bench.crowd.seconds", 60);
  private static final int ALONE = 10;
  private static final int DECENT = 190;
  private static final int HOSTILE = 10;
  private static final Duration THINKING = Duration.ofMillis(1000);

  private CrowdBench() {}

  /** Runs in a folder of its own, the first argument. */
  public static void main(String... arguments) throws Exception {
    Path folder = Path.of(arguments[0]).toAbsolutePath();
    try (PackagedService service =
        PackagedService.start(folder, Map.of("JAVA_TOOL_OPTIONS", "-Xmx256m"))) {
      LentHouse.tell(service);
      String desk = service.token("booker", Optional.empty(), "north-desk");
      Duration time = Duration.ofSeconds(SECONDS);
      new Crowd(service, desk, THINKING).ask(DECENT / 2, 0, time);
      tell("ten decent clients alone", new Crowd(service, desk, THINKING).ask(ALONE, 0, time));
      memory(service);
      for (int round = 1; round <= 2; round++) {
        tell(
            "190 decent clients, 10 hostile, round " + round,
            new Crowd(service, desk, THINKING).ask(DECENT, HOSTILE, time));
        memory(service);
      }
      tell(
          "ten decent clients alone again", new Crowd(service, desk, THINKING).ask(ALONE, 0, time));
      memory(service);
    }
  }

  private static void tell(String who, Crowd crowd) {
    Tally decent = crowd.decent();
    Figures.row(
        who,
        "%d answered, waited p50 %.1f ms, p99 %.1f ms, served p50 %.1f ms, p99 %.1f ms, faults %d,"
            + " load %s",
        decent.waited().count(),
        decent.waited().percentileMs(50),
        decent.waited().percentileMs(99),
        decent.served().percentileMs(50),
        decent.served().percentileMs(99),
        decent.faults() + crowd.hostile().faults(),
        Figures.load());
    Figures.row("  told", "%s", decent.answers());
    if (!crowd.hostile().answers().isEmpty()) {
      Figures.row("  told to the hostile", "%s", crowd.hostile().answers());
    }
  }

  private static void memory(PackagedService service) {
    Figures.row(
        "  resident, threads",
        "%d MB, %d",
        Figures.residentMb(service.pid()),
        Figures.threads(service.pid()));
  }
}
