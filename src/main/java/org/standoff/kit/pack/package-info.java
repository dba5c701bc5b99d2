/**
 * Catalogue packs that houses publish over the API. They stand in the database, and every instance
 * has them in its catalogue as if they were files.
 */
@NullMarked
package org.standoff.kit.pack;

import org.jspecify.annotations.NullMarked;
