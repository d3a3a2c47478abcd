/**
 * The command {@code verdicts}: charge checks in bulk. Read {@link org.satline.program.verdicts.VerdictRows} first.
 */
@NullMarked
package org.satline.program.verdicts;

import org.jspecify.annotations.NullMarked;
