package org.satline.equilibrium;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.satline.equation.HelmholtzEquation;
import org.satline.equation.ReducedHelmholtz;
import org.satline.quantity.Parts;

/**
 * A homogeneous state of one composition with its properties, SI units by mass. Immutable and thread-safe.
 *
 * <p>Formulas: the usual relations from the Helmholtz energy (for instance Kunz and Wagner 2012, table 3). Enthalpy, entropy and internal
 * energy count from the reference state of the {@link FluidModel} that made the state.
 */
public final class FluidState {
    /** How well pressures are met, over rho R T. */
    private static final double CONVERGED = 1e-9;

    private final double temperature;
    private final double molarDensity;
    private final double molarMass;
    private final double pressure;
    private final double enthalpy;
    private final double entropy;
    private final double isochoricHeatCapacity;
    private final double isobaricHeatCapacity;
    private final double speedOfSound;
    private final double compressibilityFactor;
    private final double jouleThomson;
    private final double isothermalCompressibility;
    private final double volumeExpansivity;

    FluidState(
            HelmholtzEquation equation,
            double temperature,
            double molarDensity,
            double knownPressure,
            double enthalpyOffset,
            double entropyOffset) {
        this.temperature = temperature;
        this.molarDensity = molarDensity;
        this.molarMass = equation.molarMass();
        ReducedHelmholtz ideal = new ReducedHelmholtz();
        ReducedHelmholtz residual = new ReducedHelmholtz();
        equation.ideal(temperature, molarDensity, ideal);
        equation.residual(temperature, molarDensity, residual);
        double r = equation.gasConstant() / molarMass;
        // one unit in the last place of a cold liquid's density moves its pressure by more than the vapour pressure
        double rt = equation.gasConstant() * temperature;
        double computed = 1 + residual.ad();
        double known = knownPressure / (molarDensity * rt);
        double z = Math.abs(known - computed) < CONVERGED ? known : computed;
        double thermal = 1 + residual.ad() - residual.adt();
        double stiffness = 1 + 2 * residual.ad() + residual.add();
        double at = ideal.at() + residual.at();
        double cv = -(ideal.att() + residual.att());
        double cp = cv + thermal * thermal / stiffness;
        compressibilityFactor = z;
        pressure = z == computed ? molarDensity * rt * z : knownPressure;
        enthalpy = r * temperature * (z + at) + enthalpyOffset;
        entropy = r * (at - ideal.a() - residual.a()) + entropyOffset;
        isochoricHeatCapacity = r * cv;
        isobaricHeatCapacity = r * cp;
        speedOfSound = Math.sqrt(r * temperature * (stiffness + thermal * thermal / cv));
        jouleThomson = (thermal / stiffness - 1) / (density() * isobaricHeatCapacity);
        isothermalCompressibility = 1 / (molarDensity * rt * stiffness);
        volumeExpansivity = thermal / stiffness / temperature;
    }

    private FluidState(Values values) {
        temperature = values.temperatureK;
        molarDensity = values.molarDensity;
        molarMass = values.molarMass;
        pressure = values.pressurePa;
        enthalpy = values.specificEnthalpy;
        entropy = values.specificEntropy;
        isochoricHeatCapacity = values.isochoricHeatCapacity;
        isobaricHeatCapacity = values.isobaricHeatCapacity;
        speedOfSound = values.speedOfSound;
        compressibilityFactor = values.compressibilityFactor;
        jouleThomson = values.jouleThomsonCoefficient;
        isothermalCompressibility = values.isothermalCompressibility;
        volumeExpansivity = values.volumeExpansivity;
    }

    /**
     * The numbers from which a state can be put together again, for keeping it in a file. They belong together; change none of them.
     *
     * @param temperatureK T, K
     * @param pressurePa absolute pressure p, Pa
     * @param molarDensity mol/m3
     * @param molarMass kg/mol
     * @param specificEnthalpy h, J/kg
     * @param specificEntropy s, J/(kg K)
     * @param isochoricHeatCapacity c_V, J/(kg K)
     * @param isobaricHeatCapacity c_p, J/(kg K)
     * @param speedOfSound c, m/s
     * @param compressibilityFactor Z
     * @param jouleThomsonCoefficient dT/dp at constant enthalpy, K/Pa
     * @param isothermalCompressibility -(1/v) dv/dp at constant temperature, 1/Pa
     * @param volumeExpansivity (1/v) dv/dT at constant pressure, 1/K
     */
    public record Values(
            double temperatureK,
            double pressurePa,
            double molarDensity,
            double molarMass,
            double specificEnthalpy,
            double specificEntropy,
            double isochoricHeatCapacity,
            double isobaricHeatCapacity,
            double speedOfSound,
            double compressibilityFactor,
            double jouleThomsonCoefficient,
            double isothermalCompressibility,
            double volumeExpansivity) {
        /** {@inheritDoc} */
        public Values {
            Parts.numbers("pressurePa specificEnthalpy", pressurePa, specificEnthalpy);
            Parts.numbers("specificEntropy isochoricHeatCapacity", specificEntropy, isochoricHeatCapacity);
            Parts.numbers("isobaricHeatCapacity speedOfSound", isobaricHeatCapacity, speedOfSound);
            Parts.numbers("compressibilityFactor", compressibilityFactor);
            Parts.numbers("jouleThomsonCoefficient", jouleThomsonCoefficient);
            Parts.numbers("isothermalCompressibility", isothermalCompressibility);
            Parts.numbers("volumeExpansivity", volumeExpansivity);
            if (!(temperatureK > 0 && molarDensity > 0 && molarMass > 0)) {
                throw new IllegalArgumentException("state of temperature " + temperatureK + " K, molar density "
                        + molarDensity + " mol/m3 and molar mass " + molarMass
                        + " kg/mol is none; all three must be above zero");
            }
        }
    }

