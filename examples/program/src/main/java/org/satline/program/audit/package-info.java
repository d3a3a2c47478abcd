/** Files and pages of {@code audit}: answers of another calculator in, what became of them out. Start with {@code AuditFile}. */
@NullMarked
package org.satline.program.audit;

import org.jspecify.annotations.NullMarked;
