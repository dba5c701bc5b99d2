package org.standoff.catalogue.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.acoustics.Room;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.CheckScope;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;

/** A kind that only the tests know: one class and one schema, and no class of the service knows. */
class AddedKindTest {

  /** A stand for microphones. */
  record Stand(String id, double reachM, String store) {}

  static final class StandKind implements CatalogueKind<Stand> {
    @Override
    public String name() {
      return "stand";
    }

    @Override
    public String folder() {
      return "stands";
    }

    @Override
    public Class<Stand> type() {
      return Stand.class;
    }

    @Override
    public String schemaResource() {
      return "added-kind/stand.json";
    }

    @Override
    public Stand read(ItemId id, Sheet sheet) {
      return new Stand(id.toString(), sheet.number("reach_m"), sheet.text("store"));
    }

    @Override
    public void check(Item<Stand> item, CheckScope scope) {
      scope.refers("/store", Room.class, item.value().store());
    }
  }

  @TempDir Path root;

  @Test
  void itsFilesAreReadCheckedAndFound() {
    PackFolder packs = new PackFolder(root).pack("p").write("p/rooms/hall.yaml", PackFolder.ROOM);
    packs.write("p/stands/tall.yaml", "format: 1\nreach_m: 2.1\nstore: p/hall\n");
    Catalogue catalogue = packs.live(new StandKind()).reload();
    assertThat(catalogue.find(Stand.class, new ItemId("p", "tall")).orElseThrow().value())
        .isEqualTo(new Stand("p/tall", 2.1, "p/hall"));
    assertThat(catalogue.pack("p").orElseThrow().live().orElseThrow().counts())
        .containsEntry("stands", 1);
  }

  @Test
  void itsSchemaAndItsReferencesAreHeld() {
    PackFolder packs = new PackFolder(root).pack("p").write("p/rooms/hall.yaml", PackFolder.ROOM);
    packs.write("p/stands/high.yaml", "format: 1\nreach_m: -2\nstore: p/hall\n");
    packs.write("p/stands/tall.yaml", "format: 1\nreach_m: 2\nstore: p/attic\n");
    assertThat(packs.live(new StandKind()).reload().pack("p").orElseThrow().findings())
        .extracting(Object::toString)
        .containsExactly(
            "p/stands/high.yaml:2 at /reach_m: found -2, expected above 0",
            "p/stands/tall.yaml:3 at /store: found p/attic, expected the id of a known room");
  }
}
