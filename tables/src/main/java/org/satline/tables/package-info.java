/**
 * Certified saturation tables: their format, reader, generator and certificates.
 *
 * <p>With this jar on the class path {@link org.satline.saturation.SaturationCurves#of} answers from its tables.
 * {@link org.satline.tables.GeneratedTable} makes one of an equation of your own, {@link org.satline.tables.Certificate} says how exact a
 * table is.
 *
 * <p>Stable from the first release on; the generator and the format of its files may change in any release.
 */
@NullMarked
package org.satline.tables;

import org.jspecify.annotations.NullMarked;
