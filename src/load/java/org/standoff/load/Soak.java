package org.standoff.load;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.standoff.fixture.PackagedService;
import org.standoff.story.LentHouse;

/**
 * Calculations, catalogue, kit and holds for minutes on end, some hostile clients among them:
 * memory and threads of the packaged service after each minute. Prints a table and asserts nothing.
 */
public final class Soak {

  private static final int MINUTES = Integer.getInteger("soak.minutes", 10);
  private static final int DECENT = 30;
  private static final int HOSTILE = 2;
  private static final Duration THINKING = Duration.ofMillis(200);

  private Soak() {}

  /** Runs in a folder of its own, the first argument. */
  public static void main(String... arguments) throws Exception {
    Path folder = Path.of(arguments[0]).toAbsolutePath();
    try (PackagedService service =
        PackagedService.start(folder, Map.of("JAVA_TOOL_OPTIONS", "-Xmx256m"))) {
      LentHouse.tell(service);
      String desk = service.token("booker", Optional.empty(), "north-desk");
      for (int minute = 1; minute <= MINUTES; minute++) {
        Crowd crowd =
            new Crowd(service, desk, THINKING).ask(DECENT, HOSTILE, Duration.ofMinutes(1));
        Figures.row(
            "minute " + minute,
            "resident %d MB, %d threads, %d answered, p99 %.0f ms, faults %d, load %s",
            Figures.residentMb(service.pid()),
            Figures.threads(service.pid()),
            crowd.decent().waited().count(),
            crowd.decent().waited().percentileMs(99),
            crowd.decent().faults() + crowd.hostile().faults(),
            Figures.load());
      }
    }
  }
}
