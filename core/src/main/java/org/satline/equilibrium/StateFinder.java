package org.satline.equilibrium;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;
import org.satline.equation.FixedComposition;
import org.satline.equilibrium.PhaseSplit.Phases;
import org.satline.quantity.OutOfValidityException;

/** Finds states from other pairs of quantities than temperature and pressure. Immutable and thread-safe. */
final class StateFinder {
    private static final int MOST_EVALUATIONS = 300;
    /** Relative accuracy asked of temperatures; vapour fractions are absolute. */
    private static final double ACCURACY = 1e-14;
    /** How well a state found meets the quantity asked for, as a share of its change between the lines: no jump is passed off as a root. */
    private static final double MATCH = 1e-9;

    private final FluidModel model;
    private final SinglePhase singlePhase;
    private final SplitSolver splits;

    StateFinder(FluidModel model, SinglePhase singlePhase) {
        this.model = model;
        this.singlePhase = singlePhase;
        this.splits = new SplitSolver(model.equation());
    }

    PhaseSplit atDensity(double temperature, double density) {
        checkTemperature(temperature);
        double molar = density / model.equation().molarMass();
        double most = model.equation().reducingDensity() * 6;
        if (!(molar > 0 && molar <= most)) {
            throw OutOfValidityException.of(
                    "density",
                    density,
                    "kg/m3",
                    0,
                    most * model.equation().molarMass(),
                    "the equation of " + name(),
                    "check mass and volume");
        }
        Range bubbleRange = model.bubbleTemperatureRange();
        Range dewRange = model.dewTemperatureRange();
        if (temperature >= model.minTemperatureK() && temperature <= model.maxTemperatureK()) {
            BoundaryPoint bubble = model.bubbleAtTemperature(temperature);
            BoundaryPoint dew = model.dewAtTemperature(temperature);
            if (molar >= bubble.saturated().molarDensity()) {
                return onePhase(Phases.LIQUID, model.state(temperature, molar));
            }
            if (molar <= dew.saturated().molarDensity()) {
                return onePhase(Phases.VAPOUR, model.state(temperature, molar));
            }
            return split(splits.atDensity(bubble, dew, molar));
        }
        if (temperature > Math.max(bubbleRange.high(), dewRange.high())) {
            return onePhase(Phases.SUPERCRITICAL, model.state(temperature, molar));
        }
        throw OutOfValidityException.of(
                "temperature",
                temperature,
                "K",
                model.minTemperatureK(),
                model.maxTemperatureK(),
                "the two-phase line of " + name(),
                "choose a temperature farther from the critical point");
    }

