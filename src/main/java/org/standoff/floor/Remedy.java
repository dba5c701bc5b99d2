package org.standoff.floor;

import java.util.Optional;

/**
 * Something that would help one microphone, computed anew with the change in place.
 *
 * @param kind what is done
 * @param appliesTo id of the microphone, of the offending source, or {@code room}
 * @param what one sentence for people, with the figures
 * @param gainDb by how much the isolation rises
 * @param isolationDb the isolation that it leaves
 * @param wantedDb the wanted direct sound that it leaves
 * @param microphone how the microphone stands then, where it is the microphone that changes
 * @param barrier what is put up, where something is
 */
public record Remedy(
    RemedyKind kind,
    String appliesTo,
    String what,
    double gainDb,
    double isolationDb,
    double wantedDb,
    Optional<FloorMicrophone> microphone,
    Optional<PlacedBarrier> barrier) {}
