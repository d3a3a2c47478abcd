/**
 * What the planner expects one act on a hook-up to lead to, in classes of content and levels of pressure, and what it forbids. Read {@link
 * org.satline.transfer.transition.PlanHand} first. {@code HookUpSimulator} is another model of the same, and tests hold every plan to it.
 *
 * <p>Experimental: may change in any release.
 */
@NullMarked
package org.satline.transfer.transition;

import org.jspecify.annotations.NullMarked;
