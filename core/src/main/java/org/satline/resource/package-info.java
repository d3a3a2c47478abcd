/**
 * Strict reading of the data files that ship in the jar, and the one exception for a file that is broken. Read {@link
 * org.satline.resource.CsvResource} first.
 *
 * <p>A reader that skips what it does not understand loses a row to a typing slip, so this one refuses it, with file and line.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.resource;

import org.jspecify.annotations.NullMarked;
