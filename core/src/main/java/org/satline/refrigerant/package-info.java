/**
 * The refrigerants by name: designation, composition, molar mass, safety group, published boiling and critical points, environmental
 * figures and where each came from. It knows nothing of equations; whether a number can be computed is the equation room's answer.
 *
 * <p>Read {@link org.satline.refrigerant.Catalogue} first, then {@link org.satline.refrigerant.Refrigerant}.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.refrigerant;

import org.jspecify.annotations.NullMarked;
