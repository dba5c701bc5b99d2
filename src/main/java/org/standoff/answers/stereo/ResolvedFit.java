package org.standoff.answers.stereo;

import java.util.Optional;
import org.standoff.acoustics.Room;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Resolved;
import org.standoff.pairs.fit.FitQuestion;

/**
 * A {@link StereoFitQuestion} with nothing left to look up.
 *
 * @param question to the core
 * @param room empty where none is asked for
 * @param kitRevision state of the kit, where the question asked for what is free
 * @param assumptions what was left open and how it was filled
 */
record ResolvedFit(
    FitQuestion question,
    Optional<Resolved<Room>> room,
    Optional<String> kitRevision,
    Assumptions assumptions) {}
