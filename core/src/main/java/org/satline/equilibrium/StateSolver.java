package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.jspecify.annotations.Nullable;
import org.satline.equation.FixedComposition;
import org.satline.equilibrium.IncipientPhase.Specified;

/**
 * Finds states on an isotherm or isobar: at another of the two, at a density, enthalpy or entropy. A starting state is
 * read from the traced lines and Newton's method on both given quantities does the rest; near the lines, beside the
 * critical point and wherever that fails, the ends of the two-phase region are solved first. Immutable and thread-safe.
 */
final class StateSolver {
    /** Traced lines are read to better than this in pressure. */
    private static final double SURELY = 0.02;
    /** Share of the change between the lines: farther outside no equilibrium needs to be solved to know the side. */
    private static final double CLEARLY = 2e-3;
    /** How far over an end of its stretch an iteration may land, relative in T. */
    private static final double ROUND_OFF = 1e-8;

    private static final double AT_THE_LIMIT = 1e-9;
    private static final int MOST_EVALUATIONS = 200;
    private static final double ACCURACY = 1e-14;
    /** ln of a molar density at which every gas is ideal. */
    private static final double THINNEST = -60;

    private final String designation;
    private final Envelope envelope;
    private final SinglePhase singlePhase;
    private final FixedComposition composition;
    private final boolean pure;

    StateSolver(String designation, Envelope envelope, SinglePhase singlePhase) {
        this.designation = designation;
        this.envelope = envelope;
        this.singlePhase = singlePhase;
        this.composition = envelope.composition;
        this.pure = composition.mixture().size() == 1;
    }

    /** One phase or, for a blend, two. */
    Solution atTemperaturePressure(double temperature, double pressure) {
        singlePhase.checkTemperature(temperature);
        singlePhase.checkPressure(pressure);
        IsoLine quick = IsoLine.estimated(envelope, Specified.TEMPERATURE, temperature);
        if (quick != null) {
            StretchEnd vapour = quick.ends().get(0);
            StretchEnd liquid = quick.ends().get(1);
            if (pressure > liquid.pressure() * (1 + SURELY)) {
                return Solution.onePhase(
                                temperature, singlePhase.compressed(temperature, pressure, liquid.molarDensity()))
                        .at(pressure);
            }
            if (pressure < vapour.pressure() * (1 - SURELY)) {
                return Solution.onePhase(
                                temperature, singlePhase.expanded(temperature, pressure, vapour.molarDensity()))
                        .at(pressure);
            }
        }
        IsoLine line = IsoLine.of(envelope, Specified.TEMPERATURE, temperature);
        List<StretchEnd> ends = line.ends();
        int below = 0;
        while (below < ends.size() && ends.get(below).pressure() < pressure) {
            below++;
        }
        if (pure && ends.size() == 2 && Math.abs(pressure / ends.get(0).pressure() - 1) < 1e-13) {
            throw new TwoPhaseStateException(
                    designation,
                    temperature,
                    pressure,
                    ends.get(0).pressure(),
                    ends.get(1).pressure());
        }
        if (below % 2 == 1 && below < ends.size()) {
            Solution split = split(
                    new TwoPhaseStretch(composition, ends.get(below - 1), ends.get(below)),
                    Given.TEMPERATURE,
                    Math.log(temperature),
                    Given.PRESSURE,
                    Math.log(pressure),
                    new TwoPhaseStretch.Values(
                            Given.PRESSURE,
                            Math.log(ends.get(below - 1).pressure()),
                            Math.log(ends.get(below).pressure())));
            if (split != null) {
                return split;
            }
            if (temperature <= Math.min(envelope.bubble.maxTemperature(), envelope.dew.maxTemperature())) {
                throw notFound(Specified.TEMPERATURE, temperature);
            }
        }
        return stable(temperature, pressure, ends, below);
    }

