package org.satline.measurement;

import org.satline.quantity.GaugePressure;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.quantity.PressureDifference;

/**
 * A dial gauge of an accuracy class, whose permitted error is a share of its span. Immutable, thread-safe.
 *
 * @param name name of the instrument, for example {@code blue dial gauge}
 * @param accuracy accuracy class
 * @param low lower end of the scale
 * @param high upper end of the scale
 */
public record DialGauge(String name, GaugeClass accuracy, GaugePressure low, GaugePressure high)
        implements PressureInstrument {
    /** {@inheritDoc} */
    public DialGauge {
        Parts.required("low high", low, high);
        Parts.required("name accuracy", name, accuracy);
        if (!(low.pascals() < high.pascals())) {
            throw new IllegalArgumentException("scale of " + name + " runs from " + low + " to " + high
                    + "; the upper end must lie above the lower");
        }
    }

    @Override
    public PressureDifference permittedError(GaugePressure shown) {
        double position = (shown.pascals() - low.pascals()) / (high.pascals() - low.pascals());
        if (!(position >= 0 && position <= 1)) {
            throw OutOfValidityException.of(
                    "gauge pressure",
                    shown.kilopascals(),
                    "kPa",
                    low.kilopascals(),
                    high.kilopascals(),
                    "the scale of " + name,
                    "read it on a gauge with a wider scale");
        }
        double percent = position >= 0.25 && position <= 0.75 ? accuracy.middlePercent() : accuracy.outerPercent();
        return PressureDifference.ofPascals(percent / 100 * (high.pascals() - low.pascals()));
    }
}
