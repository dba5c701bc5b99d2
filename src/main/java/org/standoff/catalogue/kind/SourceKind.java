package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standoff.acoustics.Source;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.CheckScope;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;

/** What sounds, with the places where a microphone may stand. */
@Singleton
public class SourceKind implements CatalogueKind<Source> {

  @Override
  public String name() {
    return "source";
  }

  @Override
  public String folder() {
    return "sources";
  }

  @Override
  public Class<Source> type() {
    return Source.class;
  }

  @Override
  public Source read(ItemId id, Sheet sheet) {
    return SourceReader.read(id.toString(), sheet);
  }

  @Override
  public void check(Item<Source> item, CheckScope scope) {
    Source source = item.value();
    refersToOthers("/members/", source.members(), source.id(), scope);
    refersToOthers("/doubles/", source.doubles(), source.id(), scope);
    item.sheet()
        .map("placements", (name, placement) -> placement)
        .forEach(
            (name, placement) -> PlacementCheck.check("/placements/" + name, placement, scope));
  }

  private static void refersToOthers(
      String place, List<String> ids, String self, CheckScope scope) {
    for (int i = 0; i < ids.size(); i++) {
      scope.refers(place + i, Source.class, ids.get(i));
      if (ids.get(i).equals(self)) {
        scope.fault(place + i, self, "another source than this one");
      }
    }
  }

  @Override
  public Map<String, Object> summary(Source source) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("kind", source.compound() ? "compound" : "instrument");
    row.put("placements", List.copyOf(source.placements().keySet()));
    source.soundPower().ifPresent(power -> row.put("sound_power_db", power.db()));
    return row;
  }
}