    /** One phase, confirmed by the stability test where the lines do not both answer. */
    private Solution stable(double temperature, double pressure, List<StretchEnd> ends, int below) {
        double rho = ends.isEmpty()
                ? singlePhase.supercritical(temperature, pressure)
                : below == 0
                        ? singlePhase.expanded(
                                temperature, pressure, ends.get(0).molarDensity())
                        : singlePhase.compressed(
                                temperature, pressure, ends.get(below - 1).molarDensity());
        boolean known = ends.size() == 2
                && temperature <= envelope.bubble.maxTemperature()
                && temperature <= envelope.dew.maxTemperature();
        boolean outside = temperature > envelope.warmest().temperatureK() * (1 + AT_THE_LIMIT)
                || pressure > envelope.highest().pressurePa() * (1 + SURELY);
        if (pure || known || outside) {
            return Solution.onePhase(temperature, rho).at(pressure);
        }
        return new PhaseDecision(composition, designation).atPressure(temperature, pressure, rho, ends);
    }

    /** The state at a density, enthalpy or entropy on an isotherm or isobar along which that quantity does not turn. */
    Solution along(Specified fixed, double fixedValue, Given asked, double value) {
        Solution quick = quick(fixed, fixedValue, asked, value);
        Solution found = quick != null ? quick : thorough(fixed, fixedValue, asked, value);
        return fixed == Specified.PRESSURE ? found.at(fixedValue) : found;
    }

    private static Given given(Specified fixed) {
        return fixed == Specified.TEMPERATURE ? Given.TEMPERATURE : Given.PRESSURE;
    }

    private double valueAt(StretchEnd end, Given asked) {
        return asked == Given.DENSITY
                ? end.x()[end.x().length - 1]
                : new HomogeneousNewton(composition).value(end.temperature(), end.molarDensity(), asked);
    }

    private @Nullable Solution quick(Specified fixed, double fixedValue, Given asked, double value) {
        IsoLine line = IsoLine.estimated(envelope, fixed, fixedValue);
        if (line == null) {
            return null;
        }
        StretchEnd first = line.ends().get(0);
        StretchEnd last = line.ends().get(1);
        TwoPhaseStretch.Values values = new TwoPhaseStretch.Values(asked, valueAt(first, asked), valueAt(last, asked));
        double place = values.place(value);
        double logFixed = Math.log(fixedValue);
        if (place > CLEARLY && place < 1 - CLEARLY) {
            TwoPhaseNewton split =
                    new TwoPhaseStretch(composition, first, last).direct(given(fixed), logFixed, asked, value, place);
            return split == null ? null : Solution.of(split);
        }
        if (place < -CLEARLY || place > 1 + CLEARLY) {
            StretchEnd end = place < 0 ? first : last;
            HomogeneousNewton newton = new HomogeneousNewton(composition);
            if (newton.solve(end.temperature(), end.molarDensity(), given(fixed), logFixed, asked, value)
                    && onItsSide(newton, end, fixed)) {
                return within(newton, fixed) ? Solution.onePhase(newton.temperature(), newton.molarDensity()) : null;
            }
        }
        return null;
    }

    /** A liquid must stay denser and, at one pressure, colder than at its end; a vapour thinner and warmer. */
    private static boolean onItsSide(HomogeneousNewton newton, StretchEnd end, Specified fixed) {
        boolean liquid = end.vapourFraction() < 0.5;
        double ratio = newton.molarDensity() / end.molarDensity();
        double warmer = newton.temperature() / end.temperature();
        return liquid
                ? ratio > 1 - CLEARLY && (fixed == Specified.TEMPERATURE || warmer < 1 + ROUND_OFF)
                : ratio < 1 + CLEARLY && (fixed == Specified.TEMPERATURE || warmer > 1 - ROUND_OFF);
    }

    private boolean within(HomogeneousNewton newton, Specified fixed) {
        return fixed == Specified.TEMPERATURE
                || (newton.temperature() >= singlePhase.minTemperature()
                        && newton.temperature() <= singlePhase.maxTemperature());
    }

