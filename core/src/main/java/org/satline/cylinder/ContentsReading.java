package org.satline.cylinder;

import java.util.Optional;
import org.satline.quantity.Density;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/**
 * What was measured on a cylinder at rest. Immutable, thread-safe.
 *
 * @param pressure the pressure, absolute
 * @param pressureUncertainty its expanded uncertainty, k = 2, not below zero
 * @param temperature the temperature of the whole cylinder
 * @param temperatureUncertainty its expanded uncertainty, k = 2, not below zero
 * @param settled whether the cylinder has stood long enough at an even temperature, out of the sun, valves shut
 * @param overallDensity contents over volume, where the cylinder was weighed
 */
public record ContentsReading(
        Pressure pressure,
        PressureDifference pressureUncertainty,
        Temperature temperature,
        TemperatureDifference temperatureUncertainty,
        boolean settled,
        Optional<Density> overallDensity) {
    /** {@inheritDoc} */
    public ContentsReading {
        Parts.required("temperature overallDensity", temperature, overallDensity);
        if (!(pressureUncertainty.pascals() >= 0) || !(temperatureUncertainty.kelvins() >= 0)) {
            throw new IllegalArgumentException("uncertainty " + pressureUncertainty + " or " + temperatureUncertainty
                    + " is below zero; give its amount");
        }
        if (!(pressure.pascals() > 0)) {
            throw new IllegalArgumentException(
                    "pressure " + pressure + " is not above zero; a gauge reading needs its atmosphere");
        }
    }
}
