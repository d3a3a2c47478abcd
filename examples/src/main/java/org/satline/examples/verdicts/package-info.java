/**
 * The command {@code verdicts}: charge checks in bulk. Read {@link org.satline.examples.verdicts.VerdictRows} first.
 */
@NullMarked
package org.satline.examples.verdicts;

import org.jspecify.annotations.NullMarked;
