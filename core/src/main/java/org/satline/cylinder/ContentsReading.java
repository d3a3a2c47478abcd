package org.satline.cylinder;

import java.util.Optional;
import org.satline.measurement.Reading;
import org.satline.quantity.Density;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/**
 * What was measured on a cylinder at rest. Immutable, thread-safe.
 *
 * @param pressure the pressure, absolute, above zero
 * @param temperature the temperature of the whole cylinder
 * @param settled whether the cylinder has stood long enough at an even temperature, out of the sun, valves shut
 * @param overallDensity contents over volume, where the cylinder was weighed
 */
record ContentsReading(
        Reading<Pressure> pressure,
        Reading<Temperature> temperature,
        boolean settled,
        Optional<Density> overallDensity) {
    /** {@inheritDoc} */
    ContentsReading {
        Parts.required("pressure temperature overallDensity", pressure, temperature, overallDensity);
        if (!(pressure.value().pascals() > 0)) {
            throw new IllegalArgumentException(
                    "pressure " + pressure.value() + " is not above zero; a gauge reading needs its atmosphere");
        }
    }
}
