/**
 * Physical quantities as immutable values: made from SI and trade units, computed in SI, parsed and printed in both.
 *
 * <p>Read {@link org.satline.quantity.Pressure} first: it is absolute, and a gauge reading becomes one only together with its
 * {@link org.satline.quantity.Atmosphere}. A point on a scale and a difference are two types, as
 * {@link org.satline.quantity.Temperature} and {@link org.satline.quantity.TemperatureDifference} show.
 *
 * <p>Every type has {@code parse}, which reads {@code number unit} with a point as decimal mark in any locale, and
 * {@code toString}, {@code format} and {@code in}, whose text {@code parse} reads back. Conversion factors are exact by
 * definition (SI Brochure, 9th ed.; NIST SP 811, 2008 ed., appendix B) unless the type says otherwise.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.quantity;

import org.jspecify.annotations.NullMarked;
