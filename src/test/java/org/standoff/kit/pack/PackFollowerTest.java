package org.standoff.kit.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.arc.All;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.load.LiveCatalogue;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.Role;
import org.standoff.kit.SchemaMigration;

/** The running service publishes; a second catalogue, as another instance has it, follows. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class PackFollowerTest {
  private static final Caller ADMIN = new Caller("admin", Set.of(Role.ADMIN), Optional.empty());

  @Inject HousePacks packs;
  @Inject DataSource dataSource;
  @Inject SchemaMigration migration;
  @Inject @All List<CatalogueKind<?>> kinds;

  private final PublishedPacks otherPacks = new PublishedPacks();
  private PackFollower follower;

  @AfterEach
  void stop() {
    follower.end(null);
  }

  @Test
  void aPackThatIsPublishedHereGoesLiveThereByACall() {
    String house = Kit.house().id();
    LiveCatalogue other = follow(Duration.ofHours(1));
    String pack = house + "-own";
    HousePack first = packs.put(ADMIN, house, pack, files(pack, "1.0.0"), Supposing.NOTHING).now();
    await().until(() -> version(other.get(), pack).equals("1.0.0"));
    HousePack second = packs.put(ADMIN, house, pack, files(pack, "1.0.1"), Supposing.NOTHING).now();
    await().until(() -> version(other.get(), pack).equals("1.0.1"));
    assertThat(second.revision()).isEqualTo(first.revision() + 1);
    packs.withdraw(ADMIN, house, pack, Supposing.NOTHING);
    await().until(() -> other.get().pack(pack).isEmpty());
  }

  @Test
  void aCallThatWasLostIsMadeUpForByALook() {
    String house = Kit.house().id();
    String pack = house + "-own";
    packs.put(ADMIN, house, pack, files(pack, "1.0.0"), Supposing.NOTHING);
    LiveCatalogue other = follow(Duration.ofMillis(100));
    await().until(() -> version(other.get(), pack).equals("1.0.0"));
    // in a session without triggers nobody is called
    Kit.sql(
        "do $$ begin set local session_replication_role = replica; update pack set revision ="
            + " revision + 1, files = jsonb_set(files, '{pack.yaml}', to_jsonb(replace(files ->>"
            + " 'pack.yaml', '1.0.0', '2.0.0'))) where id = '"
            + pack
            + "'; end $$");
    await().until(() -> version(other.get(), pack).equals("2.0.0"));
  }

  private LiveCatalogue follow(Duration lookEvery) {
    LiveCatalogue other = new LiveCatalogue(kinds, List.of(otherPacks), InstantSource.system());
    follower = new PackFollower(dataSource, migration, otherPacks, other, lookEvery);
    follower.begin(null);
    return other;
  }

  private static String version(Catalogue catalogue, String pack) {
    return catalogue
        .pack(pack)
        .flatMap(status -> status.live())
        .map(live -> live.version())
        .orElse("");
  }

  private static Map<String, String> files(String pack, String version) {
    return Map.of(
        "pack.yaml",
        """
        format: 1
        id: %s
        title: Own
        version: %s
        licence: Apache-2.0
        publisher: Test house
        """
            .formatted(pack, version));
  }
}
