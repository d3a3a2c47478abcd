/**
 * How much refrigerant next: charge by weight for lines longer than the charge on the nameplate covers. Read
 * {@link org.satline.step.LineCharge} first.
 *
 * <p>It supports licensed practice and does not replace it.
 */
@NullMarked
package org.satline.step;

import org.jspecify.annotations.NullMarked;
