/**
 * Pages: what stands on one, as blocks, and the writers of plain text, Markdown and HTML. Read {@link org.satline.program.page.Block}
 * first. Every writer sends every text through {@link org.satline.program.page.Escape}; figures are printed by
 * {@link org.satline.program.page.Printed}.
 */
@NullMarked
package org.satline.program.page;

import org.jspecify.annotations.NullMarked;
