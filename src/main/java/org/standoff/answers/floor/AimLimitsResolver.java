package org.standoff.answers.floor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.catalogue.NearMiss;
import org.standoff.floor.AimLimits;
import org.standoff.floor.Barrier;
import org.standoff.floor.FloorMicrophone;
import org.standoff.floor.FloorSource;
import org.standoff.floor.PlacedBarrier;

/** Resolves which microphones are aimed, and within which limits. */
final class AimLimitsResolver {
  private final References references;
  private final AimQuestion asked;
  private final ResolvedFloor floor;

  AimLimitsResolver(References references, AimQuestion asked, ResolvedFloor floor) {
    this.references = references;
    this.asked = asked;
    this.floor = floor;
  }

  /** Per microphone, in the order asked for. */
  Map<String, AimLimits> limits() {
    List<String> aimable =
        floor.plan().microphones().stream()
            .filter(microphone -> !microphone.wanted().isEmpty())
            .map(FloorMicrophone::id)
            .toList();
    List<String> named = asked.microphones() == null ? aimable : asked.microphones();
    if (named.isEmpty()) {
      references.fault(
          QuestionFault.of(
              AskedFloor.POINTER + "/microphones/0/wanted",
              QuestionFault.Kind.MISSING,
              "No microphone says what it is there for, so nothing is unwanted."));
    }
    for (int i = 0; i < named.size(); i++) {
      known(
          named.get(i),
          aimable,
          "/microphones/" + i,
          "No microphone of this name is here for a source.");
    }
    Map<String, AimRange> own = asked.limitsOf() == null ? Map.of() : asked.limitsOf();
    own.keySet()
        .forEach(
            name -> known(name, named, "/limits_of/" + escaped(name), "This one is not aimed."));
    Map<String, Double> weights = weights();
    Map<String, AimLimits> limits = new LinkedHashMap<>();
    for (String name : named) {
      AimRange usual = asked.limits() == null ? AimRange.ANY : asked.limits();
      String pointer = own.containsKey(name) ? "/limits_of/" + escaped(name) : "/limits";
      floor
          .plan()
          .microphone(name)
          .flatMap(one -> limits(one, own.getOrDefault(name, usual), weights, pointer))
          .ifPresent(found -> limits.put(name, found));
    }
    return limits;
  }

  /** Where a barrier may stand. */
  List<PlacedBarrier> places() {
    List<BarrierPlace> places = asked.barrierPlaces() == null ? List.of() : asked.barrierPlaces();
    if ((asked.barrier() == null) != places.isEmpty()) {
      references.fault(
          QuestionFault.of(
              asked.barrier() == null ? "/barrier" : "/barrier_places",
              QuestionFault.Kind.MISSING,
              "A barrier goes with the places where it may stand."));
    }
    if (asked.barrier() == null) {
      return List.of();
    }
    Optional<Barrier> barrier =
        references.resolve(Barrier.class, asked.barrier(), "/barrier").map(Resolved::item);
    List<PlacedBarrier> placed = new ArrayList<>();
    places.forEach(place -> barrier.map(place::of).ifPresent(placed::add));
    return placed;
  }

  /** Arrivals that the searches weigh. */
  long arrivals(Collection<AimLimits> limits, int order) {
    int places = asked.barrierPlaces() == null ? 0 : asked.barrierPlaces().size();
    return limits.stream()
        .mapToLong(
            one ->
                FloorCost.aimArrivals(
                    floor.plan(), order, 1 + one.patterns().size(), places, one.reachM() > 0))
        .sum();
  }

  private Map<String, Double> weights() {
    Map<String, Double> weights = asked.weightsDb() == null ? Map.of() : asked.weightsDb();
    List<String> sources = floor.plan().sources().stream().map(FloorSource::id).toList();
    weights
        .keySet()
        .forEach(
            name ->
                known(
                    name,
                    sources,
                    "/weights_db/" + escaped(name),
                    "No such source is on this floor."));
    return weights;
  }

  private Optional<AimLimits> limits(
      FloorMicrophone microphone, AimRange range, Map<String, Double> weights, String pointer) {
    double fromDeg = or(range.azimuthFromDeg(), -180);
    double toDeg = or(range.azimuthToDeg(), 180);
    double lowestDeg = or(range.elevationFromDeg(), -90);
    double highestDeg = or(range.elevationToDeg(), 90);
    boolean azimuths = toDeg >= fromDeg && toDeg - fromDeg <= 360;
    if (!azimuths || highestDeg < lowestDeg) {
      references.fault(
          QuestionFault.of(
                  pointer + (azimuths ? "/elevation_to_deg" : "/azimuth_to_deg"),
                  QuestionFault.Kind.CONTRADICTION,
                  "A range goes upwards, azimuths to the left and at most once round.")
              .found(azimuths ? highestDeg : toDeg));
      return Optional.empty();
    }
    return Optional.of(
        new AimLimits(
            fromDeg,
            toDeg,
            lowestDeg,
            highestDeg,
            or(range.reachM(), 0),
            Boolean.TRUE.equals(range.switchPattern()) ? microphone.otherPatterns() : List.of(),
            or(range.wantedLossDb(), AimLimits.USUAL_WANTED_LOSS_DB),
            weights));
  }

  private void known(String name, List<String> known, String pointer, String detail) {
    if (!known.contains(name)) {
      references.fault(
          QuestionFault.of(pointer, QuestionFault.Kind.UNKNOWN_VALUE, detail)
              .found(name)
              .allowed(String.join(", ", known))
              .suggestion(NearMiss.of(name, known)));
    }
  }

  private static String escaped(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  private static double or(@Nullable Double value, double usual) {
    return value == null ? usual : value;
  }
}
