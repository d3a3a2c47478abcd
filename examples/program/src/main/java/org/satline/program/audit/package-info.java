/** The page of {@code audit} and the rows of its output. Start with {@code AuditPage}. */
@NullMarked
package org.satline.program.audit;

import org.jspecify.annotations.NullMarked;
