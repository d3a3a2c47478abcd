/**
 * Moving refrigerant: which way it will flow, the state of a hose, and one permit for every move. Read
 * {@link org.satline.transfer.PermitOffice} first.
 *
 * <p>The figures help a licensed person; the rule text in force and the local code govern.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.transfer;

import org.jspecify.annotations.NullMarked;
