/** The files of {@code audit}: answers of another calculator in, what became of them out. Start with {@code AuditFile}. */
@NullMarked
package org.satline.program.answers;

import org.jspecify.annotations.NullMarked;
