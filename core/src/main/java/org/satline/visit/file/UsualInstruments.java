package org.satline.visit.file;

import java.util.Optional;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.Thermometer;
import org.satline.measurement.ThermometerClass;
import org.satline.measurement.WeighingScale;
import org.satline.quantity.Mass;
import org.satline.quantity.TemperatureDifference;
import org.satline.visit.Instruments;

/** Instruments taken where a file names none that can be read, only so that a danger can be told; common practice, no source. */
final class UsualInstruments {
    private UsualInstruments() {}

    static Instruments get() {
        return new Instruments(
                DigitalGauge.ra32SuctionLine(),
                DigitalGauge.ra32LiquidLine(),
                new Thermometer("thermometer", ThermometerClass.named("thermocouple-k-class-1"), 0.1),
                TemperatureDifference.ofKelvins(0.5),
                Optional.of(new WeighingScale("scale", Mass.ofPounds(0.05), 0.1)));
    }
}
