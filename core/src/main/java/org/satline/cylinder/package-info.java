/**
 * A cylinder on site: how it is weighed, what it holds, its states as a closed vessel, the room left in it, and all that was found, worked
 * out once. Read {@link org.satline.cylinder.CylinderCheck} first.
 *
 * <p>The figures help a licensed person; the rule text in force and the local code govern.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.cylinder;

import org.jspecify.annotations.NullMarked;
