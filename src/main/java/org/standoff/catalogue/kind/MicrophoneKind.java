package org.standoff.catalogue.kind;

import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.CheckScope;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.Sheet;
import org.standoff.chain.Microphone;

/** Microphones as their sheets describe them. */
@Singleton
public class MicrophoneKind implements CatalogueKind<Microphone> {

  /** Sheets take 94 dB SPL, the level of 1 Pa rounded, as the signal (IEC 60268-4). */
  private static final double SHEET_SIGNAL_DB_SPL = 94;

  private static final double SHEET_ROUNDING_DB = 1;

  @Override
  public String name() {
    return "microphone";
  }

  @Override
  public String folder() {
    return "microphones";
  }

  @Override
  public Class<Microphone> type() {
    return Microphone.class;
  }

  @Override
  public Microphone read(ItemId id, Sheet sheet) {
    return MicrophoneReader.read(id.toString(), sheet);
  }

  @Override
  public void check(Item<Microphone> item, CheckScope scope) {
    OptionalDouble ratio = item.sheet().optionalNumber("signal_to_noise_db");
    double[] noises = item.value().selfNoisesDba().toArray();
    if (ratio.isEmpty() || noises.length == 0) {
      return;
    }
    double stated = ratio.getAsDouble();
    boolean fits = false;
    for (double noise : noises) {
      fits |= Math.abs(SHEET_SIGNAL_DB_SPL - noise - stated) <= SHEET_ROUNDING_DB;
    }
    if (!fits) {
      scope.warning(
          "/signal_to_noise_db",
          figure(stated) + " dB",
          figure(SHEET_SIGNAL_DB_SPL - noises[0])
              + " dB, which is 94 dB less the self-noise of "
              + figure(noises[0])
              + " dB(A), within 1 dB");
    }
  }

  @Override
  public Map<String, Object> summary(Microphone microphone) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("transducer", microphone.transducer().id());
    row.put("address", microphone.address().id());
    row.put("patterns", microphone.patterns().stream().map(p -> p.name().id()).distinct().toList());
    row.put("maximum_level_db_spl", microphone.maximumSpl().level().db());
    microphone.selfNoisesDba().min().ifPresent(noise -> row.put("self_noise_dba", noise));
    row.put("powering", microphone.powering().need().id());
    return row;
  }

  private static String figure(double db) {
    return String.format(Locale.ROOT, "%.1f", db);
  }
}
