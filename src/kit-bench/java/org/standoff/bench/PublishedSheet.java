package org.standoff.bench;

import java.net.http.HttpResponse;
import java.util.Locale;
import java.util.Map;

/** A house's whole kit as one sheet over HTTP: new, the same again, and all of it changed. */
final class PublishedSheet {
  private static final int UNITS = 100_000;

  private final RunningService service;
  private final String token;

  PublishedSheet(RunningService service, String token) {
    this.service = service;
    this.token = token;
  }

  void run() {
    Table.row("sheet of 100,000 units, all new", publish(1000));
    Table.row("the same sheet again", publish(1000));
    Table.row("all of them at another rate", publish(1100));
  }

  private String publish(int dayRateMinor) {
    StringBuilder sheet = new StringBuilder("serial,microphone,day_rate_minor\n");
    for (int i = 0; i < UNITS; i++) {
      sheet.append('S').append(i).append(",bench/m-").append(i % 500).append(',');
      sheet.append(dayRateMinor).append('\n');
    }
    long begun = System.nanoTime();
    HttpResponse<String> answer =
        service.send(
            "PUT",
            "/v1/houses/bench-sheet/units",
            token,
            Map.of("Content-Type", "text/csv", "If-Match", "*"),
            sheet.toString());
    double seconds = (System.nanoTime() - begun) / 1e9;
    if (answer.statusCode() != 200) {
      return answer.statusCode() + " " + answer.body();
    }
    return String.format(Locale.ROOT, "%.2f s, %,.0f per second", seconds, UNITS / seconds);
  }
}
