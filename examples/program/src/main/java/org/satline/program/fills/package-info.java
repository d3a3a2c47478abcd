/**
 * The command {@code fills}: limits of cylinders in bulk. Read {@link org.satline.program.fills.FillAnswers} first.
 */
@NullMarked
package org.satline.program.fills;

import org.jspecify.annotations.NullMarked;
