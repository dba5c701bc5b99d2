package org.standoff.catalogue.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.chain.Microphone;

/** When a change is loaded; a look stands for a moment, so no test waits. */
class CatalogueWatchTest {
  @TempDir Path root;
  private PackFolder packs;
  private LiveCatalogue live;
  private CatalogueWatch watch;

  @BeforeEach
  void aCatalogueThatIsWatched() {
    packs = new PackFolder(root).pack("p");
    live = packs.live();
    live.reload();
    watch = new CatalogueWatch(live);
  }

  @Test
  void looksWithoutAChangeLoadNothing() {
    assertThat(watch.look()).isFalse();
    assertThat(watch.look()).isFalse();
  }

  @Test
  void aChangeIsLoadedAtTheSecondLook() {
    packs.microphone("p/microphones/m.yaml");
    assertThat(watch.look()).isFalse();
    assertThat(watch.look()).isTrue();
    assertThat(live.get().items(Microphone.class)).hasSize(1);
    assertThat(watch.look()).isFalse();
  }

  @Test
  void aCopyInProgressIsNotLoadedBeforeItHoldsStill() {
    for (int i = 1; i < CatalogueWatch.MOST_RESTLESS_LOOKS; i++) {
      packs.microphone("p/microphones/m" + i + ".yaml");
      assertThat(watch.look()).isFalse();
    }
    assertThat(live.get().items(Microphone.class)).isEmpty();
  }

  @Test
  void unrestWithoutEndIsLoadedAllTheSame() {
    boolean loaded = false;
    for (int i = 1; i <= CatalogueWatch.MOST_RESTLESS_LOOKS; i++) {
      packs.microphone("p/microphones/m" + i + ".yaml");
      loaded = watch.look();
    }
    assertThat(loaded).isTrue();
    assertThat(live.get().items(Microphone.class)).hasSize(CatalogueWatch.MOST_RESTLESS_LOOKS);
  }

  @Test
  void aChangeThatIsTakenBackInTimeLoadsNothing() {
    packs.microphone("p/microphones/m.yaml");
    watch.look();
    packs.delete("p/microphones/m.yaml");
    assertThat(watch.look()).isFalse();
  }
}
