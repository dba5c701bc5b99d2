package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Map;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;
import org.standoff.chain.Basis;
import org.standoff.chain.DirectBox;

/** Direct boxes. */
@Singleton
public class DirectBoxKind implements CatalogueKind<DirectBox> {

  @Override
  public String name() {
    return "direct-box";
  }

  @Override
  public String folder() {
    return "direct-boxes";
  }

  @Override
  public Class<DirectBox> type() {
    return DirectBox.class;
  }

  @Override
  public DirectBox read(ItemId id, Sheet sheet) {
    return new DirectBox(
        id.toString(),
        sheet.text("title"),
        sheet.flag("active"),
        sheet.number("input_impedance_ohm"),
        sheet.number("maximum_input_dbu"),
        sheet.number("loss_db"),
        sheet.list("pads", LineReader::pad),
        sheet.number("source_impedance_ohm"),
        sheet.object("powering", LineReader::powering),
        sheet.optionalNumber("mass_g"),
        sheet.optionalNumber("length_mm"),
        sheet.word("basis", Basis::ofId));
  }

  @Override
  public Map<String, Object> summary(DirectBox box) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("active", box.active());
    row.put("input_impedance_ohm", box.inputImpedanceOhm());
    row.put("maximum_input_dbu", box.maximumInputDbu());
    row.put("loss_db", box.lossDb());
    row.put("powering", box.powering().need().id());
    return row;
  }
}
