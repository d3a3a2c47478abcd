/**
 * The saturation curve of a refrigerant: bubble and dew lines, saturated properties, superheat, subcooling and glide. One interface, two
 * engines: solving the equation of state, or reading a certified table that a provider on the class path offers.
 *
 * <p>Read {@link org.satline.saturation.SaturationCurve} first; get one from {@link org.satline.saturation.SaturationCurves}.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.saturation;

import org.jspecify.annotations.NullMarked;
