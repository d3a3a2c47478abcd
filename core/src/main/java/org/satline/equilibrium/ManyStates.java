package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.satline.equation.FixedComposition;
import org.satline.equilibrium.IncipientPhase.Specified;

/**
 * All states of one composition at a pair of quantities that several states can share: enthalpy or entropy on an
 * isotherm, a vapour fraction on an isotherm or isobar. Immutable and thread-safe.
 */
final class ManyStates {
    /** Steps in which a stretch is searched for places where a quantity turns. */
    private static final int PIECES = 48;

    /** How far beyond its ends a quantity of two phases can turn, as a share of its change between them. */
    private static final double BEYOND_ENDS = 0.1;

    private static final int HALVINGS = 60;
    private static final double SAME = 1e-7;
    private static final double THINNEST = -60;
    /** ln of the density is searched in steps of this at least; a thin gas does not turn. */
    private static final double THIN_GAS = 1e-4;

    private final Envelope envelope;
    private final StateSolver solver;
    private final FixedComposition composition;

    ManyStates(Envelope envelope, StateSolver solver) {
        this.envelope = envelope;
        this.solver = solver;
        this.composition = envelope.composition;
    }

    /** All states at an enthalpy or entropy on an isotherm, by rising density. */
    List<Solution> onIsotherm(double temperature, Given asked, double value) {
        List<StretchEnd> ends =
                IsoLine.of(envelope, Specified.TEMPERATURE, temperature).ends();
        List<Solution> found = new ArrayList<>();
        double most = Math.log(solver.atTemperaturePressure(temperature, solver.mostPressure(temperature))
                .molarDensity());
        double thin = THINNEST;
        for (int k = 0; k <= ends.size(); k += 2) {
            double dense = k == ends.size() ? most : Math.log(ends.get(k).molarDensity());
            single(temperature, asked, value, thin, dense, found);
            if (k + 1 < ends.size()) {
                between(temperature, asked, value, ends.get(k), ends.get(k + 1), found);
                thin = Math.log(ends.get(k + 1).molarDensity());
            }
        }
        return distinct(found);
    }

    private void single(
            double temperature, Given asked, double value, double thin, double dense, List<Solution> found) {
        if (!(dense > thin)) {
            return;
        }
        double begin = Math.max(thin, Math.log(composition.reducingDensity() * THIN_GAS));
        double last = thin;
        double[] turns = turns(temperature, asked, Math.min(begin, dense), dense);
        for (double turn : turns) {
            root(temperature, asked, value, last, turn, found);
            last = turn;
        }
        root(temperature, asked, value, last, dense, found);
    }

    private void root(double temperature, Given asked, double value, double thin, double dense, List<Solution> found) {
        try {
            double logDensity = solver.logDensity(temperature, asked, value, thin, dense);
            found.add(Solution.onePhase(temperature, Math.exp(logDensity)));
        } catch (BeyondRangeException notOnThisPiece) {
            // the next piece may hold it
        }
    }