    /**
     * Puts a state together again from the numbers that {@link #values()} gave; nothing is computed.
     *
     * @param values the numbers
     * @return the state
     */
    public static FluidState of(Values values) {
        Parts.required("values", values);
        return new FluidState(values);
    }

    /**
     * Returns the numbers from which this state can be put together again.
     *
     * @return the numbers
     */
    public Values values() {
        return new Values(
                temperature,
                pressure,
                molarDensity,
                molarMass,
                enthalpy,
                entropy,
                isochoricHeatCapacity,
                isobaricHeatCapacity,
                speedOfSound,
                compressibilityFactor,
                jouleThomson,
                isothermalCompressibility,
                volumeExpansivity);
    }

    /**
     * Exact equality of all numbers.
     *
     * @param other the object to compare with
     * @return whether both are the same state
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FluidState state && state.values().equals(values());
    }

    /**
     * Hash code that goes with equality.
     *
     * @return hash code
     */
    @Override
    public int hashCode() {
        return values().hashCode();
    }

    /**
     * Returns the temperature T.
     *
     * @return K
     */
    public double temperatureK() {
        return temperature;
    }

    /**
     * Returns the absolute pressure p.
     *
     * @return Pa
     */
    public double pressurePa() {
        return pressure;
    }

    /**
     * Returns the mass density rho.
     *
     * @return kg/m3
     */
    public double density() {
        return molarDensity * molarMass;
    }

    /**
     * Returns the molar density.
     *
     * @return mol/m3
     */
    public double molarDensity() {
        return molarDensity;
    }

    /**
     * Returns the specific enthalpy h.
     *
     * @return J/kg
     */
    public double specificEnthalpy() {
        return enthalpy;
    }

    /**
     * Returns the specific entropy s.
     *
     * @return J/(kg K)
     */
    public double specificEntropy() {
        return entropy;
    }

    /**
     * Returns the specific internal energy {@code u = h - p/rho}.
     *
     * @return J/kg
     */
    public double specificInternalEnergy() {
        return enthalpy - pressure / density();
    }

    /**
     * Returns the isochoric specific heat capacity c_V.
     *
     * @return J/(kg K)
     */
    public double isochoricHeatCapacity() {
        return isochoricHeatCapacity;
    }

    /**
     * Returns the isobaric specific heat capacity c_p.
     *
     * @return J/(kg K)
     */
    public double isobaricHeatCapacity() {
        return isobaricHeatCapacity;
    }

    /**
     * Returns the speed of sound c.
     *
     * @return m/s
     */
    public double speedOfSound() {
        return speedOfSound;
    }

    /**
     * Returns the isentropic exponent {@code rho c^2 / p}.
     *
     * @return dimensionless
     */
    public double isentropicExponent() {
        return density() * speedOfSound * speedOfSound / pressure;
    }

    /**
     * Returns the Joule-Thomson coefficient {@code dT/dp} at constant enthalpy.
     *
     * @return K/Pa
     */
    public double jouleThomsonCoefficient() {
        return jouleThomson;
    }

    /**
     * Returns the compressibility factor {@code Z = p/(rho R T)}.
     *
     * @return dimensionless
     */
    public double compressibilityFactor() {
        return compressibilityFactor;
    }

    /**
     * Returns the isothermal compressibility {@code -(1/v) dv/dp}.
     *
     * @return 1/Pa
     */
    public double isothermalCompressibility() {
        return isothermalCompressibility;
    }

    /**
     * Returns the volume expansivity {@code (1/v) dv/dT} at constant pressure.
     *
     * @return 1/K
     */
    public double volumeExpansivity() {
        return volumeExpansivity;
    }

    /**
     * Returns the specific Gibbs energy {@code g = h - T s}, which hangs on the reference state.
     *
     * @return J/kg
     */
    public double specificGibbsEnergy() {
        return enthalpy - temperature * entropy;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "state(T = %.6g K, p = %.6g Pa, rho = %.6g kg/m3)",
                temperatureK(),
                pressurePa(),
                density());
    }
}
