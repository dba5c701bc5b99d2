package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Map;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;
import org.standoff.floor.Barrier;

/** Movable screens. */
@Singleton
public class BarrierKind implements CatalogueKind<Barrier> {

  @Override
  public String name() {
    return "barrier";
  }

  @Override
  public String folder() {
    return "barriers";
  }

  @Override
  public Class<Barrier> type() {
    return Barrier.class;
  }

  @Override
  public Barrier read(ItemId id, Sheet sheet) {
    return new Barrier(
        id.toString(),
        sheet.text("title"),
        sheet.number("width_m"),
        sheet.number("height_m"),
        sheet.number("thickness_m"),
        transmissionLossDb(sheet),
        sheet.octaves("absorption").orElseThrow());
  }

  @Override
  public Map<String, Object> summary(Barrier barrier) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("width_m", barrier.widthM());
    row.put("height_m", barrier.heightM());
    row.put("transmission_loss_1k_db", barrier.transmissionLossDb().get(Octave.HZ_1K));
    row.put("absorption_area_1k_m2", barrier.absorptionAreaM2().get(Octave.HZ_1K));
    return row;
  }

  /** A stated loss counts for more than what the mass promises. */
  private static Octaves transmissionLossDb(Sheet sheet) {
    return sheet
        .octaves("transmission_loss_db")
        .orElseGet(() -> Barrier.transmissionOfMassDb(sheet.number("mass_per_area_kg_per_m2")));
  }
}
