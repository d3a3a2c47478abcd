package org.satline.equilibrium;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.satline.equation.FixedComposition;
import org.satline.equilibrium.IncipientPhase.Specified;
import org.satline.equilibrium.PhaseSplit.Phases;
import org.satline.quantity.OutOfValidityException;

/**
 * The equilibrium state of a refrigerant from any of the usual pairs of quantities: {@link PhaseSplit} in each case,
 * with its phases named. Got from {@link FluidModel#states()}; enthalpy and entropy count from the model's reference
 * state. Immutable and thread-safe. All doubles are SI units by mass.
 *
 * <p>Every method throws {@link OutOfValidityException} outside the range of the equation, {@link SolidStateException}
 * above a published melting line, and {@link ConvergenceException} in the small stretch beside the critical point where
 * phases cannot be told apart. Pairs that several states can share are asked for by {@code allAt...}, or by naming the
 * phases meant.
 */
public final class StateFinder {
    private final FluidModel model;
    private final SinglePhase singlePhase;
    private final FixedComposition composition;
    private final StateSolver solver;
    private final EnergyStates energies;
    private final ManyStates many;
    private final VapourFractions fractions;

    StateFinder(FluidModel model, Envelope envelope, SinglePhase singlePhase) {
        this.model = model;
        this.singlePhase = singlePhase;
        this.composition = envelope.composition;
        this.solver = new StateSolver(name(), envelope, singlePhase);
        this.energies = new EnergyStates(name(), envelope, singlePhase, solver);
        this.many = new ManyStates(envelope, solver);
        this.fractions = new VapourFractions(model, many);
    }

    /**
     * Finds the state at a temperature and pressure, inside the glide of a blend too.
     *
     * @param temperatureK T, K
     * @param pressurePa p, Pa
     * @return the state
     * @throws TwoPhaseStateException on the saturation line of a pure substance, where both do not tell how much of it
     *     is vapour
     */
    public PhaseSplit atTemperatureAndPressure(double temperatureK, double pressurePa) {
        return state(solver.atTemperaturePressure(temperatureK, pressurePa));
    }

    /**
     * Finds the state of a closed vessel: temperature and mass over volume.
     *
     * @param temperatureK T, K
     * @param density rho of the whole, kg/m3
     * @return the state
     */
    public PhaseSplit atTemperatureAndDensity(double temperatureK, double density) {
        singlePhase.checkTemperature(temperatureK);
        return state(solver.along(Specified.TEMPERATURE, temperatureK, Given.DENSITY, logMolar(density)));
    }

    /**
     * Finds the state at a pressure and enthalpy: a throttled liquid, for instance.
     *
     * @param pressurePa p, Pa
     * @param specificEnthalpy h, J/kg
     * @return the state
     */
    public PhaseSplit atPressureAndEnthalpy(double pressurePa, double specificEnthalpy) {
        return onIsobar(
                pressurePa,
                Given.ENTHALPY,
                molarEnthalpy(specificEnthalpy),
                "specific enthalpy",
                specificEnthalpy,
                "J/kg");
    }

    /**
     * Finds the state at a pressure and entropy: after an ideal compression, for instance.
     *
     * @param pressurePa p, Pa
     * @param specificEntropy s, J/(kg K)
     * @return the state
     */
    public PhaseSplit atPressureAndEntropy(double pressurePa, double specificEntropy) {
        return onIsobar(
                pressurePa,
                Given.ENTROPY,
                molarEntropy(specificEntropy),
                "specific entropy",
                specificEntropy,
                "J/(kg K)");
    }

    /**
     * Finds the state at a pressure and density.
     *
     * @param pressurePa p, Pa
     * @param density rho of the whole, kg/m3
     * @return the state; of water below 4 degC, where two temperatures share a density, one of both
     */
    public PhaseSplit atPressureAndDensity(double pressurePa, double density) {
        return onIsobar(pressurePa, Given.DENSITY, logMolar(density), "density", density, "kg/m3");
    }

