/**
 * How much a cylinder may hold: what is stamped on it, and the fill rules of law and of the trade, side by side. Read {@link
 * org.satline.filling.FillAssessment} first.
 *
 * <p>The figures help a licensed person; the rule text in force and the local code govern.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.filling;

import org.jspecify.annotations.NullMarked;
