package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Map;
import org.standoff.acoustics.Room;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;

/** Rooms. */
@Singleton
public class RoomKind implements CatalogueKind<Room> {

  @Override
  public String name() {
    return "room";
  }

  @Override
  public String folder() {
    return "rooms";
  }

  @Override
  public Class<Room> type() {
    return Room.class;
  }

  @Override
  public Room read(ItemId id, Sheet sheet) {
    return RoomReader.read(sheet);
  }

  @Override
  public Map<String, Object> summary(Room room) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("volume_m3", room.volumeM3());
    row.put("absorption_area_m2", room.midAbsorptionAreaM2());
    row.put("background_noise_dba", room.backgroundNoiseDba());
    return row;
  }
}
