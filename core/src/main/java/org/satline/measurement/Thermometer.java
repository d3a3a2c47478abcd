package org.satline.measurement;

import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;

/**
 * A thermometer of an accuracy class. Readings taken with one thermometer share its calibration error. Immutable, thread-safe.
 *
 * @param name name of the instrument; readings by instruments of one name share the calibration error
 * @param accuracy accuracy class
 * @param resolutionK smallest step of its display, K
 */
public record Thermometer(String name, ThermometerClass accuracy, double resolutionK) {
    /** {@inheritDoc} */
    public Thermometer {
        Parts.required("name accuracy", name, accuracy);
        if (!(resolutionK >= 0 && resolutionK <= 10)) {
            throw new IllegalArgumentException(
                    "resolution of " + name + " is " + resolutionK + " K, allowed [0, 10] K");
        }
    }

    /**
     * A reading in air.
     *
     * @param shown what it shows
     * @param where what is measured, for example {@code return air}; keeps the rounding errors of two readings apart
     * @return the reading with its uncertainty
     */
    public Reading<Temperature> read(Temperature shown, String where) {
        return Reading.of(shown, StandardUncertainty.ofLimits(accuracy.permittedErrorK(shown)), name)
                .withError(name + ", display, " + where, StandardUncertainty.ofResolution(resolutionK))
                .shownBy(name, shown);
    }

    /**
     * A reading by a clamp or a probe strapped to a pipe. The contact error belongs to the place and comes on top.
     *
     * @param shown what it shows
     * @param where which pipe, for example {@code suction line}
     * @param contactLimitK limit of the contact error, K; common practice, no source: 0.5 to 2 K without insulation
     * @return the reading with its uncertainty
     */
    public Reading<Temperature> readOnPipe(Temperature shown, String where, double contactLimitK) {
        return read(shown, where).withError("pipe contact, " + where, StandardUncertainty.ofLimits(contactLimitK));
    }
}
