/**
 * Takes a question with references, resolves it against one catalogue snapshot, calls the core and
 * returns the result with its basis: resolved inputs, revisions, assumptions. A question is one
 * record from the wire to the resolver; a reference is an id or the item itself, in the form of a
 * catalogue file.
 */
@NullMarked
package org.standoff.answers;

import org.jspecify.annotations.NullMarked;
