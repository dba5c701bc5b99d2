package org.standoff.kit.pack;

import java.util.List;
import org.standoff.catalogue.Finding;

/** A pack that can't be used; it carries what is wrong with its files. */
public final class FaultyPack extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Finding> findings;

  public FaultyPack(List<Finding> findings) {
    super("The pack has " + findings.size() + " faults.");
    this.findings = List.copyOf(findings);
  }

  public List<Finding> findings() {
    return findings;
  }
}
