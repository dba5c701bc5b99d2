package org.standoff.kit.pack;

import java.util.List;

/** A pack can't be published or taken back as things are. */
public final class PackClash extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<String> inTheWay;

  /**
   * @param detail why, in a sentence for the caller
   * @param inTheWay what stands in the way, each in words
   */
  public PackClash(String detail, List<String> inTheWay) {
    super(detail);
    this.inTheWay = List.copyOf(inTheWay);
  }

  public List<String> inTheWay() {
    return inTheWay;
  }
}