    /**
     * Finds the state at an internal energy and volume: a vessel that has taken up heat.
     *
     * @param specificInternalEnergy u, J/kg
     * @param specificVolume v of the whole, m3/kg
     * @return the state
     */
    public PhaseSplit atEnergyAndVolume(double specificInternalEnergy, double specificVolume) {
        double energy = (specificInternalEnergy - model.shift().enthalpy()) * composition.molarMass();
        return guarded(
                () -> energies.atEnergyAndDensity(energy, logMolar(1 / specificVolume)),
                "specific internal energy",
                specificInternalEnergy,
                "J/kg",
                Given.ENERGY,
                whose() + String.format(Locale.ROOT, " at %s m3/kg", specificVolume));
    }

    /**
     * Finds the state at an enthalpy and entropy.
     *
     * @param specificEnthalpy h, J/kg
     * @param specificEntropy s, J/(kg K)
     * @return the state
     */
    public PhaseSplit atEnthalpyAndEntropy(double specificEnthalpy, double specificEntropy) {
        return guarded(
                () -> {
                    try {
                        return energies.atEnthalpyAndEntropy(
                                molarEnthalpy(specificEnthalpy), molarEntropy(specificEntropy));
                    } catch (BeyondRangeException e) {
                        throw e.ofEntropy
                                ? beyond(e, Given.ENTROPY, "specific entropy", specificEntropy, "J/(kg K)", whose())
                                : e;
                    }
                },
                "specific enthalpy",
                specificEnthalpy,
                "J/kg",
                Given.ENTHALPY,
                whose() + String.format(Locale.ROOT, " at %s J/(kg K)", specificEntropy));
    }

    /**
     * Finds the two-phase state at a pressure and vapour mass fraction.
     *
     * @param pressurePa p, Pa
     * @param vapourFraction q in [0, 1]
     * @return the state; the coldest where several share the pair
     */
    public PhaseSplit atPressureAndVapourFraction(double pressurePa, double vapourFraction) {
        return coldest(allAtPressureAndVapourFraction(pressurePa, vapourFraction));
    }

    private static PhaseSplit coldest(List<PhaseSplit> all) {
        PhaseSplit coldest = all.get(0);
        for (PhaseSplit each : all) {
            coldest = each.temperatureK() < coldest.temperatureK() ? each : coldest;
        }
        return coldest;
    }

    /**
     * Finds all two-phase states at a pressure and vapour mass fraction: more than one above the critical pressure of a
     * blend.
     *
     * @param pressurePa p, Pa
     * @param vapourFraction q in [0, 1]
     * @return the states, one or more, by rising density
     */
    public List<PhaseSplit> allAtPressureAndVapourFraction(double pressurePa, double vapourFraction) {
        singlePhase.checkPressure(pressurePa);
        return fractions.at(Specified.PRESSURE, pressurePa, vapourFraction).stream()
                .map(this::state)
                .toList();
    }

    /**
     * Finds all two-phase states at a temperature and vapour mass fraction: more than one above the critical
     * temperature of a blend.
     *
     * @param temperatureK T, K
     * @param vapourFraction q in [0, 1]
     * @return the states, one or more, by rising density
     */
    public List<PhaseSplit> allAtTemperatureAndVapourFraction(double temperatureK, double vapourFraction) {
        singlePhase.checkTemperature(temperatureK);
        return fractions.at(Specified.TEMPERATURE, temperatureK, vapourFraction).stream()
                .map(this::state)
                .toList();
    }

    /**
     * Finds all states at a temperature and enthalpy: compressing a liquid first lowers, then raises its enthalpy.
     *
     * @param temperatureK T, K
     * @param specificEnthalpy h, J/kg
     * @return the states by rising density; none where no state of that temperature has this enthalpy
     */
    public List<PhaseSplit> allAtTemperatureAndEnthalpy(double temperatureK, double specificEnthalpy) {
        singlePhase.checkTemperature(temperatureK);
        return many.onIsotherm(temperatureK, Given.ENTHALPY, molarEnthalpy(specificEnthalpy)).stream()
                .map(this::state)
                .toList();
    }

