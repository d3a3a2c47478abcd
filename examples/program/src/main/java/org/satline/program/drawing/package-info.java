/** Drawings of plain shapes and text, charts among them, and their SVG. Nothing here needs a screen, a font or a library. */
@NullMarked
package org.satline.program.drawing;

import org.jspecify.annotations.NullMarked;
