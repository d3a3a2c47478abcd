/**
 * The charge of a running system: superheat, subcooling, targets, checks before a verdict, and the verdict with its doubt.
 *
 * <p>Read {@link org.satline.charge.ChargeJudge} first.
 *
 * <p>It supports licensed practice and does not replace it.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.charge;

import org.jspecify.annotations.NullMarked;