    private Solution thorough(Specified fixed, double fixedValue, Given asked, double value) {
        List<StretchEnd> ends = fixed == Specified.PRESSURE
                ? warmEnds(fixedValue)
                : IsoLine.of(envelope, fixed, fixedValue).ends();
        double[] values = new double[ends.size()];
        double[] places = new double[ends.size()];
        for (int k = 0; k < values.length; k++) {
            values[k] = valueAt(ends.get(k), asked);
            places[k] = place(fixed, asked, values[k]);
        }
        double wanted = place(fixed, asked, value);
        int before = 0;
        while (before < places.length && places[before] < wanted) {
            before++;
        }
        int parity = fixed == Specified.TEMPERATURE ? before : ends.size() - before;
        if (parity % 2 == 1) {
            StretchEnd from;
            double atFrom;
            if (before == 0) {
                Solution coldest = atTemperaturePressure(singlePhase.minTemperature(), fixedValue);
                if (coldest.split() == null) {
                    return single(fixed, fixedValue, asked, value, null, ends.get(0));
                }
                from = new StretchEnd(coldest.split().x, fixedValue, true);
                atFrom = asked == Given.DENSITY
                        ? Math.log(coldest.molarDensity())
                        : coldest.split().overall(asked);
                if (wanted < place(fixed, asked, atFrom)) {
                    throw new BeyondRangeException(atFrom, atWarmest(fixedValue, asked));
                }
            } else {
                from = ends.get(before - 1);
                atFrom = values[before - 1];
            }
            if (before < ends.size()) {
                Solution split = split(
                        new TwoPhaseStretch(composition, from, ends.get(before)),
                        given(fixed),
                        Math.log(fixedValue),
                        asked,
                        value,
                        new TwoPhaseStretch.Values(asked, atFrom, values[before]));
                if (split != null) {
                    return split;
                }
            }
            if (fixed == Specified.TEMPERATURE && asked == Given.DENSITY && !pure) {
                return new PhaseDecision(composition, designation).atDensity(fixedValue, value, ends);
            }
            throw notFound(fixed, fixedValue);
        }
        return single(
                fixed,
                fixedValue,
                asked,
                value,
                before == 0 ? null : ends.get(before - 1),
                before == ends.size() ? null : ends.get(before));
    }

    /** A line can reach colder than the range of states, where its opposite begins at a split of the liquid. */
    private List<StretchEnd> warmEnds(double pressure) {
        return IsoLine.of(envelope, Specified.PRESSURE, pressure).ends().stream()
                .filter(e -> e.temperature() >= singlePhase.minTemperature() * (1 - AT_THE_LIMIT))
                .toList();
    }

    /** Ends of the two-phase region on an isobar; where the coldest temperature cuts it, the state there is the first. */
    List<StretchEnd> endsOnIsobar(double pressure) {
        List<StretchEnd> ends = warmEnds(pressure);
        if (ends.size() % 2 == 1) {
            TwoPhaseNewton coldest = atTemperaturePressure(singlePhase.minTemperature(), pressure)
                    .split();
            if (coldest != null) {
                List<StretchEnd> all = new ArrayList<>(ends);
                all.add(0, new StretchEnd(coldest.x, pressure, true));
                return all;
            }
        }
        return ends;
    }

    private double atWarmest(double pressure, Given asked) {
        double warmest = singlePhase.maxTemperature();
        return new HomogeneousNewton(composition)
                .value(warmest, atTemperaturePressure(warmest, pressure).molarDensity(), asked);
    }

    /** Rises along an isobar with temperature, along an isotherm with pressure. */
    private static double place(Specified fixed, Given asked, double value) {
        return (fixed == Specified.PRESSURE) == (asked == Given.DENSITY) ? -value : value;
    }

    private @Nullable Solution split(
            TwoPhaseStretch stretch,
            Given fixed,
            double fixedValue,
            Given asked,
            double value,
            TwoPhaseStretch.Values values) {
        TwoPhaseNewton found = stretch.solve(fixed, fixedValue, asked, value, values);
        return found == null ? null : Solution.of(found);
    }

    private Solution single(
            Specified fixed,
            double fixedValue,
            Given asked,
            double value,
            @Nullable StretchEnd low,
            @Nullable StretchEnd high) {
        return fixed == Specified.TEMPERATURE
                ? onIsotherm(fixedValue, asked, value, low, high)
                : onIsobar(fixedValue, asked, value, low, high);
    }

