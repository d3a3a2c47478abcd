package org.satline.visit;

import java.util.Optional;
import org.satline.measurement.PressureInstrument;
import org.satline.measurement.Thermometer;
import org.satline.measurement.WeighingScale;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;

/**
 * What the readings of a visit were taken with. Immutable, thread-safe.
 *
 * @param suctionGauge gauge on the low side, also held on a cylinder
 * @param liquidGauge gauge on the high side
 * @param thermometer for all temperatures
 * @param pipeContact limit of the contact error of a clamp on a pipe
 * @param scale under the cylinders, where there is one
 */
public record Instruments(
        PressureInstrument suctionGauge,
        PressureInstrument liquidGauge,
        Thermometer thermometer,
        TemperatureDifference pipeContact,
        Optional<WeighingScale> scale) {
    /** {@inheritDoc} */
    public Instruments {
        Parts.required("suctionGauge liquidGauge thermometer", suctionGauge, liquidGauge, thermometer);
        Parts.required("pipeContact scale", pipeContact, scale);
    }
}
