package org.standoff.rest;

import io.smallrye.config.ConfigMapping;
import java.net.URI;
import java.util.List;
import java.util.Optional;

/** Whom to tell of a weakness. */
@ConfigMapping(prefix = "standoff.security")
public interface SecurityContactSettings {

  /**
   * Where whoever finds a weakness may report it, as mailto:security@desk.example.org or the
   * address of a page, parted by commas, the best first; told at /.well-known/security.txt, which
   * is not there where it is not set.
   */
  Optional<List<URI>> contact();
}
