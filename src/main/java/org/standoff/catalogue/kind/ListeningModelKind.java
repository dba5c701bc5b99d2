package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Map;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;
import org.standoff.pairs.listening.ListeningModel;

/** Published studies of where listeners put an image. */
@Singleton
public class ListeningModelKind implements CatalogueKind<ListeningModel> {

  @Override
  public String name() {
    return "listening-model";
  }

  @Override
  public String folder() {
    return "listening-models";
  }

  @Override
  public Class<ListeningModel> type() {
    return ListeningModel.class;
  }

  @Override
  public ListeningModel read(ItemId id, Sheet sheet) {
    return ListeningModelReader.read(id.toString(), sheet);
  }

  @Override
  public Map<String, Object> summary(ListeningModel model) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("study", model.study().citation());
    row.put("places_images", model.placesImages());
    row.put("meant_up_to_pct", model.study().meantUpToPct().orElse(ListeningModel.SIDE_PCT));
    return row;
  }
}
