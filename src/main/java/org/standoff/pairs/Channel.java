package org.standoff.pairs;

import java.util.Arrays;
import java.util.Optional;

/** What a capsule feeds. Mid and side become left and right through a matrix. */
public enum Channel {
  LEFT("left"),
  RIGHT("right"),
  CENTRE("centre"),
  MID("mid"),
  SIDE("side");

  private final String id;

  Channel(String id) {
    this.id = id;
  }

  /** The name in files and answers. */
  public String id() {
    return id;
  }

  public static Optional<Channel> ofId(String id) {
    return Arrays.stream(values()).filter(channel -> channel.id.equals(id)).findFirst();
  }
}
