package org.standoff.answers.stereo;

import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Room;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Resolved;
import org.standoff.pairs.listening.ListeningModel;

/**
 * A {@link GeometryQuestion} with nothing left to look up.
 *
 * @param pair in its place
 * @param placed true when the question says where the pair stands
 * @param sources in the order of the question
 * @param models in the order of the question
 * @param criterion whose limit gives the recording angle
 * @param room empty where none is asked for
 * @param air in the room
 * @param assumptions what was left open and how it was filled
 */
record ResolvedGeometry(
    ResolvedPair pair,
    boolean placed,
    List<NamedOrigin> sources,
    List<ListeningModel> models,
    ListeningModel criterion,
    Optional<Resolved<Room>> room,
    Air air,
    Assumptions assumptions) {
  ResolvedGeometry {
    sources = List.copyOf(sources);
    models = List.copyOf(models);
  }
}
