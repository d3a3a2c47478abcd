package org.satline.transfer.hookup;

import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/** A cylinder of that size, m3, with that much refrigerant at rest at that temperature. */
record CylinderAtRest(GasLaw law, double size, Mass held, Temperature temperature) {
    /** With air that adds that much pressure, Pa; none for 0. */
    VolumeState with(double excess, GasOrigin origin) {
        double kilograms = held.kilograms();
        double kelvins = temperature.kelvins();
        boolean liquid = law.isLiquid(kilograms, size, kelvins);
        double space = liquid ? Math.max(size - kilograms / law.liquidDensity(kelvins), size / 1000) : size;
        double air = law.airKg(excess, space);
        return new VolumeState(
                content(liquid, excess > 0),
                Pressure.ofPascals(law.pressure(kilograms, air, size, kelvins)),
                kilograms > 0 ? origin : GasOrigin.NONE,
                temperature,
                held,
                Mass.ofKilograms(air));
    }

    private VolumeContent content(boolean liquid, boolean air) {
        if (air) {
            return VolumeContent.AIR;
        }
        if (held.kilograms() > 0) {
            return liquid ? VolumeContent.LIQUID : VolumeContent.VAPOUR;
        }
        return VolumeContent.NOTHING;
    }
}
