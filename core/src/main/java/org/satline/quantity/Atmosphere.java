package org.satline.quantity;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The atmospheric pressure around a gauge, and where it comes from. Immutable, thread-safe.
 *
 * <p>Weather moves the pressure at a place by some 2 to 3 % (common practice, no source); a barometer on site beats the altitude.
 */
public final class Atmosphere {
    /** Lowest and highest altitude taken, m: places where machines stand and people work, and the lowest layer of ISO 2533. */
    private static final double LOWEST_ALTITUDE_M = -500;

    private static final double HIGHEST_ALTITUDE_M = 11000;

    /** Measured pressures taken for station pressures, kPa: from some 5500 m of altitude to the strongest high below sea level. */
    private static final double LOWEST_MEASURED_KPA = 50;

    private static final double HIGHEST_MEASURED_KPA = 110;

    /** Pressures taken for atmospheres that were found earlier, kPa: those of the altitudes above, and the measured ones. */
    private static final double LOWEST_DESCRIBED_KPA = 20;

    private static final double HIGHEST_DESCRIBED_KPA = 120;

    // ISO 2533:1975, clause 2: nominal earth radius r, sea-level temperature T0, temperature gradient beta, gas
    // constant R
    private static final double EARTH_RADIUS_M = 6356766;
    private static final double SEA_LEVEL_TEMPERATURE_K = 288.15;
    private static final double GRADIENT_K_PER_M = -0.0065;
    private static final double AIR_GAS_CONSTANT = 287.05287;

    private static final String STANDARD_SOURCE = "standard atmosphere of 101.325 kPa";
    private static final Atmosphere STANDARD =
            new Atmosphere(Pressure.ofPascals(Factors.STANDARD_ATMOSPHERE_PA), STANDARD_SOURCE);

    private final Pressure pressure;
    private final String description;

    private Atmosphere(Pressure pressure, String description) {
        this.pressure = pressure;
        this.description = description;
    }

    /**
     * The standard atmosphere, 101 325 Pa.
     *
     * @return the atmosphere at sea level in ISO 2533
     */
    public static Atmosphere standard() {
        return STANDARD;
    }

    /**
     * The atmosphere at an altitude, ISO 2533:1975: {@code p = p0 (1 + beta H / T0)^(-g_n / (beta R))} with the geopotential altitude
     * {@code H = r z / (r + z)}.
     *
     * @param altitude geometric altitude z above mean sea level, [-500, 11000] m
     * @return the standard pressure there
     * @throws OutOfValidityException if the altitude is out of range
     */
    public static Atmosphere atAltitude(Length altitude) {
        Objects.requireNonNull(altitude, "altitude");
        double z = altitude.metres();
        if (!(z >= LOWEST_ALTITUDE_M && z <= HIGHEST_ALTITUDE_M)) {
            throw OutOfValidityException.of(
                    "altitude",
                    z,
                    "m",
                    LOWEST_ALTITUDE_M,
                    HIGHEST_ALTITUDE_M,
                    "the lowest layer of the standard atmosphere as used here (ISO 2533)",
                    "check the unit, or measure the pressure");
        }
        double geopotential = EARTH_RADIUS_M * z / (EARTH_RADIUS_M + z);
        double exponent = -Factors.STANDARD_GRAVITY / (GRADIENT_K_PER_M * AIR_GAS_CONSTANT);
        double ratio = Math.pow(1 + GRADIENT_K_PER_M * geopotential / SEA_LEVEL_TEMPERATURE_K, exponent);
        Pressure pressure = Pressure.ofPascals(Factors.STANDARD_ATMOSPHERE_PA * ratio);
        return new Atmosphere(pressure, "standard atmosphere at " + altitude.in("m", 0) + " (ISO 2533) of " + pressure);
    }

    /**
     * A measured atmosphere. It must be the pressure at the site; weather reports give it reduced to sea level, which is wrong for
     * gauges anywhere higher.
     *
     * @param pressure reading of a barometer on site, [50, 110] kPa absolute
     * @return the atmosphere
     * @throws OutOfValidityException if the pressure is no plausible atmosphere
     */
    public static Atmosphere measured(Pressure pressure) {
        Objects.requireNonNull(pressure, "pressure");
        double kilopascals = pressure.kilopascals();
        if (!(kilopascals >= LOWEST_MEASURED_KPA && kilopascals <= HIGHEST_MEASURED_KPA)) {
            throw OutOfValidityException.of(
                    "measured atmospheric pressure",
                    kilopascals,
                    "kPa",
                    LOWEST_MEASURED_KPA,
                    HIGHEST_MEASURED_KPA,
                    "plausible station pressures",
                    "check the unit; the reading must be absolute and taken on site");
        }
        return new Atmosphere(pressure, "measured atmosphere of " + pressure);
    }

    /**
     * An atmosphere whose pressure and origin are known already, such as one that was written to a file.
     *
     * @param pressure atmospheric pressure, [20, 120] kPa: all that the other factories give
     * @param description where it comes from, as {@link #description()} says it
     * @return the atmosphere
     * @throws OutOfValidityException if the pressure is no plausible atmosphere
     */
    public static Atmosphere described(Pressure pressure, String description) {
        Objects.requireNonNull(pressure, "pressure");
        Objects.requireNonNull(description, "description");
        double kilopascals = pressure.kilopascals();
        if (!(kilopascals >= LOWEST_DESCRIBED_KPA && kilopascals <= HIGHEST_DESCRIBED_KPA)) {
            throw OutOfValidityException.of(
                    "atmospheric pressure",
                    kilopascals,
                    "kPa",
                    LOWEST_DESCRIBED_KPA,
                    HIGHEST_DESCRIBED_KPA,
                    "plausible atmospheres",
                    "check the unit; it must be absolute");
        }
        return new Atmosphere(pressure, description);
    }

    /**
     * The atmospheric pressure.
     *
     * @return absolute pressure
     */
    public Pressure pressure() {
        return pressure;
    }

    /**
     * Where the pressure comes from, for a report.
     *
     * @return a phrase such as {@code measured atmosphere of 98.2 kPa}
     */
    public String description() {
        return description;
    }

    /**
     * Equality of pressure and origin.
     *
     * @param other the object to compare with
     * @return whether both are the same atmosphere
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Atmosphere atmosphere
                && atmosphere.pressure.equals(pressure)
                && atmosphere.description.equals(description);
    }

    /**
     * Hash code that goes with equality.
     *
     * @return hash code
     */
    @Override
    public int hashCode() {
        return Objects.hash(pressure, description);
    }

    /**
     * The description.
     *
     * @return as {@link #description()}
     */
    @Override
    public String toString() {
        return description;
    }
}
