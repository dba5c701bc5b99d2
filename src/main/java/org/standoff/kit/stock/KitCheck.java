package org.standoff.kit.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.CurrentCatalogue;
import org.standoff.catalogue.ItemId;
import org.standoff.chain.Microphone;

/**
 * What must hold in a kit beyond the form of each unit: serial numbers are there once, microphones
 * are in the catalogue, a matched group has at least two units of one microphone. Retired units are
 * on record only and stand under no rule but the first.
 */
@ApplicationScoped
public class KitCheck {

  /** Nobody mends more than these in one go. */
  public static final int MOST_FAULTS = 100;

  private static final int LEAST_MATCHED = 2;

  private final CurrentCatalogue current;

  KitCheck(CurrentCatalogue current) {
    this.current = current;
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

  /** Whether one unit names a microphone of the catalogue; the fault where it does not. */
  Optional<KitFault> fault(KitUnit unit) {
    Run run = new Run(current.get());
    run.lookAtMicrophone(0, unit);
    return run.faults.stream().findFirst();
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

    private record Group(int first, String microphone, int size) {
      Group larger() {
        return new Group(first, microphone, size + 1);
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
      lookAtMicrophone(index, unit);
      @Nullable String name = unit.matchedGroup();
      if (name != null) {
        Group group = groups.get(name);
        if (group != null && !group.microphone().equals(unit.microphone())) {
          faults.add(otherMicrophone(index, unit, group.microphone()));
        }
        groups.put(name, group == null ? new Group(index, unit.microphone(), 1) : group.larger());
      }
    }

    void lookAtMicrophone(int index, KitUnit unit) {
      if (!microphones.computeIfAbsent(unit.microphone(), this::isKnown)) {
        faults.add(
            new KitFault(
                index,
                "microphone",
                KitFault.Kind.UNKNOWN_MICROPHONE,
                "The catalogue has no microphone of this id.",
                unit.microphone(),
                Optional.of("an id from /v1/microphones"),
                catalogue.suggest(Microphone.class, unit.microphone())));
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
