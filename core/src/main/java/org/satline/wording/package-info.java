/**
 * Typed results as text: patterns under keys in plain files, one folder for each language, and one printer of numbers. Read {@link
 * org.satline.wording.Wording} first.
 *
 * <p>The last room of the library: no other one holds a sentence. A text that is missing in a language is taken from English, and one that
 * is missing there too from the words of its key, so that nothing that can hurt someone is ever an empty line.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.wording;

import org.jspecify.annotations.NullMarked;
