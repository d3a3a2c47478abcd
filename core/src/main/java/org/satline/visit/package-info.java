/**
 * One service visit: what was found on site in, what follows from it out. Read {@link org.satline.visit.VisitReporter} first, then
 * {@link org.satline.visit.VisitReport}.
 *
 * <p>Nothing here lays out text or reads files: a report is typed data, with the derivation of its numbers. It supports licensed practice
 * and does not replace it.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.visit;

import org.jspecify.annotations.NullMarked;
