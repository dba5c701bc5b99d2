package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Map;
import org.standoff.acoustics.PatternName;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.Parameter;

/** Stereo layouts. */
@Singleton
public class PairKind implements CatalogueKind<PairLayout> {

  @Override
  public String name() {
    return "pair";
  }

  @Override
  public String folder() {
    return "pairs";
  }

  @Override
  public Class<PairLayout> type() {
    return PairLayout.class;
  }

  @Override
  public PairLayout read(ItemId id, Sheet sheet) {
    return PairReader.read(id.toString(), sheet);
  }

  @Override
  public Map<String, Object> summary(PairLayout layout) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("technique", layout.technique().id());
    row.put("patterns", layout.patterns().stream().map(PatternName::id).toList());
    for (Parameter parameter : Parameter.all()) {
      row.put(parameter.id(), layout.range(parameter).usual());
    }
    return row;
  }
}
