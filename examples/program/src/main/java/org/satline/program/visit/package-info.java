/**
 * The command {@code visit}: the file of a visit in, one page out. Read {@link org.satline.program.visit.VisitReader} for the file and
 * {@link org.satline.program.visit.VisitPage} for the page.
 */
@NullMarked
package org.satline.program.visit;

import org.jspecify.annotations.NullMarked;