    /** Densities at which the quantity turns on a stretch of one phase. */
    private double[] turns(double temperature, Given asked, double thin, double dense) {
        List<Double> turns = new ArrayList<>();
        HomogeneousNewton newton = new HomogeneousNewton(composition);
        double before = thin;
        boolean rising = slope(newton, temperature, asked, before) > 0;
        for (int k = 1; k <= PIECES; k++) {
            double next = thin + (dense - thin) * k / PIECES;
            boolean risesThere = slope(newton, temperature, asked, next) > 0;
            if (risesThere != rising) {
                double low = before;
                double high = next;
                for (int i = 0; i < HALVINGS; i++) {
                    double middle = (low + high) / 2;
                    if (slope(newton, temperature, asked, middle) > 0 == rising) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                turns.add((low + high) / 2);
            }
            rising = risesThere;
            before = next;
        }
        return turns.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double slope(HomogeneousNewton newton, double temperature, Given asked, double logDensity) {
        newton.value(temperature, Math.exp(logDensity), asked);
        return newton.densitySlope();
    }

    private void between(
            double temperature, Given asked, double value, StretchEnd from, StretchEnd to, List<Solution> found) {
        HomogeneousNewton newton = new HomogeneousNewton(composition);
        TwoPhaseStretch.Values values = new TwoPhaseStretch.Values(
                asked,
                newton.value(from.temperature(), from.molarDensity(), asked),
                newton.value(to.temperature(), to.molarDensity(), asked));
        double place = values.place(value);
        if (place >= 0 && place <= 1) {
            TwoPhaseNewton split = new TwoPhaseStretch(composition, from, to)
                    .solve(Given.TEMPERATURE, Math.log(temperature), asked, value, values);
            if (split != null) {
                found.add(Solution.of(split));
                return;
            }
        }
        if (composition.mixture().size() > 1 && place > -BEYOND_ENDS && place < 1 + BEYOND_ENDS) {
            found.addAll(new StretchSearch(composition, solver, Specified.TEMPERATURE, temperature, asked, from, to)
                    .states(value, values.atFrom(), values.atTo(), from, to));
        }
    }

    /** All states at a vapour mass fraction on an isotherm or isobar, by rising pressure or temperature. */
    List<Solution> atVapourFraction(Specified fixed, double fixedValue, double fraction) {
        List<StretchEnd> ends = fixed == Specified.TEMPERATURE
                ? IsoLine.of(envelope, fixed, fixedValue).ends()
                : solver.endsOnIsobar(fixedValue);
        Given given = fixed == Specified.TEMPERATURE ? Given.TEMPERATURE : Given.PRESSURE;
        List<Solution> found = new ArrayList<>();
        for (int k = 0; k + 1 < ends.size(); k += 2) {
            StretchEnd from = ends.get(k);
            StretchEnd to = ends.get(k + 1);
            double atFrom = from.vapourMassFraction(composition);
            double atTo = to.vapourMassFraction(composition);
            if (from.vapourFraction() != to.vapourFraction() && from.solved() && to.solved()) {
                if ((fraction - atFrom) * (fraction - atTo) > 0) {
                    if (atFrom > 0 && atFrom < 1) {
                        // cut by the coldest temperature: the fraction can rise from there before it falls
                        found.addAll(search(fixed, fixedValue, fraction, atFrom, atTo, from, to));
                    }
                    continue;
                }
                TwoPhaseNewton split = new TwoPhaseStretch(composition, from, to)
                        .solve(
                                given,
                                Math.log(fixedValue),
                                Given.VAPOUR_FRACTION,
                                fraction,
                                new TwoPhaseStretch.Values(Given.VAPOUR_FRACTION, atFrom, atTo));
                if (split != null) {
                    found.add(Solution.of(split));
                }
            } else {
                found.addAll(search(fixed, fixedValue, fraction, atFrom, atTo, from, to));
            }
        }
        return distinct(found);
    }

    /** The fractions that an isotherm or isobar reaches; nothing beside the critical point, where that is not known. */
    Optional<Range> vapourFractions(Specified fixed, double fixedValue) {
        IsoLine line = IsoLine.of(envelope, fixed, fixedValue);
        if (line.besideCriticalPoint()) {
            return Optional.empty();
        }
        List<StretchEnd> ends = fixed == Specified.TEMPERATURE ? line.ends() : solver.endsOnIsobar(fixedValue);
        double least = 1;
        double most = 0;
        for (int k = 0; k + 1 < ends.size(); k += 2) {
            StretchEnd from = ends.get(k);
            StretchEnd to = ends.get(k + 1);
            Range reached = new StretchSearch(composition, solver, fixed, fixedValue, Given.VAPOUR_FRACTION, from, to)
                    .reached(from.vapourMassFraction(composition), to.vapourMassFraction(composition), from, to);
            least = Math.min(least, reached.low());
            most = Math.max(most, reached.high());
        }
        return least <= most ? Optional.of(new Range(least, most)) : Optional.empty();
    }

    private List<Solution> search(
            Specified fixed,
            double fixedValue,
            double fraction,
            double atFrom,
            double atTo,
            StretchEnd from,
            StretchEnd to) {
        return new StretchSearch(composition, solver, fixed, fixedValue, Given.VAPOUR_FRACTION, from, to)
                .states(fraction, atFrom, atTo, from, to);
    }

    private static List<Solution> distinct(List<Solution> found) {
        List<Solution> kept = new ArrayList<>();
        for (Solution each : found) {
            boolean known = kept.stream()
                    .anyMatch(k -> Math.abs(k.molarDensity() / each.molarDensity() - 1) < SAME
                            && Math.abs(k.temperature() / each.temperature() - 1) < SAME);
            if (!known) {
                kept.add(each);
            }
        }
        kept.sort(Comparator.comparingDouble(Solution::molarDensity));
        return kept;
    }
}
