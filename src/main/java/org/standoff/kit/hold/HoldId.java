package org.standoff.kit.hold;

import java.time.Instant;
import java.util.UUID;

/** Ids of holds: UUIDs of version 7 (RFC 9562, 5.7), so that later ones sort behind. */
final class HoldId {

  private static final long VERSION = 0x7000L;
  private static final long RANDOM_IN_UPPER = 0x0FFFL;
  private static final int TIME_SHIFT = 16;

  private HoldId() {}

  static UUID at(Instant moment) {
    // version 4 has the same variant and 74 of the random bits that are wanted
    UUID random = UUID.randomUUID();
    long upper =
        moment.toEpochMilli() << TIME_SHIFT
            | VERSION
            | random.getMostSignificantBits() & RANDOM_IN_UPPER;
    return new UUID(upper, random.getLeastSignificantBits());
  }
}
