/**
 * The command {@code points}: properties in bulk, row by row. Read {@link org.satline.program.points.PointQuantity} first: it lists
 * what can be asked for.
 */
@NullMarked
package org.satline.program.points;

import org.jspecify.annotations.NullMarked;
