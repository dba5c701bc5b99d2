package org.standoff.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;

/** Where an item is checked: what it may refer to, and whom to tell. */
public final class CheckScope {

  private final String file;
  private final ToIntFunction<String> lines;
  private final List<String> packs;
  private final ItemIndex known;
  private final Set<ItemId> broken;
  private final List<Finding> findings;

  /**
   * @param file path of the item's file
   * @param lines line of a JSON pointer
   * @param packs the item's own pack and those that it uses
   * @param known items of these packs
   * @param broken ids of files that are there but have faults, which are told at these files
   * @param findings where findings go
   */
  public CheckScope(
      String file,
      ToIntFunction<String> lines,
      List<String> packs,
      ItemIndex known,
      Set<ItemId> broken,
      List<Finding> findings) {
    this.file = file;
    this.lines = lines;
    this.packs = packs;
    this.known = known;
    this.broken = broken;
    this.findings = findings;
  }

  /** Tells a fault unless {@code id} names an item of that type in this pack or one it uses. */
  public void refers(String pointer, Class<?> type, String id) {
    Optional<ItemId> parsed = ItemId.parse(id);
    if (parsed.isPresent()
        && (known.find(type, parsed.get()).isPresent() || broken.contains(parsed.get()))) {
      return;
    }
    boolean foreign = parsed.isPresent() && !packs.contains(parsed.get().pack());
    String hint =
        foreign
            ? "; packs that are referred to stand under 'uses' in pack.yaml"
            : known.suggest(type, id).map(near -> "; perhaps " + near).orElse("");
    String noun = type.getSimpleName().toLowerCase(Locale.ROOT);
    fault(pointer, id, "the id of a known " + noun + hint);
  }

  /** Tells what makes the pack unusable. */
  public void fault(String pointer, String found, String expected) {
    tell(Finding.Severity.FAULT, pointer, found, expected);
  }

  /** Tells what is doubtful. */
  public void warning(String pointer, String found, String expected) {
    tell(Finding.Severity.WARNING, pointer, found, expected);
  }

  private void tell(Finding.Severity severity, String pointer, String found, String expected) {
    findings.add(new Finding(severity, file, lines.applyAsInt(pointer), pointer, found, expected));
  }
}
