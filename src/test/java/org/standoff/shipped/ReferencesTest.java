package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whatever a shipped file refers to is shipped, in a pack that it may use. */
class ReferencesTest {
  private record Reference(ShippedFile from, String kind, String id) {
    String pack() {
      return id.substring(0, id.indexOf('/'));
    }

    @Override
    public String toString() {
      return from + " refers to the " + kind + " " + id;
    }
  }

  @Test
  void everyReferenceLeadsToAnItem() {
    Map<String, Set<String>> ids =
        ShippedCatalogue.items().stream()
            .collect(
                Collectors.groupingBy(
                    ShippedFile::kind, Collectors.mapping(ShippedFile::id, Collectors.toSet())));
    assertThat(references())
        .as("correct the id, or add the item")
        .isNotEmpty()
        .allMatch(reference -> ids.get(reference.kind()).contains(reference.id()));
  }

  @Test
  void everyReferenceStaysInThePackOrInThoseThatItUses() {
    Map<String, Set<String>> allowed =
        ShippedCatalogue.packs().stream()
            .collect(Collectors.toMap(ShippedFile::pack, ReferencesTest::reach));
    assertThat(references())
        .as("name the pack under uses in pack.yaml")
        .allMatch(reference -> allowed.get(reference.from().pack()).contains(reference.pack()));
  }

  @Test
  void packsUseOnlyPacksThatAreShipped() {
    Set<String> packs =
        ShippedCatalogue.packs().stream().map(ShippedFile::pack).collect(Collectors.toSet());
    assertThat(ShippedCatalogue.packs())
        .as("correct uses in pack.yaml")
        .allMatch(pack -> packs.containsAll(reach(pack)));
  }

  @Test
  void coreStandsAlone() {
    ShippedFile core =
        ShippedCatalogue.packs().stream()
            .filter(pack -> pack.pack().equals("core"))
            .findFirst()
            .orElseThrow();
    assertThat(reach(core)).as("core may use no other pack").containsExactly("core");
  }

  private static Set<String> reach(ShippedFile pack) {
    Set<String> reach = new HashSet<>(Set.of(pack.pack()));
    pack.each("/uses").forEach(used -> reach.add(used.textValue()));
    return reach;
  }

  private static List<Reference> references() {
    return ShippedCatalogue.items().stream().flatMap(ReferencesTest::referencesOf).toList();
  }

  private static Stream<Reference> referencesOf(ShippedFile file) {
    return switch (file.kind()) {
      case "source" ->
          Stream.of("/members", "/doubles")
              .flatMap(list -> file.each(list).stream())
              .map(id -> reference(file, "source", id));
      case "ensemble" ->
          Stream.concat(
              Stream.of(reference(file, "room", file.at("/room"))),
              file.each("/players").stream()
                  .flatMap(player -> player.at("/sources").valueStream())
                  .map(part -> reference(file, "source", part.at("/source"))));
      case "style" -> Stream.of(reference(file, "room", file.at("/surrounding/room")));
      default -> Stream.empty();
    };
  }

  private static Reference reference(ShippedFile from, String kind, JsonNode id) {
    return new Reference(from, kind, id.textValue());
  }
}