    private Solution onIsobar(
            double pressure, Given asked, double value, @Nullable StretchEnd low, @Nullable StretchEnd high) {
        double coldest = low == null ? singlePhase.minTemperature() : low.temperature();
        double warmest = high == null ? singlePhase.maxTemperature() : high.temperature();
        HomogeneousNewton newton = new HomogeneousNewton(composition);
        for (StretchEnd start : new StretchEnd[] {low, high}) {
            if (start != null
                    && newton.solve(
                            start.temperature(), start.molarDensity(), Given.PRESSURE, Math.log(pressure), asked, value)
                    && newton.temperature() >= coldest * (1 - ROUND_OFF)
                    && newton.temperature() <= warmest * (1 + ROUND_OFF)) {
                return Solution.onePhase(newton.temperature(), newton.molarDensity());
            }
        }
        double atLow = valueOnIsobar(coldest, pressure, asked, low);
        double atHigh = valueOnIsobar(warmest, pressure, asked, high);
        double sign = asked == Given.DENSITY ? -1 : 1;
        double slack = AT_THE_LIMIT * Math.abs(atHigh - atLow);
        if (!(sign * (value - atLow) >= -slack && sign * (atHigh - value) >= -slack)) {
            throw new BeyondRangeException(atLow, atHigh);
        }
        if (!(sign * (value - atLow) > 0)) {
            return atTemperaturePressure(coldest, pressure);
        }
        if (!(sign * (atHigh - value) > 0)) {
            return atTemperaturePressure(warmest, pressure);
        }
        try {
            double t = new BrentSolver(ACCURACY, coldest * 1e-9)
                    .solve(MOST_EVALUATIONS, x -> valueOnIsobar(x, pressure, asked, null) - value, coldest, warmest);
            double rho = densityOnIsobar(t, pressure);
            return newton.solve(t, rho, Given.PRESSURE, Math.log(pressure), asked, value)
                    ? Solution.onePhase(newton.temperature(), newton.molarDensity())
                    : Solution.onePhase(t, rho);
        } catch (MathIllegalArgumentException | TooManyEvaluationsException e) {
            throw notFound(Specified.PRESSURE, pressure);
        }
    }

    private double densityOnIsobar(double temperature, double pressure) {
        return atTemperaturePressure(temperature, pressure).molarDensity();
    }

    private double valueOnIsobar(double temperature, double pressure, Given asked, @Nullable StretchEnd end) {
        double rho = end == null ? densityOnIsobar(temperature, pressure) : end.molarDensity();
        return asked == Given.DENSITY
                ? Math.log(rho)
                : new HomogeneousNewton(composition).value(temperature, rho, asked);
    }

    private Solution onIsotherm(
            double temperature, Given asked, double value, @Nullable StretchEnd low, @Nullable StretchEnd high) {
        if (asked == Given.DENSITY) {
            return Solution.onePhase(temperature, Math.exp(value));
        }
        double thin = low == null ? THINNEST : Math.log(low.molarDensity());
        double dense = high == null
                ? Math.log(atTemperaturePressure(temperature, mostPressure(temperature))
                        .molarDensity())
                : Math.log(high.molarDensity());
        return Solution.onePhase(temperature, Math.exp(logDensity(temperature, asked, value, thin, dense)));
    }

    /** The largest pressure of the equation, or where the substance freezes. */
    double mostPressure(double temperature) {
        double melting = MeltingLine.of(composition)
                .flatMap(line -> line.pressure(temperature))
                .orElse(Double.POSITIVE_INFINITY);
        return Math.min(melting, singlePhase.maxPressure());
    }

    /** ln of the density at which a quantity takes a value between two densities of one isotherm, between which it does not turn. */
    double logDensity(double temperature, Given asked, double value, double thin, double dense) {
        return new IsothermRoot(composition).logDensity(temperature, asked, value, thin, dense);
    }

    ConvergenceException notFound(Specified fixed, double value) {
        return new ConvergenceException(String.format(
                Locale.ROOT,
                "state of %s at %s %s: no convergence%s",
                designation,
                value,
                fixed == Specified.TEMPERATURE ? "K" : "Pa",
                envelope.critical()
                        .map(c -> String.format(
                                Locale.ROOT,
                                "; its critical point is %.4f K, %.0f Pa",
                                c.temperatureK(),
                                c.pressurePa()))
                        .orElse("")));
    }
}
