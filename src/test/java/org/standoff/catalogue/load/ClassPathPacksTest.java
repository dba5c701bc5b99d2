package org.standoff.catalogue.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Finding;
import org.standoff.chain.Microphone;

/** Packs that come inside a jar. */
class ClassPathPacksTest {
  @TempDir Path folder;

  @Test
  void aJarOfPacksIsReadLikeAFolder() throws Exception {
    Path jar = folder.resolve("a pack.jar");
    try (OutputStream out = Files.newOutputStream(jar);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      add(
          zip,
          "packs/inside/pack.yaml",
          "format: 1\nid: inside\ntitle: t\nversion: 1.0.0\nlicence: x\npublisher: x\n");
      add(zip, "packs/inside/microphones/m.yaml", PackFolder.MICROPHONE);
    }
    try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
      Catalogue catalogue = load(new ClassPathPacks(loader, "packs/inside/pack.yaml"));
      assertThat(catalogue.pack("inside").orElseThrow().isFaulty()).isFalse();
      assertThat(catalogue.items(Microphone.class))
          .singleElement()
          .satisfies(item -> assertThat(item.id().toString()).isEqualTo("inside/m"));
    }
  }

  @Test
  void theShippedPacksAreOnTheClassPathSoTheServiceRunsFromAnyFolder() {
    ClassLoader loader = ClassPathPacks.class.getClassLoader();
    var listing =
        new ClassPathPacks(loader, "catalogue/schema/pack.json").list(List.of("microphones"));
    assertThat(listing.packs()).extracting(pack -> pack.pack()).contains("boathouse", "core");
  }

  @Test
  void aJarWithoutThePackIsToldAndNotFatal() {
    Catalogue catalogue =
        load(new ClassPathPacks(getClass().getClassLoader(), "no/such/pack.yaml"));
    assertThat(catalogue.findings())
        .singleElement()
        .extracting(Finding::found)
        .isEqualTo("no no/such/pack.yaml");
  }

  private static Catalogue load(ClassPathPacks packs) {
    return new LiveCatalogue(PackFolder.kinds(), List.of(packs), () -> PackFolder.NOON).reload();
  }

  private static void add(ZipOutputStream zip, String name, String text) throws Exception {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }
}
