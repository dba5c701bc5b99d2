package org.standoff.answers.floor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.acoustics.Validity;
import org.standoff.answers.Assumptions;
import org.standoff.floor.FloorMicrophone;
import org.standoff.floor.FloorPlan;
import org.standoff.floor.FloorSource;

/**
 * A floor, resolved and without faults.
 *
 * @param plan what the core computes with
 * @param roomId id of the room
 * @param sources in the order of the plan
 * @param microphones in the order of the plan
 * @param barrierIds in the order of the plan
 * @param radiation how sources radiate
 * @param assumptions what was left open
 */
record ResolvedFloor(
    FloorPlan plan,
    String roomId,
    List<Source> sources,
    List<Microphone> microphones,
    List<String> barrierIds,
    Radiation radiation,
    Assumptions assumptions) {

  /**
   * A source.
   *
   * @param sourceId id in the catalogue
   * @param placementId whose radiator and spectrum count
   * @param floor as it stands
   * @param pointer where the question tells it
   */
  record Source(
      String sourceId,
      String placementId,
      List<String> members,
      FloorSource floor,
      String pointer) {}

  /**
   * A microphone.
   *
   * @param microphoneId id in the catalogue; empty for a bare pattern
   * @param floor as it stands
   * @param pointer where the question tells it
   */
  record Microphone(Optional<String> microphoneId, FloorMicrophone floor, String pointer) {}

  ResolvedFloor {
    sources = List.copyOf(sources);
    microphones = List.copyOf(microphones);
    barrierIds = List.copyOf(barrierIds);
  }

  /**
   * Doubts that many cells share, told once a code and for all places together: a floor of a
   * thousand cells would drown its answer in them.
   */
  static List<Validity> gathered(List<Validity> all, int mostOfACode) {
    Map<String, List<Validity>> byCode = new LinkedHashMap<>();
    all.forEach(one -> byCode.computeIfAbsent(one.code(), code -> new ArrayList<>()).add(one));
    List<Validity> told = new ArrayList<>();
    byCode.forEach(
        (code, doubts) -> {
          doubts.stream().distinct().limit(mostOfACode).forEach(told::add);
          if (doubts.size() > mostOfACode) {
            told.add(new Validity(code, "and so at " + (doubts.size() - mostOfACode) + " more"));
          }
        });
    return told;
  }
}
