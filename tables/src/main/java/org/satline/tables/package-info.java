/**
 * Certified saturation tables: their format, reader, generator and certificates.
 *
 * <p>Stable from the first release on; the generator and the format of its files may change in any release.
 */
@NullMarked
package org.satline.tables;

import org.jspecify.annotations.NullMarked;
