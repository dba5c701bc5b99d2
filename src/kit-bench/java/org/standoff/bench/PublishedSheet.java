package org.standoff.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntUnaryOperator;

/** A house's whole kit as one sheet over HTTP: new, the same again, some of it and all changed. */
final class PublishedSheet {
  private static final int UNITS = 100_000;

  private final RunningService service;
  private final String token;

  PublishedSheet(RunningService service, String token) {
    this.service = service;
    this.token = token;
  }

  void run() throws IOException {
    List<String> microphones = microphones();
    Table.row("sheet of 100,000 units, all new", publish(microphones, i -> 1000));
    Table.row("the same sheet again", publish(microphones, i -> 1000));
    Table.row("every seventh at another rate", publish(microphones, i -> i % 7 == 0 ? 900 : 1000));
    Table.row("all of them at another rate", publish(microphones, i -> 1100));
  }

  private List<String> microphones() throws IOException {
    String page = service.send("GET", "/v1/microphones?pack=core", token, Map.of(), "").body();
    return new ObjectMapper().readTree(page).path("items").findValuesAsText("id");
  }

  private String publish(List<String> microphones, IntUnaryOperator dayRateMinor) {
    StringBuilder sheet = new StringBuilder("serial,microphone,day_rate_minor\n");
    for (int i = 0; i < UNITS; i++) {
      sheet.append('S').append(i).append(',').append(microphones.get(i % microphones.size()));
      sheet.append(',').append(dayRateMinor.applyAsInt(i)).append('\n');
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
      return answer.statusCode()
          + " "
          + answer.body().substring(0, Math.min(200, answer.body().length()));
    }
    return String.format(Locale.ROOT, "%.2f s, %,.0f per second", seconds, UNITS / seconds);
  }
}
