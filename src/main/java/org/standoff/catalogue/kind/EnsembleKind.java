package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Room;
import org.standoff.acoustics.Source;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.CheckScope;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;
import org.standoff.floor.Ensemble;
import org.standoff.floor.Player;

/** Players and where they sit. */
@Singleton
public class EnsembleKind implements CatalogueKind<Ensemble> {

  @Override
  public String name() {
    return "ensemble";
  }

  @Override
  public String folder() {
    return "ensembles";
  }

  @Override
  public Class<Ensemble> type() {
    return Ensemble.class;
  }

  @Override
  public Ensemble read(ItemId id, Sheet sheet) {
    return new Ensemble(
        id.toString(),
        sheet.text("title"),
        sheet.optionalText("room"),
        sheet.list("players", EnsembleKind::player));
  }

  @Override
  public void check(Item<Ensemble> item, CheckScope scope) {
    Ensemble ensemble = item.value();
    ensemble.roomId().ifPresent(room -> scope.refers("/room", Room.class, room));
    Set<String> names = new HashSet<>();
    for (int i = 0; i < ensemble.players().size(); i++) {
      Player player = ensemble.players().get(i);
      String place = "/players/" + i;
      if (!names.add(player.id())) {
        scope.fault(place + "/id", player.id(), "a name of its own for each player");
      }
      List<Player.Part> parts = player.parts();
      for (int j = 0; j < parts.size(); j++) {
        scope.refers(place + "/sources/" + j + "/source", Source.class, parts.get(j).sourceId());
      }
    }
  }

  @Override
  public Map<String, Object> summary(Ensemble ensemble) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("player_count", ensemble.players().size());
    ensemble.roomId().ifPresent(room -> row.put("room", room));
    return row;
  }

  private static Player player(Sheet player) {
    return new Player(
        player.text("id"),
        player.text("title"),
        player.list("sources", EnsembleKind::part),
        player.object("position_m", EnsembleKind::position),
        player.optionalNumber("facing_azimuth_deg"),
        player.optionalText("note"));
  }

  private static Player.Part part(Sheet part) {
    return new Player.Part(
        part.text("source"), part.number("level_offset_db"), part.figures("variants_db"));
  }

  private static Point3 position(Sheet position) {
    return new Point3(position.number("x"), position.number("y"), position.number("z"));
  }
}
