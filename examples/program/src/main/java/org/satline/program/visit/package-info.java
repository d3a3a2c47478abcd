/** The command {@code visit}: the report of a visit as one page. Read {@link org.satline.program.visit.VisitPage} first. */
@NullMarked
package org.satline.program.visit;

import org.jspecify.annotations.NullMarked;
