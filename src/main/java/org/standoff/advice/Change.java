package org.standoff.advice;

/**
 * The price of one single change to the recommended settings: what each figure moves by.
 *
 * @param setting what is changed: {@code pattern}, {@code filter}, {@code pad}, {@code
 *     in-line-pad}, {@code preamp-pad}, {@code distance}
 * @param to what it is changed to, in words
 * @param headroomDb change of the guarded headroom, in dB
 * @param clips whether something clips at the guarded percentile then
 * @param gainDb change of the gain, in dB
 * @param noiseDb change of the total noise, in dB
 * @param isolationDb change of the isolation, in dB
 * @param riseAtLowestDb change of the proximity rise at the lowest wanted note, in dB
 * @param filterLossAtLowestDb change of the filter's loss there, in dB
 */
public record Change(
    String setting,
    String to,
    double headroomDb,
    boolean clips,
    double gainDb,
    double noiseDb,
    double isolationDb,
    double riseAtLowestDb,
    double filterLossAtLowestDb) {

  static Change between(String setting, String to, Assessment from, Assessment changed) {
    return new Change(
        setting,
        to,
        changed.levels().guarded().leastDb() - from.levels().guarded().leastDb(),
        changed.levels().clips(),
        changed.levels().loudest().gain().setDb() - from.levels().loudest().gain().setDb(),
        changed.noise().totalDba() - from.noise().totalDba(),
        changed.view().isolationDb() - from.view().isolationDb(),
        changed.view().riseAtLowestDb() - from.view().riseAtLowestDb(),
        changed.filterLossAtLowestDb() - from.filterLossAtLowestDb());
  }
}
