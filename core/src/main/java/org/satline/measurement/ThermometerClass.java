package org.satline.measurement;

import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;

/**
 * Accuracy class of a thermometer. Immutable, thread-safe. {@link #named(String)} finds the published ones.
 *
 * @param name name of the class
 * @param rule how the two parts make the limit of error
 * @param fixedK fixed part, K
 * @param percent part that grows with the reading, per cent of its absolute value in degC
 * @param source where the figures come from
 */
public record ThermometerClass(String name, Rule rule, double fixedK, double percent, String source) {
    /** How the fixed part and the share of the reading make the limit of error. */
    public enum Rule {
        /** The greater of the two. */
        GREATER,
        /** Their sum. */
        SUM
    }

    /** {@inheritDoc} */
    public ThermometerClass {
        Parts.required("name rule source", name, rule, source);
        if (!(fixedK >= 0 && fixedK < 100 && percent >= 0 && percent < 100)) {
            throw new IllegalArgumentException("thermometer class " + name + " permits " + fixedK + " K and " + percent
                    + " % of reading, expected both in [0, 100)");
        }
    }

    /**
     * A published class by name.
     *
     * @param name for example {@code thermocouple-k-class-1} or {@code platinum-class-b}
     * @return the class
     * @throws IllegalArgumentException if no class has that name; the message lists the names
     */
    public static ThermometerClass named(String name) {
        return PublishedClasses.thermometer(name);
    }

    /**
     * Limit of error at a temperature.
     *
     * @param temperature the reading
     * @return the limit, K
     */
    public double permittedErrorK(Temperature temperature) {
        double share = percent / 100 * Math.abs(temperature.celsius());
        return rule == Rule.SUM ? fixedK + share : Math.max(fixedK, share);
    }
}
