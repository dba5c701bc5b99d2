/** Which settings for a source and a distance: the question, its resolution and the answer. */
@NullMarked
package org.standoff.answers.settings;

import org.jspecify.annotations.NullMarked;
