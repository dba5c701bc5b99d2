package org.standoff.kit.house;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Houses that a test tells, without a look at the table. */
public final class FixedHouses extends Houses {

  private final Map<String, HouseTerms> known = new ConcurrentHashMap<>();

  public FixedHouses() {
    super(null, List.of());
  }

  public void put(HouseTerms terms) {
    known.put(terms.id(), terms);
  }

  @Override
  public Optional<HouseTerms> find(String id) {
    return Optional.ofNullable(known.get(id));
  }

  @Override
  public List<HouseTerms> list() {
    return List.copyOf(known.values());
  }
}
