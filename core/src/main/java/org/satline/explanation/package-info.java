/**
 * How a result explains itself: the steps, each with formula, numbers, units and source, that led to it. Read {@link org.satline.explanation.Step}.
 *
 * <p>It stands above every room of the library, since a fill limit, a flow direction and a verdict are all explained in the same way.
 */
@NullMarked
package org.satline.explanation;

import org.jspecify.annotations.NullMarked;
