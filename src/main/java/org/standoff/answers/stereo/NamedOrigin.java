package org.standoff.answers.stereo;

import org.standoff.pairs.SoundOrigin;

/**
 * A source of a question.
 *
 * @param id its name in the answer
 * @param origin where its sound comes from
 * @param pointer where it stands in the question
 */
record NamedOrigin(String id, SoundOrigin origin, String pointer) {}
