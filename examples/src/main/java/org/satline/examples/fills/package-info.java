/**
 * The command {@code fills}: limits of cylinders in bulk. Read {@link org.satline.examples.fills.FillAnswers} first.
 */
@NullMarked
package org.satline.examples.fills;

import org.jspecify.annotations.NullMarked;
