package org.standoff.story;

import java.io.IOException;
import java.util.Map;
import java.util.Random;
import org.standoff.fixture.PackagedService;

/** The house of {@link HoldTraffic} for those who load the service. */
public final class LentHouse {

  public static final String HOUSE = HoldTraffic.HOUSE;
  public static final String MICROPHONE = HoldTraffic.MICROPHONE;

  private static final HoldTraffic TRAFFIC = new HoldTraffic();

  private LentHouse() {}

  /** Tells the service its terms and units. */
  public static void tell(PackagedService service) throws IOException {
    HoldTraffic.tellHouse(service);
  }

  /** The body of a request for a hold, with a reference of its own. */
  public static String wish(String reference, Random random) {
    Map.Entry<String, String> wish = TRAFFIC.wish(random);
    return wish.getValue().replace('"' + wish.getKey() + '"', '"' + reference + '"');
  }
}
