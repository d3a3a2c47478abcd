/**
 * How a result explains itself: the steps, each with formula, numbers and source, that led to it, and the findings that matter for what is
 * done next. Numbers keep their type; sentences are made in one room, {@code wording}. Read {@link org.satline.explanation.Step} and
 * {@link org.satline.explanation.Finding}.
 *
 * <p>It stands above every room of the library, since a fill limit, a flow direction and a verdict are all explained in the same way.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.explanation;

import org.jspecify.annotations.NullMarked;
