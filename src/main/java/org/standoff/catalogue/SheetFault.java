package org.standoff.catalogue;

/** A place of a sheet from which no record can be made. */
public final class SheetFault extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String pointer;

  SheetFault(String pointer, IllegalArgumentException cause) {
    super(cause.getMessage(), cause);
    this.pointer = pointer;
  }

  /** JSON pointer of the innermost place. */
  public String pointer() {
    return pointer;
  }
}
