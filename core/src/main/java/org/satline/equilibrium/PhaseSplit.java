package org.satline.equilibrium;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A closed amount of refrigerant at equilibrium: one phase, or liquid and vapour with the composition of each. Immutable and thread-safe.
 */
public final class PhaseSplit {
    /** Which phases are present. */
    public enum Phases {
        /** Liquid only. */
        LIQUID,
        /** Liquid and vapour. */
        LIQUID_AND_VAPOUR,
        /** Vapour only. */
        VAPOUR,
        /** One phase, warmer than the two-phase region: neither liquid nor vapour. */
        SUPERCRITICAL
    }

    private final Phases phases;
    private final double temperature;
    private final double pressure;
    private final double density;
    private final double vapourFraction;
    private final double liquidVolumeFraction;
    private final @Nullable FluidState liquid;
    private final @Nullable FluidState vapour;
    private final double[] liquidMoleFractions;
    private final double[] vapourMoleFractions;

    private PhaseSplit(
            Phases phases,
            double temperature,
            double pressure,
            double density,
            double vapourFraction,
            double liquidVolumeFraction,
            @Nullable FluidState liquid,
            @Nullable FluidState vapour,
            double[] liquidMoleFractions,
            double[] vapourMoleFractions) {
        this.phases = phases;
        this.temperature = temperature;
        this.pressure = pressure;
        this.density = density;
        this.vapourFraction = vapourFraction;
        this.liquidVolumeFraction = liquidVolumeFraction;
        this.liquid = liquid;
        this.vapour = vapour;
        this.liquidMoleFractions = liquidMoleFractions;
        this.vapourMoleFractions = vapourMoleFractions;
    }

    static PhaseSplit onePhase(Phases phases, FluidState state, double[] moleFractions) {
        boolean isLiquid = phases == Phases.LIQUID;
        return new PhaseSplit(
                phases,
                state.temperatureK(),
                state.pressurePa(),
                state.density(),
                isLiquid ? 0 : 1,
                isLiquid ? 1 : 0,
                isLiquid ? state : null,
                isLiquid ? null : state,
                moleFractions,
                moleFractions);
    }

    static PhaseSplit twoPhases(
            FluidState liquid,
            FluidState vapour,
            double vapourFraction,
            double[] liquidMoleFractions,
            double[] vapourMoleFractions) {
        double specificVolume = (1 - vapourFraction) / liquid.density() + vapourFraction / vapour.density();
        return new PhaseSplit(
                Phases.LIQUID_AND_VAPOUR,
                vapour.temperatureK(),
                vapour.pressurePa(),
                1 / specificVolume,
                vapourFraction,
                (1 - vapourFraction) / liquid.density() / specificVolume,
                liquid,
                vapour,
                liquidMoleFractions,
                vapourMoleFractions);
    }

    /**
     * Returns which phases are present.
     *
     * @return phases
     */
    public Phases phases() {
        return phases;
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
     * Returns the absolute pressure p, that of the vapour where there is one.
     *
     * @return Pa
     */
    public double pressurePa() {
        return pressure;
    }

    /**
     * Returns the overall density: mass over volume.
     *
     * @return kg/m3
     */
    public double density() {
        return density;
    }

    /**
     * Returns the vapour mass fraction (quality) q.
     *
     * @return 0 where all is liquid, 1 where there is none
     */
    public double vapourFraction() {
        return vapourFraction;
    }

    /**
     * Returns the share of the volume that liquid fills.
     *
     * @return 1 where all is liquid, 0 where there is none
     */
    public double liquidVolumeFraction() {
        return liquidVolumeFraction;
    }

    /**
     * Returns the liquid.
     *
     * @return its state; empty where there is no liquid
     */
    public Optional<FluidState> liquid() {
        return Optional.ofNullable(liquid);
    }

    /**
     * Returns the vapour, or the one phase of a supercritical state.
     *
     * @return its state; empty where all is liquid
     */
    public Optional<FluidState> vapour() {
        return Optional.ofNullable(vapour);
    }

    /**
     * Returns the composition of the liquid.
     *
     * @return mole fractions in the order of the components; those of the whole where there is no liquid
     */
    public double[] liquidMoleFractions() {
        return liquidMoleFractions.clone();
    }

    /**
     * Returns the composition of the vapour.
     *
     * @return mole fractions in the order of the components; those of the whole where there is no vapour
     */
    public double[] vapourMoleFractions() {
        return vapourMoleFractions.clone();
    }

    /**
     * Returns the specific enthalpy of the whole.
     *
     * @return J/kg
     */
    public double specificEnthalpy() {
        return mean(liquid == null ? 0 : liquid.specificEnthalpy(), vapour == null ? 0 : vapour.specificEnthalpy());
    }

    /**
     * Returns the specific entropy of the whole.
     *
     * @return J/(kg K)
     */
    public double specificEntropy() {
        return mean(liquid == null ? 0 : liquid.specificEntropy(), vapour == null ? 0 : vapour.specificEntropy());
    }

    /**
     * Returns the specific internal energy of the whole.
     *
     * @return J/kg
     */
    public double specificInternalEnergy() {
        return specificEnthalpy() - pressure / density;
    }

    private double mean(double ofLiquid, double ofVapour) {
        return (1 - vapourFraction) * ofLiquid + vapourFraction * ofVapour;
    }
}
