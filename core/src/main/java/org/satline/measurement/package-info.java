/**
 * Readings with their measurement uncertainty: instrument classes, propagation, correct rounding, and whether a reading has settled.
 *
 * <p>Read {@link org.satline.measurement.UncertaintyBudget} first: every reading and every result carries one, and since a budget keeps
 * apart the origins of an error, two readings by one instrument stay correlated through any calculation.
 *
 * <p>Method: JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM).
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.measurement;

import org.jspecify.annotations.NullMarked;
