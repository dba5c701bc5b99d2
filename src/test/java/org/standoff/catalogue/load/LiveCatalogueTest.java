package org.standoff.catalogue.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.acoustics.Room;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.PackStatus;
import org.standoff.chain.Microphone;

/** What happens while files change under a running service. */
class LiveCatalogueTest {
  private static final ItemId M = new ItemId("p", "m");

  @TempDir Path root;
  private PackFolder packs;

  @BeforeEach
  void aPackWithAMicrophone() {
    packs = new PackFolder(root.resolve("packs")).pack("p").microphone("p/microphones/m.yaml");
  }

  @Test
  void aChangedFileIsInTheNextSnapshotAndTheOldOneStaysAsItWas() {
    LiveCatalogue live = packs.live();
    Catalogue before = live.reload();
    packs.write("p/microphones/m.yaml", louder(140));
    Catalogue after = live.reload();
    assertThat(maximum(before)).isEqualTo(133);
    assertThat(maximum(after)).isEqualTo(140);
    assertThat(live.get()).isSameAs(after);
    assertThat(after.revision()).isNotEqualTo(before.revision());
  }

  @Test
  void nothingChangedGivesTheVerySameSnapshot() {
    LiveCatalogue live = packs.live();
    assertThat(live.reload()).isSameAs(live.reload());
  }

  @Test
  void onlyTheChangedFileIsReadAgain() {
    for (int i = 0; i < 300; i++) {
      packs.microphone("p/microphones/m" + i + ".yaml");
    }
    CountingSource source = new CountingSource(packs.source());
    LiveCatalogue live =
        new LiveCatalogue(PackFolder.kinds(), List.of(source), () -> PackFolder.NOON);
    live.reload();
    assertThat(source.read()).hasSize(302);
    packs.write("p/microphones/m7.yaml", louder(141));
    Catalogue after = live.reload();
    assertThat(source.read()).containsExactly("p/microphones/m7.yaml");
    assertThat(after.items(Microphone.class)).hasSize(301);
  }

  @Test
  void aPackThatBecomesFaultyKeepsItsLastGoodVersionWhole() {
    packs.microphone("p/microphones/n.yaml");
    LiveCatalogue live = packs.live();
    Catalogue good = live.reload();
    packs.write("p/microphones/m.yaml", "format: [");
    packs.write("p/microphones/n.yaml", louder(140));
    Catalogue after = live.reload();
    PackStatus status = after.pack("p").orElseThrow();
    assertThat(status.isFaulty()).isTrue();
    assertThat(status.live()).isEqualTo(good.pack("p").orElseThrow().live());
    assertThat(after.find(Microphone.class, new ItemId("p", "n")).orElseThrow().value())
        .isEqualTo(good.find(Microphone.class, new ItemId("p", "n")).orElseThrow().value());
    assertThat(after.revision()).isEqualTo(good.revision());
    packs.microphone("p/microphones/m.yaml");
    assertThat(live.reload().pack("p").orElseThrow().isFaulty()).isFalse();
  }

  @Test
  void aFaultyPackTakesNoOtherWithIt() {
    packs.pack("q").microphone("q/microphones/x.yaml").write("p/microphones/m.yaml", "format: 2");
    Catalogue catalogue = packs.live().reload();
    assertThat(catalogue.pack("p").orElseThrow().live()).isEmpty();
    assertThat(catalogue.items(Microphone.class)).hasSize(1);
    assertThat(catalogue.hasPackInUse()).isTrue();
  }

  @Test
  void aPackWhoseUsedPackBecomesFaultyGoesOnWithTheLastGoodOne() {
    packs.pack("q", "p").microphone("q/microphones/x.yaml");
    LiveCatalogue live = packs.live();
    live.reload();
    packs.write("p/microphones/m.yaml", "format: 2");
    Catalogue after = live.reload();
    assertThat(after.pack("p").orElseThrow().isFaulty()).isTrue();
    assertThat(after.pack("q").orElseThrow().isFaulty()).isFalse();
  }

  @Test
  void aPackThatVanishesStaysInUseAndSaysSo() throws IOException {
    LiveCatalogue live = packs.live();
    Catalogue before = live.reload();
    Files.move(packs.root.resolve("p"), root.resolve("away"));
    Catalogue after = live.reload();
    assertThat(after.find(Microphone.class, M)).isPresent();
    assertThat(after.revision()).isEqualTo(before.revision());
    assertThat(after.pack("p").orElseThrow().findings())
        .singleElement()
        .extracting(Finding::found)
        .isEqualTo("no such pack any more");
    Files.move(root.resolve("away"), packs.root.resolve("p"));
    assertThat(live.reload().pack("p").orElseThrow().findings()).isEmpty();
  }

  @Test
  void aFolderThatVanishesIsToldAndItsPacksStayInUse() throws IOException {
    LiveCatalogue live = packs.live();
    live.reload();
    Files.move(packs.root, root.resolve("away"));
    Catalogue after = live.reload();
    assertThat(after.findings()).extracting(Finding::found).containsExactly("no folder");
    assertThat(after.find(Microphone.class, M)).isPresent();

    Files.move(root.resolve("away"), packs.root);
    packs.write("p/microphones/m.yaml", louder(140));
    Catalogue back = live.reload();
    assertThat(back.findings()).isEmpty();
    assertThat(maximum(back)).isEqualTo(140);
  }

