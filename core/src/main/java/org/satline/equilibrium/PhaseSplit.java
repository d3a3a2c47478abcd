package org.satline.equilibrium;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.quantity.Parts;

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
     * The parts from which a split can be put together again, for keeping it in a file. They belong together; change none of them.
     *
     * @param phases which phases are present
     * @param temperatureK T, K
     * @param pressurePa absolute pressure p, Pa
     * @param density mass over volume of the whole, kg/m3
     * @param vapourFraction vapour mass fraction q
     * @param liquidVolumeFraction the share of the volume that liquid fills
     * @param liquid the liquid; empty where there is none
     * @param vapour the vapour, or the one phase of a supercritical state; empty where all is liquid
     * @param liquidMoleFractions composition of the liquid
     * @param vapourMoleFractions composition of the vapour
     */
    public record Values(
            Phases phases,
            double temperatureK,
            double pressurePa,
            double density,
            double vapourFraction,
            double liquidVolumeFraction,
            Optional<FluidState> liquid,
            Optional<FluidState> vapour,
            List<Double> liquidMoleFractions,
            List<Double> vapourMoleFractions) {
        /** {@inheritDoc} */
        public Values {
            Parts.required("liquid", liquid);
            Parts.numbers("temperatureK pressurePa density", temperatureK, pressurePa, density);
            Parts.numbers("vapourFraction liquidVolumeFraction", vapourFraction, liquidVolumeFraction);
            Objects.requireNonNull(phases, "phases");
            liquidMoleFractions = Parts.list("liquidMoleFractions", liquidMoleFractions);
            vapourMoleFractions = Parts.list("vapourMoleFractions", vapourMoleFractions);
            boolean hasLiquid = phases == Phases.LIQUID || phases == Phases.LIQUID_AND_VAPOUR;
            boolean hasVapour = phases != Phases.LIQUID;
            if (liquid.isPresent() != hasLiquid || vapour.isPresent() != hasVapour) {
                throw new IllegalArgumentException("split of phases " + phases
                        + " does not hold the states of just these; give liquid and vapour as the phases say");
            }
        }
    }

    /**
     * Puts a split together again from the parts that {@link #values()} gave; nothing is computed.
     *
     * @param values the parts
     * @return the split
     */
    public static PhaseSplit of(Values values) {
        Parts.required("values", values);
        return new PhaseSplit(
                values.phases,
                values.temperatureK,
                values.pressurePa,
                values.density,
                values.vapourFraction,
                values.liquidVolumeFraction,
                values.liquid.orElse(null),
                values.vapour.orElse(null),
                array(values.liquidMoleFractions),
                array(values.vapourMoleFractions));
    }

    /**
     * Returns the parts from which this split can be put together again.
     *
     * @return the parts
     */
    public Values values() {
        return new Values(
                phases,
                temperature,
                pressure,
                density,
                vapourFraction,
                liquidVolumeFraction,
                liquid(),
                vapour(),
                Arrays.stream(liquidMoleFractions).boxed().toList(),
                Arrays.stream(vapourMoleFractions).boxed().toList());
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * Exact equality of all parts.
     *
     * @param other the object to compare with
     * @return whether both are the same split
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PhaseSplit split && split.values().equals(values());
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

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "split(T = %.6g K, p = %.6g Pa, q = %.6g)",
                temperatureK(),
                pressurePa(),
                vapourFraction());
    }
}
