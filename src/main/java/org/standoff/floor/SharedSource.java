package org.standoff.floor;

import java.util.ArrayList;
import java.util.List;

/**
 * Two microphones that hear the same source, one of them there for it, added at their faders. Only
 * the direct sounds comb; the room in them adds as energy and softens the notches.
 *
 * @param sourceId id of the source
 * @param oneId the microphone that it reaches first
 * @param otherId the later one
 * @param comb of their direct sounds
 */
public record SharedSource(String sourceId, String oneId, String otherId, Comb comb) {

  static List<SharedSource> of(BleedMatrix matrix) {
    List<SharedSource> shared = new ArrayList<>();
    List<FloorMicrophone> microphones = matrix.plan().microphones();
    for (int source = 0; source < matrix.plan().sources().size(); source++) {
      FloorSource sounding = matrix.plan().sources().get(source);
      for (int one = 0; one < microphones.size(); one++) {
        for (int other = 0; other < one; other++) {
          boolean wanted =
              microphones.get(one).wants(sounding) || microphones.get(other).wants(sounding);
          boolean heard =
              matrix.cell(one, source).direct().sum() > 0
                  && matrix.cell(other, source).direct().sum() > 0;
          if (wanted && heard) {
            shared.add(pair(matrix, source, one, other));
          }
        }
      }
    }
    return List.copyOf(shared);
  }

  private static SharedSource pair(BleedMatrix matrix, int source, int one, int other) {
    BleedCell a = matrix.cell(one, source);
    BleedCell b = matrix.cell(other, source);
    double aDb = a.direct().overallDb() + matrix.plan().microphones().get(one).faderDb();
    double bDb = b.direct().overallDb() + matrix.plan().microphones().get(other).faderDb();
    Comb comb = Comb.of(aDb, bDb, a.arrivalMs() - b.arrivalMs(), a.inverted() != b.inverted());
    boolean first = a.arrivalMs() <= b.arrivalMs();
    return new SharedSource(
        a.sourceId(),
        first ? a.microphoneId() : b.microphoneId(),
        first ? b.microphoneId() : a.microphoneId(),
        comb);
  }
}
