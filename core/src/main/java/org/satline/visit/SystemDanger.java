package org.satline.visit;

import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** A running system whose pressure can hurt someone. */
public final class SystemDanger {
    /**
     * Saturation beyond which a machine is switched off at once: above what high-pressure controls of air conditioners allow; common
     * practice, no source.
     */
    private static final Temperature HOTTEST_CONDENSING = Temperature.ofCelsius(75);
    /** So close to its critical point no gas is condensed on purpose; common practice, no source. */
    private static final double BELOW_CRITICAL_K = 5;
    /** A gas whose critical point lies lower is compressed beyond it on purpose; our choice. */
    private static final Temperature CONDENSED_AT_ALL = Temperature.ofCelsius(60);

    private SystemDanger() {}

    /**
     * Finds a pressure far beyond what controls allow.
     *
     * @param liquid pressure read on the high side
     * @param curve of the refrigerant
     * @param site the air around
     * @param system name of the system
     * @return a finding of severity {@link Severity#DANGER_NOW}, where there is one
     */
    public static Optional<Finding> of(Pressure liquid, SaturationCurve curve, Atmosphere site, String system) {
        double end = curve.bubbleTemperatureRange().high();
        double hottest = Math.min(HOTTEST_CONDENSING.kelvins(), end - BELOW_CRITICAL_K);
        boolean beyond = liquid.pascals() > curve.bubblePressurePa(hottest);
        if (end < CONDENSED_AT_ALL.kelvins() || !beyond) {
            return Optional.empty();
        }
        // above the end of the line it is hotter still
        Pressure told = Pressure.ofPascals(
                Math.min(liquid.pascals(), curve.bubblePressureRange().high()));
        return Optional.of(Finding.of(
                Severity.DANGER_NOW,
                VisitCode.SYSTEM_OVER_PRESSURE,
                Subject.system(system),
                Figure.of("read", liquid.gauge(site)),
                Figure.of("condensing", curve.bubbleTemperature(told)),
                Figure.of("hottest", Temperature.ofKelvins(hottest))));
    }
}
