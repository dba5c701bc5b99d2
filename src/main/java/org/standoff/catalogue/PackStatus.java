package org.standoff.catalogue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How a pack stands.
 *
 * @param id its name
 * @param live the version in use: the last good one, absent where there never was one
 * @param findings about its files as they are now
 * @param lastGoodLoad when the version in use was loaded
 */
public record PackStatus(
    String id, Optional<Pack> live, List<Finding> findings, Optional<Instant> lastGoodLoad) {

  public PackStatus {
    findings = List.copyOf(findings);
  }

  /** Whether the files as they are now can't be used. */
  public boolean isFaulty() {
    return findings.stream().anyMatch(Finding::isFault);
  }
}
