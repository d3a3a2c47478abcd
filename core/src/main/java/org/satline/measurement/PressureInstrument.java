package org.satline.measurement;

import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;

/** A pressure gauge: turns what it shows into an absolute pressure with its uncertainty. Implementations are immutable. */
public sealed interface PressureInstrument permits DialGauge, DigitalGauge {
    /**
     * Name of the instrument; two readings by instruments of one name share the error.
     *
     * @return the name
     */
    String name();

    /**
     * Largest permitted error at a reading.
     *
     * @param shown what the gauge shows
     * @return the limit of error, not negative
     * @throws org.satline.quantity.OutOfValidityException if the gauge has a span and the reading lies outside it
     */
    PressureDifference permittedError(GaugePressure shown);

    /**
     * Absolute pressure from what the gauge shows.
     *
     * <p>The limit of error counts as rectangular (JCGM 100:2008, 4.3.7), {@code u = a / sqrt(3)}.
     *
     * @param shown what the gauge shows
     * @param site local atmosphere
     * @return the reading; the uncertainty of the atmosphere itself is added by
     *     {@link #read(GaugePressure, Atmosphere, PressureDifference)}
     */
    default Reading<Pressure> read(GaugePressure shown, Atmosphere site) {
        return Reading.of(
                        Pressure.ofGauge(shown, site),
                        StandardUncertainty.ofLimits(permittedError(shown).pascals()),
                        name())
                .shownBy(name(), shown);
    }

    /**
     * Absolute pressure from what the gauge shows, at a site whose atmosphere is known within limits only. The error of the atmosphere
     * is the same in every reading taken there.
     *
     * @param shown what the gauge shows
     * @param site local atmosphere
     * @param weather limit of the error of the atmosphere; common practice, no source: 2 to 3 % of it when it comes from altitude alone
     * @return the reading
     */
    default Reading<Pressure> read(GaugePressure shown, Atmosphere site, PressureDifference weather) {
        return read(shown, site)
                .withError("local atmosphere", StandardUncertainty.ofLimits(Math.abs(weather.pascals())));
    }
}
