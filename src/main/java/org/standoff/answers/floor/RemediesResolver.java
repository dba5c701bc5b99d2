package org.standoff.answers.floor;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.NearMiss;
import org.standoff.floor.AimLimits;
import org.standoff.floor.Barrier;
import org.standoff.floor.FloorMicrophone;
import org.standoff.floor.Lining;
import org.standoff.floor.RemedyOptions;

/** Resolves which remedies are looked for. */
final class RemediesResolver {
  private static final String POINTER = "/remedies";

  /** What a studio has at hand where nothing is told. */
  private static final ItemId USUAL_BARRIER = new ItemId("core", "gobo-absorbing");

  private static final ItemId USUAL_MATERIAL = new ItemId("core", "drape-heavy");
  private static final double USUAL_AREA_M2 = 30;
  private static final String BARRIER_ASSUMED = "a barrier at hand is taken as %s";
  private static final String MATERIAL_ASSUMED = "absorbing material at hand is taken as %s";

  private final References references;
  private final AskedRemedies asked;
  private final ResolvedFloor floor;

  RemediesResolver(References references, @Nullable AskedRemedies asked, ResolvedFloor floor) {
    this.references = references;
    this.asked = asked == null ? AskedRemedies.USUAL : asked;
    this.floor = floor;
  }

  /** Ids of the microphones that remedies are looked for. */
  Set<String> microphones(int order) {
    List<String> all = floor.plan().microphones().stream().map(FloorMicrophone::id).toList();
    List<String> named = asked.microphones();
    if (named == null) {
      if (arrivals(all, order) > FloorCost.MOST_UNASKED_ARRIVALS) {
        floor
            .assumptions()
            .add("remedies are left out, as they would cost too much for all: name microphones");
        return Set.of();
      }
      return new LinkedHashSet<>(all);
    }
    for (int i = 0; i < named.size(); i++) {
      if (!all.contains(named.get(i))) {
        references.fault(
            QuestionFault.of(
                    POINTER + "/microphones/" + i,
                    QuestionFault.Kind.UNKNOWN_VALUE,
                    "No such microphone is on this floor.")
                .found(named.get(i))
                .allowed(String.join(", ", all))
                .suggestion(NearMiss.of(named.get(i), all)));
      }
    }
    return new LinkedHashSet<>(named);
  }

  /** Arrivals that are weighed to look for remedies. */
  long arrivals(Collection<String> microphones, int order) {
    return microphones.size() * FloorCost.aimArrivals(floor.plan(), order, 1, 0, false);
  }

  /**
   * What may be tried. What is told is resolved even where nothing is looked for, so that no fault
   * passes unseen.
   */
  RemedyOptions options(Set<String> lookedFor) {
    boolean looks = !lookedFor.isEmpty();
    RemedyOptions usual = RemedyOptions.USUAL;
    double lossDb =
        asked.wantedLossDb() == null ? AimLimits.USUAL_WANTED_LOSS_DB : asked.wantedLossDb();
    return new RemedyOptions(
        AimLimits.anyDirection(lossDb),
        asked.closerShare() == null ? usual.closerShare() : asked.closerShare(),
        asked.leastDistanceM() == null ? usual.leastDistanceM() : asked.leastDistanceM(),
        asked.softerDb() == null ? usual.softerDb() : asked.softerDb(),
        atHand(looks, asked.barrier(), "/barrier", USUAL_BARRIER, BARRIER_ASSUMED),
        lining(looks));
  }

  private Optional<Lining> lining(boolean looks) {
    double areaM2 = asked.materialAreaM2() == null ? USUAL_AREA_M2 : asked.materialAreaM2();
    return atHand(looks, asked.material(), "/material", USUAL_MATERIAL, MATERIAL_ASSUMED)
        .map(of -> new Lining(of.title(), areaM2, of.absorption()));
  }

  private Optional<Barrier> atHand(
      boolean looks, @Nullable JsonNode told, String member, ItemId usual, String words) {
    if (told != null) {
      return references.resolve(Barrier.class, told, POINTER + member).map(Resolved::item);
    }
    if (!looks) {
      return Optional.empty();
    }
    Optional<Barrier> found = references.catalogue().find(Barrier.class, usual).map(Item::value);
    found.ifPresent(one -> floor.assumptions().add(words, one.id()));
    return found;
  }
}
