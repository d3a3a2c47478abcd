package org.satline.transfer.hookup;

import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/**
 * What one volume holds at one moment. Immutable, thread-safe. {@link HookUp} makes it from what is known on site.
 *
 * @param content air, nothing, vapour or liquid
 * @param pressure its pressure, absolute
 * @param origin whose refrigerant it is
 * @param temperature temperature of what it holds
 * @param refrigerant mass of refrigerant
 * @param air mass of air or another gas that does not condense
 */
public record VolumeState(
        VolumeContent content,
        Pressure pressure,
        GasOrigin origin,
        Temperature temperature,
        Mass refrigerant,
        Mass air) {
    /** {@inheritDoc} */
    public VolumeState {
        Parts.required("content pressure origin", content, pressure, origin);
        Parts.required("temperature refrigerant air", temperature, refrigerant, air);
    }
}
