/**
 * How much refrigerant next: the step that the answers so far allow, and charge by weight for lines longer than the charge on the nameplate
 * covers. Read {@link org.satline.step.StepAdvisor} first.
 *
 * <p>It supports licensed practice and does not replace it.
 *
 * <p>Experimental: how a step is found may change in any release.
 */
@NullMarked
package org.satline.step;

import org.jspecify.annotations.NullMarked;
