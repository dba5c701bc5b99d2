package org.standoff.answers.settings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.advice.Question;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Played;
import org.standoff.chain.Microphone;
import org.standoff.chain.Settings;

/**
 * A settings question with its references resolved.
 *
 * @param question for the core
 * @param played the source as played
 * @param candidates to be ranked
 * @param doubles the doubled sources; empty without
 * @param given settings to compare on the one microphone, in the order of the question
 * @param preampId of the preamp
 * @param roomId of the room, where one is known or assumed
 * @param assumptions what was left open and how it was filled
 */
record ResolvedSettingsQuestion(
    Question question,
    Played played,
    Candidates candidates,
    List<Doubled> doubles,
    List<Given> given,
    String preampId,
    Optional<String> roomId,
    Assumptions assumptions) {

  /**
   * Settings to compare.
   *
   * @param microphone the one they are given for
   * @param settings what is switched
   * @param gainDb the gain; recommended where it is absent
   */
  record Given(Microphone microphone, Settings settings, OptionalDouble gainDb) {}

  /**
   * A source that is doubled on.
   *
   * @param played the source as played
   * @param question the same question, asked for it
   */
  record Doubled(Played played, Question question) {}
}
