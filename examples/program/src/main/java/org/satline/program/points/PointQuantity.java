package org.satline.program.points;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.satline.program.file.Shown;

/** What can be asked for in a row of {@code points}. The names in the file are these in lower case. */
public enum PointQuantity {
    /** Bubble-point pressure at a temperature. */
    BUBBLE_PRESSURE(Given.TEMPERATURE, "Pa"),
    /** Dew-point pressure at a temperature. */
    DEW_PRESSURE(Given.TEMPERATURE, "Pa"),
    /** Bubble-point temperature at a pressure. */
    BUBBLE_TEMPERATURE(Given.PRESSURE, "K"),
    /** Dew-point temperature at a pressure. */
    DEW_TEMPERATURE(Given.PRESSURE, "K"),
    /** Dew-point less bubble-point temperature at a pressure. */
    GLIDE(Given.PRESSURE, "K"),
    /** Density of the liquid at its bubble point. */
    BUBBLE_LIQUID_DENSITY(Given.TEMPERATURE_OR_PRESSURE, "kg/m3"),
    /** Specific enthalpy of the liquid at its bubble point. */
    BUBBLE_LIQUID_ENTHALPY(Given.TEMPERATURE_OR_PRESSURE, "J/kg"),
    /** Specific entropy of the liquid at its bubble point. */
    BUBBLE_LIQUID_ENTROPY(Given.TEMPERATURE_OR_PRESSURE, "J/(kg K)"),
    /** Specific isobaric heat capacity of the liquid at its bubble point. */
    BUBBLE_LIQUID_ISOBARIC_HEAT_CAPACITY(Given.TEMPERATURE_OR_PRESSURE, "J/(kg K)"),
    /** Speed of sound in the liquid at its bubble point. */
    BUBBLE_LIQUID_SPEED_OF_SOUND(Given.TEMPERATURE_OR_PRESSURE, "m/s"),
    /** Density of the vapour at its dew point. */
    DEW_VAPOUR_DENSITY(Given.TEMPERATURE_OR_PRESSURE, "kg/m3"),
    /** Specific enthalpy of the vapour at its dew point. */
    DEW_VAPOUR_ENTHALPY(Given.TEMPERATURE_OR_PRESSURE, "J/kg"),
    /** Specific entropy of the vapour at its dew point. */
    DEW_VAPOUR_ENTROPY(Given.TEMPERATURE_OR_PRESSURE, "J/(kg K)"),
    /** Specific isobaric heat capacity of the vapour at its dew point. */
    DEW_VAPOUR_ISOBARIC_HEAT_CAPACITY(Given.TEMPERATURE_OR_PRESSURE, "J/(kg K)"),
    /** Speed of sound in the vapour at its dew point. */
    DEW_VAPOUR_SPEED_OF_SOUND(Given.TEMPERATURE_OR_PRESSURE, "m/s"),
    /** Slope of the bubble line, dp/dT. */
    BUBBLE_PRESSURE_SLOPE(Given.TEMPERATURE, "Pa/K"),
    /** Slope of the dew line, dp/dT. */
    DEW_PRESSURE_SLOPE(Given.TEMPERATURE, "Pa/K"),
    /** Enthalpy of dew-point vapour less that of bubble-point liquid at a pressure. */
    LATENT_HEAT(Given.PRESSURE, "J/kg"),
    /** Temperature of a state. */
    TEMPERATURE(Given.STATE, "K"),
    /** Absolute pressure of a state. */
    PRESSURE(Given.STATE, "Pa"),
    /** Density of the whole. */
    DENSITY(Given.STATE, "kg/m3"),
    /** Specific enthalpy of the whole. */
    ENTHALPY(Given.STATE, "J/kg"),
    /** Specific entropy of the whole. */
    ENTROPY(Given.STATE, "J/(kg K)"),
    /** Specific internal energy of the whole. */
    INTERNAL_ENERGY(Given.STATE, "J/kg"),
    /** Specific Gibbs energy of the whole. */
    GIBBS_ENERGY(Given.STATE, "J/kg"),
    /** Vapour mass fraction: 0 of liquid, 1 of vapour; none above the warmest point of the two-phase region. */
    QUALITY(Given.STATE, "1"),
    /** Which phases are present: a word, not a number. */
    PHASE(Given.STATE, "word"),
    /** Specific isobaric heat capacity of one phase. */
    ISOBARIC_HEAT_CAPACITY(Given.STATE, "J/(kg K)"),
    /** Specific isochoric heat capacity of one phase. */
    ISOCHORIC_HEAT_CAPACITY(Given.STATE, "J/(kg K)"),
    /** Speed of sound in one phase. */
    SPEED_OF_SOUND(Given.STATE, "m/s"),
    /** Isentropic exponent {@code rho c^2 / p} of one phase. */
    ISENTROPIC_EXPONENT(Given.STATE, "1"),
    /** Joule-Thomson coefficient of one phase. */
    JOULE_THOMSON_COEFFICIENT(Given.STATE, "K/Pa"),
    /** Compressibility factor {@code p/(rho R T)} of one phase. */
    COMPRESSIBILITY_FACTOR(Given.STATE, "1"),
    /** Isothermal compressibility of one phase. */
    ISOTHERMAL_COMPRESSIBILITY(Given.STATE, "1/Pa"),
    /** Volume expansivity of one phase. */
    VOLUME_EXPANSIVITY(Given.STATE, "1/K"),
    /** Fugacity coefficient of one component in one phase. */
    FUGACITY_COEFFICIENT(Given.STATE, "1");

    /** Which cells of the row the quantity is found from. */
    enum Given {
        TEMPERATURE,
        PRESSURE,
        TEMPERATURE_OR_PRESSURE,
        STATE
    }

    private final Given given;
    private final String unit;

    PointQuantity(Given given, String unit) {
        this.given = given;
        this.unit = unit;
    }

    Given given() {
        return given;
    }

    /**
     * Returns the unit of the value.
     *
     * @return an SI unit
     */
    public String unit() {
        return unit;
    }

    /**
     * Returns the name in files.
     *
     * @return such as {@code bubble_pressure}
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether the value depends on the zero that was chosen for enthalpy and entropy. */
    boolean needsReference() {
        return name().endsWith("ENTHALPY") || name().endsWith("ENTROPY") || name().endsWith("_ENERGY");
    }

    /** Whether it belongs to the whole of liquid and vapour too; the rest belong to one phase. */
    boolean ofTheWhole() {
        return switch (this) {
            case TEMPERATURE, PRESSURE, DENSITY, ENTHALPY, ENTROPY, INTERNAL_ENERGY, GIBBS_ENERGY, QUALITY, PHASE ->
                true;
            default -> false;
        };
    }

    /** Whether it belongs to the bubble line; the rest belong to the dew line, to both, or to one phase. */
    boolean onBubbleLine() {
        return name().startsWith("BUBBLE_");
    }

    /**
     * Finds a quantity by its name in files.
     *
     * @param label such as {@code bubble_pressure}
     * @return the quantity
     * @throws IllegalArgumentException if there is none of that name
     */
    public static PointQuantity ofLabel(String label) {
        for (PointQuantity quantity : values()) {
            if (quantity.label().equals(label)) {
                return quantity;
            }
        }
        throw new IllegalArgumentException("quantity " + Shown.quoted(label) + " is not known; allowed: "
                + Arrays.stream(values()).map(PointQuantity::label).collect(Collectors.joining(", ")));
    }
}
