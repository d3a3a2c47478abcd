package org.satline.equilibrium;

import org.satline.equation.HelmholtzEquation;
import org.satline.equation.ReducedHelmholtz;

/**
 * A homogeneous state of one composition with its properties, SI units by mass. Immutable and thread-safe.
 *
 * <p>Formulas: the usual relations from the Helmholtz energy (for instance Kunz and Wagner 2012, table 3). Enthalpy, entropy and internal energy count
 * from the reference state of the {@link FluidModel} that made the state.
 */
public final class FluidState {
    private final double temperature;
    private final double molarDensity;
    private final double molarMass;
    private final double pressure;
    private final double enthalpy;
    private final double entropy;
    private final double isochoricHeatCapacity;
    private final double isobaricHeatCapacity;
    private final double speedOfSoundSquared;
    private final double compressibilityFactor;
    private final double jouleThomson;

    FluidState(
            HelmholtzEquation equation,
            double temperature,
            double molarDensity,
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
        double z = 1 + residual.ad;
        double thermal = 1 + residual.ad - residual.adt;
        double stiffness = 1 + 2 * residual.ad + residual.add;
        double at = ideal.at + residual.at;
        double cv = -(ideal.att + residual.att);
        double cp = cv + thermal * thermal / stiffness;
        compressibilityFactor = z;
        pressure = molarDensity * equation.gasConstant() * temperature * z;
        enthalpy = r * temperature * (z + at) + enthalpyOffset;
        entropy = r * (at - ideal.a - residual.a) + entropyOffset;
        isochoricHeatCapacity = r * cv;
        isobaricHeatCapacity = r * cp;
        speedOfSoundSquared = r * temperature * (stiffness + thermal * thermal / cv);
        jouleThomson = (thermal / stiffness - 1) / (density() * isobaricHeatCapacity);
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
        return Math.sqrt(speedOfSoundSquared);
    }

    /**
     * Returns the isentropic exponent {@code rho c^2 / p}.
     *
     * @return dimensionless
     */
    public double isentropicExponent() {
        return density() * speedOfSoundSquared / pressure;
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
}
