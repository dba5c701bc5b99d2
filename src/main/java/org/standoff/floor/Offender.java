package org.standoff.floor;

/**
 * An unwanted source in one microphone.
 *
 * @param sourceId id of the source
 * @param totalDb all of it
 * @param directDb its direct sound
 * @param roomDb its reflections and late field
 * @param belowWantedDb direct sound of what is wanted over all of this source; negative when it is
 *     louder
 * @param direct whether direct sound carries it: only then can an aim or a barrier help
 * @param distanceRatio its distance over that of the nearest wanted source
 * @param ratioPromisesDb 20 lg of that ratio: what the handbooks' 3-to-1 advice counts on, equal
 *     sources, no pattern and no room given
 */
public record Offender(
    String sourceId,
    double totalDb,
    double directDb,
    double roomDb,
    double belowWantedDb,
    boolean direct,
    double distanceRatio,
    double ratioPromisesDb) {}
