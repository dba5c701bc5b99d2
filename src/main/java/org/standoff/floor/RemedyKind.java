package org.standoff.floor;

/** What can be done about bleed. */
public enum RemedyKind {
  /** Turn the microphone: helps against direct sound only. */
  RE_AIM("re-aim"),
  /** Another pattern of the same body: helps against direct sound, and by its share of the room. */
  OTHER_PATTERN("other-pattern"),
  /** Nearer to what is wanted: helps against everything. */
  CLOSER("closer"),
  /** A screen in between: helps against direct sound only. */
  BARRIER("barrier"),
  /** Absorbing material in the room: helps against the room only. */
  LINING("lining"),
  /** The offender plays softer. */
  SOFTER("softer");

  private final String id;

  RemedyKind(String id) {
    this.id = id;
  }

  /** The word used in answers. */
  public String id() {
    return id;
  }
}
