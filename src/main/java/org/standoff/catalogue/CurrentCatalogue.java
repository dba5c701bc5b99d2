package org.standoff.catalogue;

/** Gives the snapshot of now. Take it once for a request, and work on what was given. */
@FunctionalInterface
public interface CurrentCatalogue {

  Catalogue get();
}
