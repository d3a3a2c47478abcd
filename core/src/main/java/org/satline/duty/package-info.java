/**
 * Legal duties as data: the level to which an appliance is evacuated before it is opened, leak rates and leak checks, who may take
 * refrigerant out and where recovered refrigerant may go. Read {@link org.satline.duty.TransferRules} first.
 *
 * <p>The figures help a licensed person; the rule text in force and the local code govern.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.duty;

import org.jspecify.annotations.NullMarked;
