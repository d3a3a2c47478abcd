/**
 * The report of a visit as one HTML file with the pictures in it, to be kept, sent and printed. It holds no script and asks for nothing outside itself. Read
 * {@link org.satline.examples.report.VisitHtml} first.
 */
@NullMarked
package org.satline.examples.report;

import org.jspecify.annotations.NullMarked;
