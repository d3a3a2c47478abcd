/**
 * Moving refrigerant: which way it will flow, and how to purge a hose. Read {@link org.satline.transfer.FlowCheck} first.
 *
 * <p>The figures help a licensed person; the rule text in force and the local code govern.
 */
@NullMarked
package org.satline.transfer;

import org.jspecify.annotations.NullMarked;
