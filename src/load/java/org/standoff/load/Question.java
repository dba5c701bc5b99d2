package org.standoff.load;

import java.net.http.HttpRequest;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.standoff.fixture.PackagedService;
import org.standoff.story.LentHouse;

/** What decent clients ask: calculations, the catalogue and kit, holds too. */
final class Question {

  private static final List<String> CALCULATIONS =
      List.of(
          "/v1/settings?source=core/snare&placement=top&distance_m=0.05"
              + "&microphone=core/ldc-multi-1&preamp=core/preamp-16",
          "/v1/headroom?peak_db_spl=140&microphone=core/ldc-multi-1&preamp=core/preamp-16",
          "/v1/stereo/geometry?pair=core/near-coincident-17-110&azimuth_deg=30&distance_m=2.5",
          "/v1/microphones/core/ldc-multi-1",
          "/v1/microphones?page_size=20");

  private static final List<String> KIT =
      List.of(
          "/v1/availability?microphone="
              + LentHouse.MICROPHONE
              + "&from=2031-03-04T08:00:00Z&to=2031-03-05T08:00:00Z",
          "/v1/houses/" + LentHouse.HOUSE + "/units",
          "/v1/events",
          "/v1/holds");

  private Question() {}

  /** A request of the usual mix: seven calculations, two questions about kit, one hold. */
  static HttpRequest any(PackagedService service, String token, Random random) {
    int kind = random.nextInt(10);
    if (kind < 7) {
      return get(service, CALCULATIONS.get(random.nextInt(CALCULATIONS.size()))).build();
    }
    if (kind < 9) {
      return signed(get(service, KIT.get(random.nextInt(KIT.size()))), token).build();
    }
    String key = UUID.randomUUID().toString();
    return signed(get(service, "/v1/holds"), token)
        .header("Content-Type", "application/json")
        .header("Idempotency-Key", key)
        .POST(HttpRequest.BodyPublishers.ofString(LentHouse.wish(key, random)))
        .build();
  }

  private static HttpRequest.Builder get(PackagedService service, String path) {
    return HttpRequest.newBuilder(service.at(path)).timeout(Duration.ofSeconds(60));
  }

  private static HttpRequest.Builder signed(HttpRequest.Builder request, String token) {
    return request.header("Authorization", "Bearer " + token);
  }
}
