/**
 * The command {@code points}: properties in bulk, row by row. Read {@link org.satline.examples.points.PointQuantity} first: it lists
 * what can be asked for.
 */
@NullMarked
package org.satline.examples.points;

import org.jspecify.annotations.NullMarked;
