/**
 * What follows from each act on a hook-up: flows, trapped liquid, air let in. Read {@link org.satline.transfer.simulator.HookUpSimulator}
 * first.
 *
 * <p>It shares no code with the search for plans, so that it can prove them.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.transfer.simulator;

import org.jspecify.annotations.NullMarked;
