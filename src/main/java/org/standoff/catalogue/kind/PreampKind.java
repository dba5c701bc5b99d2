package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.CheckScope;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;
import org.standoff.chain.GainRange;
import org.standoff.chain.InputNoise;
import org.standoff.chain.Preamp;

/** Preamps, each with the converter behind it. */
@Singleton
public class PreampKind implements CatalogueKind<Preamp> {

  @Override
  public String name() {
    return "preamp";
  }

  @Override
  public String folder() {
    return "preamps";
  }

  @Override
  public Class<Preamp> type() {
    return Preamp.class;
  }

  @Override
  public Preamp read(ItemId id, Sheet sheet) {
    return PreampReader.read(id.toString(), sheet);
  }

  @Override
  public void check(Item<Preamp> item, CheckScope scope) {
    GainRange gain = item.value().gain();
    if (gain.leastDb() > gain.mostDb()) {
      scope.fault("/gain", gain.leastDb() + " to " + gain.mostDb(), "least_db not above most_db");
    }
    InputNoise noise = item.value().noise();
    for (InputNoise.Point point : noise.points()) {
      if (noise.contradictsPhysics(point.gainDb())) {
        scope.warning(
            "/noise",
            point.einDbu() + " dBu at " + point.gainDb() + " dB",
            "more than the thermal noise of " + noise.sourceOhm() + " ohm, which is part of it");
      }
    }
  }

  @Override
  public Map<String, Object> summary(Preamp preamp) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("inputs", preamp.inputs());
    row.put("least_gain_db", preamp.gain().leastDb());
    row.put("most_gain_db", preamp.gain().mostDb());
    row.put("gain_step_db", preamp.gain().stepDb());
    row.put("maximum_input_dbu", preamp.maximumInputDbu());
    row.put("full_scale_dbu", preamp.fullScaleDbu());
    row.put("pads_db", List.copyOf(preamp.padsDb()));
    row.put("phantom", preamp.phantomAvailable());
    return row;
  }
}
