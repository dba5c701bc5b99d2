package org.standoff.kit.pack;

/** The house has no pack of this name. */
public final class UnknownPack extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String pack;

  public UnknownPack(String pack) {
    super("The house has published no pack of this name.");
    this.pack = pack;
  }

  public String pack() {
    return pack;
  }
}
