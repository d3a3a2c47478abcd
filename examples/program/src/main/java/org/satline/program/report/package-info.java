/**
 * The report of a visit as one HTML file with the pictures in it, to be kept, sent and printed. It holds no script and asks for nothing
 * outside itself. Read {@link org.satline.program.report.VisitHtml} first.
 */
@NullMarked
package org.satline.program.report;

import org.jspecify.annotations.NullMarked;
