package org.standoff.answers.settings;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.standoff.advice.Question;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Played;
import org.standoff.chain.Microphone;

/**
 * A settings question with its references resolved.
 *
 * @param question for the core
 * @param played the source as played
 * @param microphones to be ranked
 * @param doubles questions for the doubled sources, the question itself first; empty without
 * @param preampId of the preamp
 * @param roomId of the room, where one is known or assumed
 * @param assumptions what was left open and how it was filled
 */
record ResolvedSettingsQuestion(
    Question question,
    Played played,
    Collection<Microphone> microphones,
    List<Question> doubles,
    String preampId,
    Optional<String> roomId,
    Assumptions assumptions) {}
