package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Map;
import org.standoff.acoustics.Purpose;
import org.standoff.acoustics.Room;
import org.standoff.advice.HouseStyle;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.CheckScope;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;

/** Margins and preferences of a house. */
@Singleton
public class StyleKind implements CatalogueKind<HouseStyle> {

  @Override
  public String name() {
    return "style";
  }

  @Override
  public String folder() {
    return "styles";
  }

  @Override
  public Class<HouseStyle> type() {
    return HouseStyle.class;
  }

  @Override
  public HouseStyle read(ItemId id, Sheet sheet) {
    return StyleReader.read(id.toString(), sheet);
  }

  @Override
  public void check(Item<HouseStyle> item, CheckScope scope) {
    item.value()
        .surrounding()
        .roomId()
        .ifPresent(room -> scope.refers("/surrounding/room", Room.class, room));
  }

  @Override
  public Map<String, Object> summary(HouseStyle style) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("guarded_percentile", style.guardedPercentile());
    row.put("wanted_headroom_db", style.wantedHeadroomDb());
    row.put("target_peak_dbfs", style.targetPeakDbfs());
    for (Purpose purpose : Purpose.values()) {
      row.put("isolation_weight_" + purpose.id(), style.isolationWeight(purpose));
    }
    return row;
  }
}
