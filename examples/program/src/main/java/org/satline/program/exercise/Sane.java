package org.satline.program.exercise;

import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.TemperatureDifference;

/** Whether figures are such as a question may state. */
final class Sane {
    private static final double CLEAR_K = 0.5;

    private Sane() {}

    /** A target that a maker would print: 3 to 11 K of subcooling, 3 to 14 K of superheat (common practice, no source). */
    static boolean target(MeteringDevice metering, TemperatureDifference target) {
        double kelvins = target.kelvins();
        return kelvins >= 3 && kelvins <= (metering == MeteringDevice.EXPANSION_VALVE ? 11 : 14);
    }

    /** Superheat and subcooling fit together, clear of the limits at which no level is called. */
    static boolean margins(MeteringDevice metering, TemperatureDifference superheat, TemperatureDifference subcooling) {
        double sh = superheat.kelvins();
        double sc = subcooling.kelvins();
        return metering == MeteringDevice.EXPANSION_VALVE
                ? sh >= TemperatureDifference.ofFahrenheitDegrees(4).kelvins() + CLEAR_K
                        && sh <= TemperatureDifference.ofFahrenheitDegrees(25).kelvins() - CLEAR_K
                : sc >= TemperatureDifference.ofFahrenheitDegrees(2).kelvins() + CLEAR_K
                        && sc <= TemperatureDifference.ofFahrenheitDegrees(15).kelvins() - CLEAR_K;
    }
}
