package org.standoff.rest.http;

import io.smallrye.config.ConfigMapping;
import java.util.List;
import java.util.Optional;

/** Which pages of other origins may call this service from a browser. */
@ConfigMapping(prefix = "standoff.cross-origin")
public interface CrossOriginSettings {

  /**
   * Origins whose pages may call this service, as https://desk.example.org, parted by commas; * for
   * any. None where it is not set. Programs outside a browser need none of this.
   */
  Optional<List<String>> allowed();
}
