package org.standoff.catalogue.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.PackSource;
import org.standoff.catalogue.kind.EnsembleKind;
import org.standoff.catalogue.kind.MicrophoneKind;
import org.standoff.catalogue.kind.RoomKind;
import org.standoff.catalogue.kind.SourceKind;
import org.standoff.catalogue.kind.StyleKind;

/** A folder of packs on disk, written line by line. */
final class PackFolder {
  static final Instant NOON = Instant.parse("2026-01-01T12:00:00Z");

  static final String MICROPHONE =
      """
      format: 1
      title: A test condenser
      transducer: condenser
      address: side
      powering: { need: p48, current_ma: 3 }
      source_impedance_ohm: 120
      maximum_spl: { level_db_spl: 133 }
      outputs:
        - id: main
          patterns:
            - { pattern: cardioid, sensitivity_mv_per_pa: 21, self_noise_dba: 9 }
      basis: stated
      """;

  static final String ROOM =
      """
      format: 1
      title: A test room
      box: { length_m: 8, width_m: 6, height_m: 3 }
      decay_s: { "500": 0.4 }
      air: { temperature_c: 21 }
      background_noise_dba: 25
      """;

  final Path root;

  PackFolder(Path root) {
    this.root = root;
  }

  /** Kinds without a server. */
  static List<CatalogueKind<?>> kinds(CatalogueKind<?>... more) {
    List<CatalogueKind<?>> kinds = new ArrayList<>(List.of(more));
    kinds.addAll(
        List.of(
            new MicrophoneKind(),
            new RoomKind(),
            new SourceKind(),
            new EnsembleKind(),
            new StyleKind()));
    return kinds;
  }

  PackSource source() {
    return new PackFolders(root, "packs", 0);
  }

  LiveCatalogue live(CatalogueKind<?>... more) {
    return new LiveCatalogue(kinds(more), List.of(source()), () -> NOON);
  }

  PackFolder pack(String name, String... uses) {
    return write(
        name + "/pack.yaml",
        """
        format: 1
        id: %s
        title: Pack %s
        version: 1.0.0
        licence: Apache-2.0
        publisher: Tests
        uses: [%s]
        """
            .formatted(name, name, String.join(", ", uses)));
  }

  PackFolder microphone(String path) {
    return write(path, MICROPHONE);
  }

  PackFolder write(String path, String text) {
    return write(path, text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }

  PackFolder write(String path, byte[] bytes) {
    try {
      Path file = root.resolve(path);
      Files.createDirectories(file.getParent());
      Files.write(file, bytes);
      return this;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  void delete(String path) {
    try {
      Files.delete(root.resolve(path));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