    /**
     * Finds all states at a temperature and entropy: one, but for water below 4 degC.
     *
     * @param temperatureK T, K
     * @param specificEntropy s, J/(kg K)
     * @return the states by rising density; none where no state of that temperature has this entropy
     */
    public List<PhaseSplit> allAtTemperatureAndEntropy(double temperatureK, double specificEntropy) {
        singlePhase.checkTemperature(temperatureK);
        return many.onIsotherm(temperatureK, Given.ENTROPY, molarEntropy(specificEntropy)).stream()
                .map(this::state)
                .toList();
    }

    private PhaseSplit onIsobar(double pressure, Given asked, double molar, String what, double value, String unit) {
        singlePhase.checkPressure(pressure);
        return guarded(
                () -> solver.along(Specified.PRESSURE, pressure, asked, molar),
                what,
                value,
                unit,
                asked,
                whose() + String.format(Locale.ROOT, " at %.6g kPa", pressure / 1000));
    }

    private double back(Given asked, double molar) {
        return switch (asked) {
            case DENSITY -> Math.exp(molar) * composition.molarMass();
            case ENTROPY -> molar / composition.molarMass() + model.shift().entropy();
            default -> molar / composition.molarMass() + model.shift().enthalpy();
        };
    }

    private String whose() {
        return "the equation of " + name();
    }

    private OutOfValidityException beyond(
            BeyondRangeException e, Given asked, String what, double value, String unit, String whose) {
        double low = back(asked, e.low);
        double high = back(asked, e.high);
        return OutOfValidityException.of(
                what, value, unit, Math.min(low, high), Math.max(low, high), whose, "check the reference state");
    }

    private PhaseSplit guarded(
            Supplier<Solution> search, String what, double value, String unit, Given asked, String whose) {
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " " + value + " " + unit + " is not finite; give a number");
        }
        try {
            return state(search.get());
        } catch (BeyondRangeException e) {
            throw beyond(e, asked, what, value, unit, whose);
        }
    }

    private double logMolar(double density) {
        if (!(density > 0 && density < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "density " + density + " kg/m3 is not finite and above 0; check mass and volume");
        }
        return Math.log(density / composition.molarMass());
    }

    private double molarEnthalpy(double specific) {
        return (specific - model.shift().enthalpy()) * composition.molarMass();
    }

    private double molarEntropy(double specific) {
        return (specific - model.shift().entropy()) * composition.molarMass();
    }

    private String name() {
        return model.refrigerant().designation();
    }

    private PhaseSplit state(Solution solution) {
        TwoPhaseNewton split = solution.split();
        if (split != null) {
            double[] liquid = split.liquidState.moleFractions();
            double[] vapour = split.vapourState.moleFractions();
            return PhaseSplit.twoPhases(
                    phase(liquid, split, split.liquidState.density()),
                    phase(vapour, split, split.vapourState.density()),
                    Math.max(0, Math.min(1, split.vapourMassFraction())),
                    liquid,
                    vapour);
        }
        FluidState state =
                model.state(composition, solution.temperature(), solution.molarDensity(), solution.pressure());
        singlePhase.checkFound(solution.temperature(), state.pressurePa());
        if (!(state.speedOfSound() > 0)) {
            throw new ConvergenceException(String.format(
                    Locale.ROOT,
                    "state of %s at %s K and %s Pa: the one found is not stable",
                    name(),
                    solution.temperature(),
                    state.pressurePa()));
        }
        return PhaseSplit.onePhase(phases(solution), state, composition.moleFractions());
    }

    /** Warmer than every two-phase state supercritical, else liquid where denser than at the critical point. */
    private Phases phases(Solution solution) {
        if (solution.temperature() > model.lines().warmestPoint().temperatureK()) {
            return Phases.SUPERCRITICAL;
        }
        double critical =
                model.lines().criticalPoint().map(CriticalPoint::molarDensity).orElse(composition.reducingDensity());
        return solution.molarDensity() > critical ? Phases.LIQUID : Phases.VAPOUR;
    }

    private FluidState phase(double[] moleFractions, TwoPhaseNewton split, double molarDensity) {
        return model.state(
                composition.mixture().at(moleFractions), split.temperature(), molarDensity, split.pressure());
    }
}
