/** Certified saturation tables: their format, reader, generator and certificates. */
@NullMarked
package org.satline.tables;

import org.jspecify.annotations.NullMarked;
