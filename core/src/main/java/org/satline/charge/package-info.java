/**
 * The charge of a running system: superheat, subcooling, targets, checks before a verdict, the verdict with its doubt, an estimate of the
 * amount, and the size of the next step.
 *
 * <p>Read {@link org.satline.charge.ChargeJudge} first; {@link org.satline.charge.StepAdvisor} says how much to move next.
 *
 * <p>It supports licensed practice and does not replace it.
 */
@NullMarked
package org.satline.charge;

import org.jspecify.annotations.NullMarked;