  @Test
  void noOtherEditionStandsInForAPackWhoseFolderVanished() throws IOException {
    PackFolder shipped = new PackFolder(root.resolve("shipped")).pack("p");
    shipped.write("p/microphones/m.yaml", louder(120));
    LiveCatalogue live =
        new LiveCatalogue(
            PackFolder.kinds(),
            List.of(packs.source(), new PackFolders(shipped.root, "shipped", 1)),
            () -> PackFolder.NOON);
    live.reload();
    Files.move(packs.root, root.resolve("away"));
    Catalogue away = live.reload();
    assertThat(maximum(away)).as("of the folder that is away").isEqualTo(133);
    assertThat(away.pack("p").orElseThrow().isFaulty()).isTrue();
    assertThat(maximum(live.reload())).isEqualTo(133);

    Files.move(root.resolve("away"), packs.root);
    assertThat(live.reload().pack("p").orElseThrow().isFaulty()).isFalse();
    packs.delete("p/microphones/m.yaml");
    packs.delete("p/pack.yaml");
    assertThat(maximum(live.reload())).as("given up by a folder that is there").isEqualTo(120);
  }

  @Test
  void anItemThatIsTakenOutOfAGoodPackIsGone() {
    packs.microphone("p/microphones/n.yaml");
    LiveCatalogue live = packs.live();
    live.reload();
    packs.delete("p/microphones/n.yaml");
    assertThat(live.reload().items(Microphone.class)).hasSize(1);
  }

  @Test
  void theRevisionNamesTheContentAndNotThePlaceTimeOrOrder() {
    PackFolder other = new PackFolder(root.resolve("other"));
    other.pack("q").microphone("q/microphones/x.yaml");
    other.microphone("p/microphones/m.yaml").pack("p");
    packs.pack("q").microphone("q/microphones/x.yaml");
    Catalogue here = packs.live().reload();
    Catalogue there = other.live().reload();
    assertThat(there.revision()).isEqualTo(here.revision());
    assertThat(there.items(Microphone.class)).isEqualTo(here.items(Microphone.class));
    LiveCatalogue split =
        new LiveCatalogue(
            PackFolder.kinds(),
            List.of(
                new PackFolders(root.resolve("other"), "b", 1),
                new PackFolders(packs.root, "a", 0)),
            () -> Instant.EPOCH);
    assertThat(split.reload().revision()).isEqualTo(here.revision());
  }

  @Test
  void ofTwoPacksOfOneNameTheEarlierSourceCounts() {
    PackFolder other = new PackFolder(root.resolve("other")).pack("p");
    other.write("p/microphones/m.yaml", louder(120));
    LiveCatalogue live =
        new LiveCatalogue(
            PackFolder.kinds(),
            List.of(
                new PackFolders(packs.root, "later", 2), new PackFolders(other.root, "earlier", 1)),
            () -> PackFolder.NOON);
    Catalogue catalogue = live.reload();
    assertThat(maximum(catalogue)).isEqualTo(120);
    assertThat(catalogue.findings().get(0).expected()).endsWith("it is read from earlier");
  }

  @Test
  void theTimeOfTheLastGoodLoadStaysWhileAPackIsFaulty() {
    AtomicReference<Instant> now = new AtomicReference<>(PackFolder.NOON);
    LiveCatalogue live = new LiveCatalogue(PackFolder.kinds(), List.of(packs.source()), now::get);
    live.reload();
    now.set(PackFolder.NOON.plusSeconds(60));
    packs.write("p/microphones/m.yaml", "format: 2");
    live.reload();
    assertThat(live.get().pack("p").orElseThrow().lastGoodLoad()).contains(PackFolder.NOON);
  }

  @Test
  void requestsThatRunWhileAPackTurnsFaultyAndBackLoseNothing() throws Exception {
    packs.write("p/rooms/hall.yaml", PackFolder.ROOM);
    LiveCatalogue live = packs.live();
    live.reload();
    int askers = 4;
    ExecutorService pool = Executors.newFixedThreadPool(askers);
    CountDownLatch begun = new CountDownLatch(askers);
    Callable<Integer> asking =
        () -> {
          begun.countDown();
          int answered = 0;
          for (int i = 0; i < 20_000; i++) {
            Catalogue snapshot = live.get();
            boolean whole =
                snapshot.find(Microphone.class, M).isPresent()
                    && snapshot.find(Room.class, new ItemId("p", "hall")).isPresent()
                    && maximum(snapshot) == 133;
            answered += whole ? 1 : 0;
          }
          return answered;
        };
    List<Future<Integer>> answers = new ArrayList<>();
    for (int i = 0; i < askers; i++) {
      answers.add(pool.submit(asking));
    }
    begun.await();
    for (int i = 0; i < 20; i++) {
      packs.write("p/microphones/m.yaml", "broken: " + i);
      assertThat(live.reload().pack("p").orElseThrow().isFaulty()).isTrue();
      packs.write("p/microphones/m.yaml", PackFolder.MICROPHONE + "# " + i + "\n");
      assertThat(live.reload().pack("p").orElseThrow().isFaulty()).isFalse();
    }
    for (Future<Integer> answered : answers) {
      assertThat(answered.get()).isEqualTo(20_000);
    }
    pool.shutdownNow();
  }

  private static String louder(int level) {
    return PackFolder.MICROPHONE.replace("level_db_spl: 133", "level_db_spl: " + level);
  }

  private static double maximum(Catalogue catalogue) {
    return catalogue.find(Microphone.class, M).orElseThrow().value().maximumSpl().level().db();
  }
}
