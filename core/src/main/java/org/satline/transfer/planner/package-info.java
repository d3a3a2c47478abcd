/**
 * The search for a safe order of acts on a hook-up. Read {@link org.satline.transfer.planner.HookUpPlanner} first.
 *
 * <p>The plans help a licensed person; the rule text in force and the local code govern.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.transfer.planner;

import org.jspecify.annotations.NullMarked;
