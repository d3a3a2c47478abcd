/**
 * The fields of a visit file in, the fields of its report out; it knows no library of JSON. Read {@link org.satline.visit.file.VisitFile}
 * first, then {@link org.satline.visit.file.ReportFields}.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.visit.file;

import org.jspecify.annotations.NullMarked;
