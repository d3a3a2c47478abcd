/**
 * The command {@code visit}: the file of a visit in, one page out. Read {@link org.satline.examples.visit.VisitReader} for the file and
 * {@link org.satline.examples.visit.VisitPage} for the page.
 */
@NullMarked
package org.satline.examples.visit;

import org.jspecify.annotations.NullMarked;
