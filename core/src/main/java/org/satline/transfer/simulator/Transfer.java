package org.satline.transfer.simulator;

import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.Medium;

/**
 * What went from one volume to another during an act. Immutable, thread-safe.
 *
 * @param from the volume it left; {@code air} for the open air
 * @param to the volume it entered
 * @param medium what left: liquid may flash on the way
 * @param origin whose refrigerant; {@link GasOrigin#NONE} for air alone
 * @param refrigerant mass of refrigerant
 * @param air mass of air
 */
public record Transfer(String from, String to, Medium medium, GasOrigin origin, Mass refrigerant, Mass air) {
    /** {@inheritDoc} */
    public Transfer {
        Parts.required("from to medium origin refrigerant air", from, to, medium, origin, refrigerant, air);
    }
}
