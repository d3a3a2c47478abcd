package org.satline.measurement;

import java.util.Locale;
import java.util.Objects;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Parts;
import org.satline.quantity.PressureDifference;

/**
 * A digital gauge whose permitted error is a share of the reading plus a fixed part (digits times the step of the display).
 * Immutable, thread-safe.
 *
 * @param name name of the instrument
 * @param percentOfReading share of the gauge reading, per cent; 0 to 100
 * @param fixed fixed part, not negative
 */
public record DigitalGauge(String name, double percentOfReading, PressureDifference fixed)
        implements PressureInstrument {
    /** {@inheritDoc} */
    public DigitalGauge {
        Parts.required("fixed", fixed);
        Objects.requireNonNull(name, "name");
        if (!(percentOfReading >= 0 && percentOfReading <= 100)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "percentage of reading of %s is %s, allowed [0, 100]; give it as per cent",
                    name,
                    percentOfReading));
        }
        if (!(fixed.pascals() >= 0)) {
            throw new IllegalArgumentException("fixed error of " + name + " is " + fixed + ", expected 0 or more");
        }
    }

    /**
     * The instrument that the California Energy Code, Reference Appendix RA3.2 (2013) asks for on the suction line: within 3.5 psi.
     *
     * @return a digital gauge with that limit
     */
    public static DigitalGauge ra32SuctionLine() {
        return new DigitalGauge("suction-line digital gauge", 0, PressureDifference.ofPsi(3.5));
    }

    /**
     * The instrument that the California Energy Code, Reference Appendix RA3.2 (2013) asks for on the liquid line: within 7.0 psi.
     *
     * @return a digital gauge with that limit
     */
    public static DigitalGauge ra32LiquidLine() {
        return new DigitalGauge("liquid-line digital gauge", 0, PressureDifference.ofPsi(7.0));
    }

    @Override
    public PressureDifference permittedError(GaugePressure shown) {
        return PressureDifference.ofPascals(percentOfReading / 100 * Math.abs(shown.pascals()) + fixed.pascals());
    }
}
