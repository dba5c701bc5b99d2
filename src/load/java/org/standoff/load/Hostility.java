package org.standoff.load;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.util.List;
import java.util.Random;

/** What clients do that mean no good, or are badly written. */
final class Hostility {

  private static final int PATIENCE_MS = 20_000;
  private static final String JSON = "Content-Type: application/json\r\n";

  private static final String END = "Connection: close\r\nHost: localhost\r\n\r\n";
  private static final String RANKED =
      "/v1/settings?source=core/snare&placement=top&distance_m=0.05&pack=core&preamp=core/preamp-16";

  /** Something done to a connection; who does it may hang up afterwards. */
  private interface Deed {
    boolean awaitsAnswer(OutputStream out) throws IOException, InterruptedException;
  }

  private static final List<Deed> DEEDS =
      List.of(
          out -> write(out, "\u0016\u0003\u0001 no request at all \u0000\u0001\u0002\r\n\r\n"),
          out -> write(out, post("/v1/headroom", "{\"peak_db_spl\": 1e999, ")),
          out -> write(out, post("/v1/settings", "[".repeat(100_000))),
          out -> write(out, post("/v1/settings", "{\"x\": \"" + "y".repeat(2 << 20) + "\"}")),
          out -> write(out, post("/v1/holds", "{}", "Authorization: Bearer a.b.c\r\n")),
          out -> write(out, "GET /v1/" + "../".repeat(500) + "etc/passwd HTTP/1.1\r\n" + END),
          out -> write(out, "BREW /v1/settings HTTP/1.1\r\n" + END),
          out -> write(out, "GET /v1/packs HTTP/1.1\r\nX: " + "z".repeat(100_000) + "\r\n" + END),
          // all microphones ranked, and nobody there to read it
          out -> !write(out, "GET " + RANKED + " HTTP/1.1\r\n" + END),
          out ->
              !write(out, "POST /v1/settings HTTP/1.1\r\n" + JSON + "Content-Length: 99\r\n" + END),
          out -> drip(out, "GET /v1/packs HTTP/1.1\r\nX-Slow: "),
          out -> {
            write(out, "POST /v1/headroom HTTP/1.1\r\n" + JSON + "Content-Length: 999\r\n" + END);
            return drip(out, "{\"peak_db_spl\"");
          });

  private Hostility() {}

  /** Does any of it, and counts what was answered. */
  static void commit(int port, Random random, Tally tally) throws InterruptedException {
    long begun = System.nanoTime();
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setSoTimeout(PATIENCE_MS);
      boolean waits =
          DEEDS.get(random.nextInt(DEEDS.size())).awaitsAnswer(socket.getOutputStream());
      if (!waits) {
        tally.note("hung up");
        return;
      }
      String answer = new String(socket.getInputStream().readNBytes(4096), ISO_8859_1);
      if (answer.matches("(?s)HTTP/1.1 \\d{3}.*")) {
        int status = Integer.parseInt(answer.substring(9, 12));
        tally.answered(
            status, answer.toLowerCase().contains("retry-after:"), System.nanoTime() - begun);
      } else {
        tally.note("cut off");
      }
    } catch (IOException refused) {
      tally.note("cut off");
    }
  }

  private static boolean write(OutputStream out, String bytes) throws IOException {
    out.write(bytes.getBytes(ISO_8859_1));
    out.flush();
    return true;
  }

  private static String post(String path, String body, String... more) {
    return "POST "
        + path
        + " HTTP/1.1\r\nConnection: close\r\n"
        + JSON
        + String.join("", more)
        + "Content-Length: "
        + body.length()
        + "\r\nHost: localhost\r\n\r\n"
        + body;
  }

  /** Three seconds long, a byte at a time. */
  private static boolean drip(OutputStream out, String bytes)
      throws IOException, InterruptedException {
    for (int i = 0; i < 12; i++) {
      write(out, bytes.substring(i, i + 1));
      Thread.sleep(250);
    }
    return false;
  }
}
