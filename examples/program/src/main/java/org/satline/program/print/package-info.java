/** Drawings as files: SVG, PNG and PDF, all three from the same shapes. The only room that knows a raster or PDF library. */
@NullMarked
package org.satline.program.print;

import org.jspecify.annotations.NullMarked;
