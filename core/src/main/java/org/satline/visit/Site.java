package org.satline.visit;

import java.util.List;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;

/**
 * Where the visit takes place. Immutable, thread-safe.
 *
 * @param name in words
 * @param atmosphere the local atmosphere, by which gauge readings become absolute
 * @param step how the atmosphere was found
 */
public record Site(String name, Atmosphere atmosphere, Step step) {
    /** {@inheritDoc} */
    public Site {
        Parts.required("name atmosphere step", name, atmosphere, step);
    }

    /**
     * A site of known altitude; the standard atmosphere is taken.
     *
     * @param name in words
     * @param altitude above mean sea level, [-500, 11000] m
     * @return the site
     * @throws org.satline.quantity.OutOfValidityException if the altitude is out of range
     */
    public static Site atAltitude(String name, Length altitude) {
        Atmosphere atmosphere = Atmosphere.atAltitude(altitude);
        return new Site(
                name,
                atmosphere,
                new Step(
                        "localAtmosphere",
                        "p_atm = p_0 (1 + beta H / T_0)^(-g_n / (beta R)), H = r z / (r + z)",
                        List.of(Figure.of("z", altitude)),
                        Figure.of("p_atm", atmosphere.pressure()),
                        "ISO 2533:1975"));
    }

    /**
     * A site with a barometer.
     *
     * @param name in words
     * @param reading the pressure on site, not reduced to sea level
     * @return the site
     * @throws org.satline.quantity.OutOfValidityException if the reading is no plausible atmosphere
     */
    public static Site byBarometer(String name, Pressure reading) {
        Parts.required("reading", reading);
        Atmosphere atmosphere = Atmosphere.measured(reading);
        return new Site(
                name,
                atmosphere,
                new Step("localAtmosphere", "p_atm", List.of(), Figure.of("p_atm", reading), "barometer on site"));
    }
}
