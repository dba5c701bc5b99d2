package org.standoff.kit.stock;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;
import java.util.stream.Stream;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.ItemIndex;
import org.standoff.chain.Microphone;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.kit.Transactions;
import org.standoff.kit.pack.PublishedPacks;

/** Publishing without the framework, from a catalogue of a few microphones. */
public final class PlainStock {

  private PlainStock() {}

  public static WholeKit wholeKit(
      Transactions transactions, FreedUnits freed, String... microphones) {
    Catalogue catalogue =
        new Catalogue(
            "r",
            List.of(),
            List.of(),
            new ItemIndex(Stream.of(microphones).map(PlainStock::microphone).toList()));
    return new WholeKit(
        transactions, new KitCheck(() -> catalogue, new PublishedPacks()), List.of(freed));
  }

  private static ItemIndex.Typed<Microphone> microphone(String id) {
    return new ItemIndex.Typed<>(
        Microphone.class,
        new Item<>(
            ItemId.parse(id).orElseThrow(),
            MicrophoneBuilder.aMicrophone().called(id).build(),
            JsonNodeFactory.instance.objectNode(),
            "r"));
  }
}
