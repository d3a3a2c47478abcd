package org.satline.measurement;

import java.util.Locale;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;

/**
 * A refrigerant scale. Immutable, thread-safe.
 *
 * @param name name of the instrument
 * @param resolution smallest step of its display
 * @param percentOfReading limit of its span error, per cent of the reading; common practice, no source: 0.05 to 0.1
 */
public record WeighingScale(String name, Mass resolution, double percentOfReading) {
    /** {@inheritDoc} */
    public WeighingScale {
        Parts.required("name resolution", name, resolution);
        if (!(percentOfReading >= 0 && percentOfReading <= 100)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "span error of %s is %s %%, allowed [0, 100] %%", name, percentOfReading));
        }
    }

    /**
     * Standard uncertainty of a net mass, the difference of two readings of this scale. The span error is common to both, so that
     * only its share of the difference is left; the two roundings are independent.
     *
     * @param before first reading
     * @param after second reading
     * @return u of {@code after - before}, kg
     */
    public double standardUncertaintyOfChangeKg(Mass before, Mass after) {
        double span =
                StandardUncertainty.ofLimits(percentOfReading / 100 * Math.abs(after.kilograms() - before.kilograms()));
        double rounding = StandardUncertainty.ofResolution(resolution.kilograms());
        return Math.sqrt(span * span + 2 * rounding * rounding);
    }
}
