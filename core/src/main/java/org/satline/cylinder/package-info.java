/**
 * What a refrigerant cylinder may hold: its stamps, the fill rules of law and of the trade, the room left by the scale, the cylinder as a
 * closed vessel, and whether its contents are what the label says. Read {@link org.satline.cylinder.FillAssessment} first.
 *
 * <p>The figures help a licensed person; the rule text in force and the local code govern.
 */
@NullMarked
package org.satline.cylinder;

import org.jspecify.annotations.NullMarked;