    PhaseSplit atVapourFraction(double pressure, double fraction) {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw OutOfValidityException.of(
                    "vapour fraction", fraction, "", 0, 1, "its definition", "give a mass fraction");
        }
        BoundaryPoint bubble = model.bubbleAtPressure(pressure);
        BoundaryPoint dew = model.dewAtPressure(pressure);
        return split(splits.atVapourFraction(true, Math.log(pressure), bubble, dew, fraction));
    }

    PhaseSplit atEnthalpy(double pressure, double enthalpy) {
        return atCaloric(
                pressure,
                enthalpy,
                "specific enthalpy",
                "J/kg",
                FluidState::specificEnthalpy,
                PhaseSplit::specificEnthalpy);
    }

    PhaseSplit atEntropy(double pressure, double entropy) {
        return atCaloric(
                pressure,
                entropy,
                "specific entropy",
                "J/(kg K)",
                FluidState::specificEntropy,
                PhaseSplit::specificEntropy);
    }

    /** Enthalpy and entropy both rise with temperature at constant pressure, and with the vapour fraction between the lines. */
    private PhaseSplit atCaloric(
            double pressure,
            double value,
            String what,
            String unit,
            ToDoubleFunction<FluidState> ofState,
            ToDoubleFunction<PhaseSplit> ofSplit) {
        double coldest = singlePhase.minTemperature();
        double warmest = singlePhase.maxTemperature();
        Range bubbleRange = model.bubblePressureRange();
        Range dewRange = model.dewPressureRange();
        boolean twoPhases = pressure >= Math.max(bubbleRange.low(), dewRange.low())
                && pressure <= Math.min(bubbleRange.high(), dewRange.high());
        if (twoPhases) {
            BoundaryPoint bubble = model.bubbleAtPressure(pressure);
            BoundaryPoint dew = model.dewAtPressure(pressure);
            double low = ofState.applyAsDouble(bubble.saturated());
            double high = ofState.applyAsDouble(dew.saturated());
            if (value >= low && value <= high) {
                return fraction(pressure, value, bubble, dew, ofSplit);
            }
            if (value < low) {
                return onePhase(
                        Phases.LIQUID, temperature(pressure, value, coldest, below(bubble), what, unit, ofState));
            }
            return onePhase(Phases.VAPOUR, temperature(pressure, value, above(dew), warmest, what, unit, ofState));
        }
        double low = Math.max(bubbleRange.low(), dewRange.low());
        if (pressure > Math.min(bubbleRange.low(), dewRange.low()) && pressure < low) {
            throw OutOfValidityException.of(
                    "pressure",
                    pressure,
                    "Pa",
                    low,
                    singlePhase.maxPressure(),
                    "the bubble line of " + name() + " at its coldest temperature",
                    "a colder two-phase state is outside the equation's range");
        }
        FluidState state = temperature(pressure, value, coldest, warmest, what, unit, ofState);
        boolean vapour = pressure < Math.max(bubbleRange.low(), dewRange.low());
        boolean cold = state.temperatureK() < model.maxTemperatureK();
        return onePhase(vapour ? Phases.VAPOUR : cold ? Phases.LIQUID : Phases.SUPERCRITICAL, state);
    }

    /** A hair outside the two-phase region, so that round-off does not put the end of the search inside. */
    private static double below(BoundaryPoint bubble) {
        return bubble.temperatureK() * (1 - 1e-13);
    }

    private static double above(BoundaryPoint dew) {
        return dew.temperatureK() * (1 + 1e-13);
    }

    private PhaseSplit fraction(
            double pressure,
            double value,
            BoundaryPoint bubble,
            BoundaryPoint dew,
            ToDoubleFunction<PhaseSplit> ofSplit) {
        double logPressure = Math.log(pressure);
        double low = ofSplit.applyAsDouble(split(splits.atVapourFraction(true, logPressure, bubble, dew, 0))) - value;
        double high = ofSplit.applyAsDouble(split(splits.atVapourFraction(true, logPressure, bubble, dew, 1))) - value;
        double q;
        if (low >= 0 || high <= 0) {
            q = low >= 0 ? 0 : 1;
        } else {
            q = new BrentSolver(ACCURACY, ACCURACY)
                    .solve(
                            MOST_EVALUATIONS,
                            f -> ofSplit.applyAsDouble(
                                            split(splits.atVapourFraction(true, logPressure, bubble, dew, f)))
                                    - value,
                            0,
                            1,
                            -low / (high - low));
        }
        PhaseSplit found = split(splits.atVapourFraction(true, logPressure, bubble, dew, q));
        if (!(Math.abs(ofSplit.applyAsDouble(found) - value) <= MATCH * (high - low))) {
            throw new ConvergenceException(
                    String.format(Locale.ROOT, "two-phase state of %s at %s Pa: no convergence", name(), pressure));
        }
        return found;
    }

    private FluidState temperature(
            double pressure,
            double value,
            double low,
            double high,
            String what,
            String unit,
            ToDoubleFunction<FluidState> ofState) {
        try {
            double t = new BrentSolver(ACCURACY, low * ACCURACY)
                    .solve(MOST_EVALUATIONS, x -> ofState.applyAsDouble(model.stateAt(x, pressure)) - value, low, high);
            return model.stateAt(t, pressure);
        } catch (NoBracketingException e) {
            throw OutOfValidityException.of(
                    what,
                    value,
                    unit,
                    ofState.applyAsDouble(model.stateAt(low, pressure)),
                    ofState.applyAsDouble(model.stateAt(high, pressure)),
                    String.format(Locale.ROOT, "the equation of %s at %.3f kPa", name(), pressure / 1000),
                    "check the reference state");
        }
    }

    private void checkTemperature(double temperature) {
        if (!(temperature >= singlePhase.minTemperature() && temperature <= singlePhase.maxTemperature())) {
            throw OutOfValidityException.of(
                    "temperature",
                    temperature,
                    "K",
                    singlePhase.minTemperature(),
                    singlePhase.maxTemperature(),
                    "the equation of " + name(),
                    "choose a temperature within the range");
        }
    }

    private String name() {
        return model.refrigerant().designation();
    }

    private PhaseSplit onePhase(Phases phases, FluidState state) {
        return PhaseSplit.onePhase(phases, state, model.equation().moleFractions());
    }

    private PhaseSplit split(TwoPhaseNewton solved) {
        double[] liquid = solved.liquidState.moleFractions.clone();
        double[] vapour = solved.vapourState.moleFractions.clone();
        return PhaseSplit.twoPhases(
                phase(liquid, solved.temperature(), solved.liquidState.density),
                phase(vapour, solved.temperature(), solved.vapourState.density),
                Math.max(0, Math.min(1, solved.vapourMassFraction())),
                liquid,
                vapour);
    }

    private FluidState phase(double[] moleFractions, double temperature, double molarDensity) {
        FixedComposition composition = model.equation().mixture().at(moleFractions);
        return model.state(composition, temperature, molarDensity);
    }
}
