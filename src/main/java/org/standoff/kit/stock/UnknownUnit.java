package org.standoff.kit.stock;

/** The house has no unit of this serial number. */
public final class UnknownUnit extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String serial;

  public UnknownUnit(String serial) {
    super("The house has no unit of this serial number.");
    this.serial = serial;
  }

  public String serial() {
    return serial;
  }
}
