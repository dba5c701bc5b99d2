package org.standoff.kit.pack;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.PackStatus;
import org.standoff.catalogue.load.LiveCatalogue;
import org.standoff.kit.Caller;
import org.standoff.kit.Precondition;
import org.standoff.kit.Put;
import org.standoff.kit.Sql;
import org.standoff.kit.Transactions;
import org.standoff.kit.house.Houses;

/** Catalogue packs that houses publish: checked as files are, stored, and in use at once. */
@ApplicationScoped
public class HousePacks {

  private static final int MOST_NAMED = 100;

  private final Transactions transactions;
  private final Houses houses;
  private final PublishedPacks published;
  private final LiveCatalogue live;

  HousePacks(
      Transactions transactions, Houses houses, PublishedPacks published, LiveCatalogue live) {
    this.transactions = transactions;
    this.houses = houses;
    this.published = published;
    this.live = live;
  }

  /** The pack of that name, if the house has published one and has not taken it back. */
  public Optional<HousePack> find(String house, String pack) {
    return transactions.statements(
        connection ->
            PackRows.named(connection, List.of(pack)).stream()
                .filter(found -> found.house().equals(house) && !found.isWithdrawn())
                .findFirst());
  }

  /**
   * Publishes a pack. The same files again change nothing. One that was taken back is new again.
   *
   * @param caller who publishes, for the audit
   * @param pack its name, which begins with the id of the house; where it begins with the ids of
   *     several houses, a new one is for the house with the longest of them
   * @param files texts by their path in the pack
   * @param supposed asked before anything changes
   * @throws FaultyPack where the files can't be used
   * @throws PackClash where the name is somebody else's, or units need a microphone that is missing
   */
  public Put<HousePack> put(
      Caller caller, String house, String pack, Map<String, String> files, Precondition supposed) {
    houses.get(house);
    refuseForeign(house, pack);
    PackStatus status = live.tryOut(pack, HousePack.placeOf(house), files);
    if (status.isFaulty()) {
      throw new FaultyPack(status.findings().stream().filter(Finding::isFault).toList());
    }
    Put<HousePack> stored =
        transactions.statements(
            caller,
            connection -> {
              @Nullable HousePack known = lock(connection, house, pack);
              supposed.check(revision(known));
              boolean stands = known != null && !known.isWithdrawn();
              if (!stands) {
                refuseNearer(connection, house, pack);
              }
              if (known != null && stands && known.files().equals(files)) {
                return new Put<>(known, false);
              }
              refuseLoss(connection, pack, files);
              return PackRows.write(connection, pack, house, files)
                  .map(written -> new Put<>(written, !stands))
                  .orElseThrow(() -> taken(pack));
            });
    bringIntoUse();
    return stored;
  }

  /**
   * Takes a pack back.
   *
   * @param caller who does, for the audit
   * @param supposed asked before anything changes
   * @return the pack as it was
   * @throws UnknownPack where the house has no such pack
   * @throws PackClash where units or other packs need it
   */
  public HousePack withdraw(Caller caller, String house, String pack, Precondition supposed) {
    HousePack taken =
        transactions.statements(
            caller,
            connection -> {
              @Nullable HousePack known = lock(connection, house, pack);
              if (known == null || known.isWithdrawn()) {
                throw new UnknownPack(pack);
              }
              supposed.check(revision(known));
              refuseUsed(pack);
              refuseLoss(connection, pack, Map.of());
              // locked, and this house's: the row is the one that is written
              PackRows.write(connection, pack, house, null);
              return known;
            });
    bringIntoUse();
    return taken;
  }

  private static @Nullable HousePack lock(Connection connection, String house, String pack)
      throws SQLException {
    // one change of the packs of a house at a time, also of one that has no row yet
    Sql.list(connection, "select id from house where id = ? for no key update", row -> true, house);
    @Nullable HousePack known = PackRows.lock(connection, pack).orElse(null);
    if (known == null || known.house().equals(house)) {
      return known;
    }
    if (!known.isWithdrawn()) {
      throw taken(pack);
    }
    // another's until it took it back: nobody's now
    return null;
  }

  private static OptionalLong revision(@Nullable HousePack known) {
    return known == null || known.isWithdrawn()
        ? OptionalLong.empty()
        : OptionalLong.of(known.revision());
  }

  private void bringIntoUse() {
    transactions.statements(published::refresh);
    live.reload();
  }

  private void refuseForeign(String house, String pack) {
    boolean inCatalogue = live.get().pack(pack).isPresent();
    if (!HousePack.isNameOf(house, pack) || inCatalogue && !published.has(pack)) {
      throw taken(pack);
    }
  }

  /** Without this, house {@code a} could take the names of house {@code a-b} before it does. */
  private static void refuseNearer(Connection connection, String house, String pack)
      throws SQLException {
    List<String> nearer =
        Sql.list(
            connection,
            """
            select id from house
            where starts_with(id, ? || '-') and (id = ? or starts_with(?, id || '-'))
            """,
            row -> "house " + row.getString("id"),
            house,
            pack,
            pack);
    if (!nearer.isEmpty()) {
      throw taken(pack, nearer);
    }
  }

  private static PackClash taken(String pack) {
    return taken(pack, List.of());
  }

  private static PackClash taken(String pack, List<String> inTheWay) {
    return new PackClash("The name '" + pack + "' is not this house's to use.", inTheWay);
  }

  private void refuseUsed(String pack) {
    Catalogue catalogue = live.get();
    List<String> users =
        catalogue.packs().stream()
            .filter(other -> other.live().filter(use -> use.uses().contains(pack)).isPresent())
            .map(PackStatus::id)
            .toList();
    if (!users.isEmpty()) {
      throw new PackClash("Other packs use it.", users.stream().map(id -> "pack " + id).toList());
    }
  }

  private static void refuseLoss(Connection connection, String pack, Map<String, String> files)
      throws SQLException {
    String[] kept = PackedMicrophones.of(pack, files.keySet()).toArray(String[]::new);
    List<String> orphans =
        Sql.list(
            connection,
            """
            select house, serial, microphone from unit
            where starts_with(microphone, ?) and state <> 'retired' and not microphone = any(?)
            order by house, serial limit %d
            """
                .formatted(MOST_NAMED),
            row ->
                "unit %s of %s, %s"
                    .formatted(
                        row.getString("serial"),
                        row.getString("house"),
                        row.getString("microphone")),
            pack + "/",
            kept);
    if (!orphans.isEmpty()) {
      throw new PackClash("Units are microphones that it would have no more.", orphans);
    }
  }
}
