package org.standoff.kit.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.CurrentCatalogue;
import org.standoff.catalogue.ItemId;
import org.standoff.chain.Microphone;
import org.standoff.kit.pack.PackedMicrophones;
import org.standoff.kit.pack.PublishedPacks;

/**
 * What must hold in a kit beyond the form of each unit: serial numbers are there once, microphones
 * are in the catalogue, a matched group has at least two units of one microphone, which say the
 * same of how well they match, and what is in no group is matched to nothing. Retired units are on
 * record only and stand under no rule but the first.
 */
@ApplicationScoped
public class KitCheck {

  /** Nobody mends more than these in one go. */
  public static final int MOST_FAULTS = 100;

  private static final int LEAST_MATCHED = 2;

  private final CurrentCatalogue current;
  private final PublishedPacks published;

  KitCheck(CurrentCatalogue current, PublishedPacks published) {
    this.current = current;
    this.published = published;
  }

  /**
   * Checks a kit.
   *
   * @param kit in the order in which it was told
   * @param whole whether these are all that was told; where some could not be read, a group that
   *     seems too small may not be
   * @return the first {@link #MOST_FAULTS} faults, in that order
   */
  public List<KitFault> faults(List<KitUnit> kit, boolean whole) {
    Run run = new Run(current.get());
    for (int i = 0; i < kit.size() && run.faults.size() < MOST_FAULTS; i++) {
      run.look(i, kit.get(i));
    }
    if (whole) {
      run.lookAtGroups(kit);
    }
    return run.faults.stream().limit(MOST_FAULTS).toList();
  }

  /** What is wrong with one unit, whatever stands beside it. */
  List<KitFault> faults(KitUnit unit) {
    Run run = new Run(current.get());
    run.lookAlone(0, unit);
    return run.faults;
  }

  /**
   * Looks in the database whether houses took microphones of theirs out of the catalogue, which in
   * memory is some seconds behind, and keeps them from doing so to the end of the transaction.
   *
   * @throws FaultyKit where units are such microphones
   */
  void refuseLost(Connection connection, List<KitUnit> kit) throws SQLException {
    Set<String> ofHouses =
        kit.stream()
            .filter(unit -> unit.state() != UnitState.RETIRED)
            .map(KitUnit::microphone)
            .distinct()
            .filter(published::offers)
            .collect(Collectors.toSet());
    if (ofHouses.isEmpty()) {
      return;
    }
    Set<String> lost = PackedMicrophones.lost(connection, ofHouses);
    List<KitFault> faults =
        IntStream.range(0, kit.size())
            .filter(index -> kit.get(index).state() != UnitState.RETIRED)
            .filter(index -> lost.contains(kit.get(index).microphone()))
            .limit(MOST_FAULTS)
            .mapToObj(index -> unknownMicrophone(index, kit.get(index), Optional.empty()))
            .toList();
    if (!faults.isEmpty()) {
      throw new FaultyKit(faults);
    }
  }

  private static KitFault unknownMicrophone(int index, KitUnit unit, Optional<String> suggestion) {
    return new KitFault(
        index,
        "microphone",
        KitFault.Kind.UNKNOWN_MICROPHONE,
        "The catalogue has no microphone of this id.",
        unit.microphone(),
        Optional.of("an id from /v1/microphones"),
        suggestion);
  }

  static KitFault otherMicrophone(int index, KitUnit unit, String microphone) {
    return new KitFault(
        index,
        "matched_group",
        KitFault.Kind.CONTRADICTION,
        "The units of a matched group are of one microphone.",
        unit.microphone(),
        Optional.of(microphone + ", as the others of " + unit.matchedGroup()),
        Optional.empty());
  }

  private static final class Run {
    private final Catalogue catalogue;
    private final List<KitFault> faults = new ArrayList<>();
    private final Map<String, Integer> serials = new HashMap<>();
    private final Map<String, Boolean> microphones = new HashMap<>();
    private final Map<String, Group> groups = new HashMap<>();

    Run(Catalogue catalogue) {
      this.catalogue = catalogue;
    }

    private record Group(int first, String microphone, int size, Optional<Double> matchWithinDb) {

      static Group of(int index, KitUnit unit) {
        return new Group(index, unit.microphone(), 1, Optional.ofNullable(unit.matchWithinDb()));
      }

      Group with(KitUnit unit) {
        return new Group(
            first,
            microphone,
            size + 1,
            matchWithinDb.or(() -> Optional.ofNullable(unit.matchWithinDb())));
      }

      /** Whoever does not say contradicts nobody. */
      boolean isMatchedOtherwise(KitUnit unit) {
        @Nullable Double told = unit.matchWithinDb();
        return told != null && matchWithinDb.filter(other -> !other.equals(told)).isPresent();
      }
    }

    void look(int index, KitUnit unit) {
      @Nullable Integer first = serials.putIfAbsent(unit.serial(), index);
      if (first != null) {
        add(
            index,
            "serial",
            "This serial number stands at unit " + (first + 1) + " already.",
            unit.serial(),
            "once, and unit " + (first + 1) + " has it");
      }
      if (unit.state() == UnitState.RETIRED) {
        return;
      }
      lookAlone(index, unit);
      @Nullable String name = unit.matchedGroup();
      if (name != null) {
        Group group = groups.get(name);
        if (group != null && !group.microphone().equals(unit.microphone())) {
          faults.add(otherMicrophone(index, unit, group.microphone()));
        }
        if (group != null && group.isMatchedOtherwise(unit)) {
          add(
              index,
              "match_within_db",
              "The units of a matched group are within the same of each other.",
              String.valueOf(unit.matchWithinDb()),
              group.matchWithinDb().orElseThrow() + ", as the others of " + name + ", or nothing");
        }
        groups.put(name, group == null ? Group.of(index, unit) : group.with(unit));
      }
    }

    void lookAlone(int index, KitUnit unit) {
      lookAtMicrophone(index, unit);
      @Nullable Double within = unit.matchWithinDb();
      if (within != null && unit.matchedGroup() == null) {
        add(
            index,
            "match_within_db",
            "A unit of no matched group is matched to nothing.",
            within.toString(),
            "nothing, or a matched_group beside it");
      }
    }

    private void lookAtMicrophone(int index, KitUnit unit) {
      if (!microphones.computeIfAbsent(unit.microphone(), this::isKnown)) {
        faults.add(
            unknownMicrophone(index, unit, catalogue.suggest(Microphone.class, unit.microphone())));
      }
    }

    void lookAtGroups(List<KitUnit> kit) {
      groups.forEach(
          (name, group) -> {
            if (group.size() < LEAST_MATCHED) {
              add(
                  group.first(),
                  "matched_group",
                  "A matched group has at least two units; this one has unit "
                      + kit.get(group.first()).serial()
                      + " alone.",
                  name,
                  "the same group at another unit, or none");
            }
          });
    }

    private boolean isKnown(String id) {
      return ItemId.parse(id)
          .flatMap(parsed -> catalogue.find(Microphone.class, parsed))
          .isPresent();
    }

    private void add(int index, String member, String detail, String found, String allowed) {
      faults.add(
          new KitFault(
              index,
              member,
              KitFault.Kind.CONTRADICTION,
              detail,
              found,
              Optional.of(allowed),
              Optional.empty()));
    }
  }
}
