/**
 * The hook-up as a network: system, manifold, hoses and cylinders, what each part holds, the acts on it, and the plan that an order of acts
 * is. Read {@link org.satline.transfer.hookup.HookUp} first, then {@link org.satline.transfer.hookup.HookUpPlan}.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.transfer.hookup;

import org.jspecify.annotations.NullMarked;
