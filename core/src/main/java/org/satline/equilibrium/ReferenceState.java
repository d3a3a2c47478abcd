package org.satline.equilibrium;

import java.util.Objects;
import java.util.Optional;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Parts;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.Temperature;

/**
 * Where enthalpy and entropy count from: saturated liquid (the bubble-point liquid of a blend) at a stated temperature, or at its normal
 * boiling point, and the values given to it. Changing the reference state shifts h and s by constants and nothing else. Immutable and
 * thread-safe.
 */
public final class ReferenceState {
    /** Pressure of the normal boiling point, Pa: one standard atmosphere, exact by definition (ISO 80000-4). */
    static final double NORMAL_PRESSURE_PA = Atmosphere.standard().pressure().pascals();

    /** h = 200 kJ/kg and s = 1 kJ/(kg K) at 0 degC: the convention of the International Institute of Refrigeration. */
    public static final ReferenceState IIR = new ReferenceState(
            "IIR: h = 200 kJ/kg, s = 1 kJ/(kg K) for saturated liquid at 0 degC", Temperature.ofCelsius(0), 200e3, 1e3);

    /** h = 0 and s = 0 at -40 degC, usual in United States tables. */
    public static final ReferenceState MINUS_40_CELSIUS =
            new ReferenceState("h = 0, s = 0 for saturated liquid at -40 degC", Temperature.ofCelsius(-40), 0, 0);

    /** h = 0 and s = 0 at the normal boiling point. */
    public static final ReferenceState NORMAL_BOILING_POINT =
            new ReferenceState("h = 0, s = 0 for saturated liquid at 101.325 kPa", Optional.empty(), 0, 0);

    private final String description;
    private final Optional<Temperature> temperature;
    private final double enthalpy;
    private final double entropy;

    private ReferenceState(String description, Temperature temperature, double enthalpy, double entropy) {
        this(description, Optional.of(temperature), enthalpy, entropy);
    }

    private ReferenceState(String description, Optional<Temperature> temperature, double enthalpy, double entropy) {
        this.description = description;
        this.temperature = temperature;
        this.enthalpy = enthalpy;
        this.entropy = entropy;
    }

    /**
     * Returns a reference state of the caller's own.
     *
     * @param temperature temperature of the saturated liquid
     * @param enthalpy its specific enthalpy
     * @param entropy its specific entropy
     * @return the reference state
     */
    public static ReferenceState ofSaturatedLiquid(
            Temperature temperature, SpecificEnthalpy enthalpy, SpecificEntropy entropy) {
        Parts.required("enthalpy entropy", enthalpy, entropy);
        Objects.requireNonNull(temperature, "temperature");
        String basis = "h = " + enthalpy + ", s = " + entropy + " for saturated liquid at " + temperature;
        return new ReferenceState(basis, temperature, enthalpy.joulesPerKilogram(), entropy.joulesPerKilogramKelvin());
    }

    /**
     * Returns the definition in words.
     *
     * @return a phrase fit for a table head
     */
    public String description() {
        return description;
    }

    /** Temperature of the saturated liquid; empty for the normal boiling point. */
    Optional<Temperature> temperature() {
        return temperature;
    }

    double enthalpy() {
        return enthalpy;
    }

    double entropy() {
        return entropy;
    }

    @Override
    public String toString() {
        return description;
    }
}
