package org.satline.equilibrium;

import org.jspecify.annotations.Nullable;
import org.satline.equation.FixedComposition;

/** Two-phase states between two ends on one isotherm or isobar. Immutable and thread-safe. */
final class TwoPhaseStretch {
    /** Where the search for a denser root of the liquid starts, as multiples of the present density. */
    private static final double[] DENSER = {1.1, 1.2, 1.35, 1.5, 1.7, 1.9};

    private static final int MOST_ROOTS = 4;
    /** Molar volumes of liquids mix so nearly ideally that a false root, which is thinner, shows. */
    private static final double SURELY_LIQUID = 0.97;

    private static final int MOST_PIECES = 256;
    private static final int MOST_HALVINGS = 60;
    /** How well a state found by halving meets what was asked, as a share of its change between the ends. */
    private static final double END_MET = 1e-9;

    private static final double ROUND_OFF_OF_LOGARITHM = 1e-11;
    /** A vapour fraction may leave [0, 1] by round-off at an end, by no more. */
    private static final double ROUND_OFF = 1e-8;

    private final FixedComposition composition;
    private final int n;
    private final StretchEnd from;
    private final StretchEnd to;

    TwoPhaseStretch(FixedComposition composition, StretchEnd from, StretchEnd to) {
        this.composition = composition;
        this.n = composition.mixture().size();
        this.from = from;
        this.to = to;
    }

    /** A quantity at both ends, in the form of {@link Given}. */
    record Values(Given asked, double atFrom, double atTo) {
        /** Where between the ends a value lies, 0 and 1 being the ends; densities by volume. */
        double place(double value) {
            return asked == Given.DENSITY
                    ? (Math.exp(-value) - Math.exp(-atFrom)) / (Math.exp(-atTo) - Math.exp(-atFrom))
                    : (value - atFrom) / (atTo - atFrom);
        }
    }

    /** Solves from a straight line between the ends; null if that does not converge. */
    @Nullable
    TwoPhaseNewton direct(Given fixed, double fixedValue, Given asked, double value, double share) {
        TwoPhaseNewton solver = new TwoPhaseNewton(composition.mixture(), composition.moleFractions());
        guess(share, solver.x);
        return solveStable(solver, fixed, fixedValue, asked, value) && within(solver) ? solver : null;
    }

    /** Solves, if need be in steps from either end; null if no way leads there. */
    @Nullable
    TwoPhaseNewton solve(Given fixed, double fixedValue, Given asked, double value, Values values) {
        double place = values.place(value);
        double share = place >= 0 && place <= 1 ? place : place > 1 ? 1 : 0;
        TwoPhaseNewton direct = direct(fixed, fixedValue, asked, value, share);
        if (direct != null) {
            return direct;
        }
        TwoPhaseNewton walked = walk(fixed, fixedValue, asked, value, values, share);
        return walked != null ? walked : byVapourFraction(fixed, fixedValue, asked, value, values);
    }

    /** The pair asked for can tell the vapour fraction badly, as beside an azeotrope: halves the fraction instead. */
    private @Nullable TwoPhaseNewton byVapourFraction(
            Given fixed, double fixedValue, Given asked, double value, Values values) {
        if (!(from.solved() && to.solved())) {
            return null;
        }
        double low = from.vapourMassFraction(composition);
        double high = to.vapourMassFraction(composition);
        boolean rising = values.atTo > values.atFrom;
        TwoPhaseNewton best = null;
        double least = Double.POSITIVE_INFINITY;
        double range = Math.abs(values.atTo - values.atFrom);
        TwoPhaseStretch.Values fractions = new Values(Given.VAPOUR_FRACTION, low, high);
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double middle = i == 0 ? low : i == 1 ? high : (low + high) / 2;
            TwoPhaseNewton there = direct(fixed, fixedValue, Given.VAPOUR_FRACTION, middle, fractions.place(middle));
            if (there == null) {
                return best != null && least < END_MET * range ? best : null;
            }
            double miss = valueOf(there, asked) - value;
            if (Math.abs(miss) < least) {
                least = Math.abs(miss);
                best = there;
            }
            if (i > 1) {
                if (miss < 0 == rising) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
        }
        return least < Math.max(END_MET * range, ROUND_OFF_OF_LOGARITHM) ? best : null;
    }

    private static double valueOf(TwoPhaseNewton split, Given asked) {
        return switch (asked) {
            case PRESSURE -> Math.log(split.pressure());
            case TEMPERATURE -> Math.log(split.temperature());
            case DENSITY -> Math.log(split.density());
            case VAPOUR_FRACTION -> split.vapourMassFraction();
            case ENTHALPY, ENTROPY, ENERGY -> split.overall(asked);
        };
    }

    private @Nullable TwoPhaseNewton walk(
            Given fixed, double fixedValue, Given asked, double value, Values values, double share) {
        for (int pieces = 4; pieces <= MOST_PIECES; pieces *= 4) {
            for (boolean fromFirst : new boolean[] {share < 0.5, share >= 0.5}) {
                StretchEnd start = fromFirst ? from : to;
                if (!start.solved()) {
                    continue;
                }
                double begin = fromFirst ? values.atFrom : values.atTo;
                TwoPhaseNewton solver = new TwoPhaseNewton(composition.mixture(), composition.moleFractions());
                System.arraycopy(start.x(), 0, solver.x, 0, solver.x.length);
                boolean good = true;
                for (int k = 1; k <= pieces && good; k++) {
                    double next = k == pieces ? value : begin + (value - begin) * k / pieces;
                    good = solveStable(solver, fixed, fixedValue, asked, next);
                }
                if (good && within(solver)) {
                    return solver;
                }
            }
        }
        return null;
    }

    private static boolean within(TwoPhaseNewton solver) {
        double beta = solver.vapourMoleFraction();
        return beta >= -ROUND_OFF && beta <= 1 + ROUND_OFF;
    }

    /**
     * Solves, and makes sure that the liquid is the stable root of its composition: at low temperature an isotherm can have a second root
     * at a lower density, which Gibbs energy tells apart.
     */
    private boolean solveStable(TwoPhaseNewton solver, Given fixed, double fixedValue, Given asked, double value) {
        for (int root = 0; root < MOST_ROOTS; root++) {
            if (!solver.solve(fixed, fixedValue, asked, value)) {
                return false;
            }
            double shift = towardsStableLiquid(solver);
            if (shift == 0) {
                return true;
            }
            for (int i = 0; i < n; i++) {
                solver.x[i] += shift;
            }
        }
        return false;
    }

    /** ln of (density of a denser root with a lower Gibbs energy / present density); 0 if there is none. */
    private double towardsStableLiquid(TwoPhaseNewton solver) {
        double present = solver.liquidState.density();
        double temperature = solver.temperature();
        if (present > SURELY_LIQUID * expectedLiquid(solver.liquidState.moleFractions())) {
            return 0;
        }
        FixedComposition liquid = composition.mixture().at(solver.liquidState.moleFractions());
        DensitySolver densities = new DensitySolver(liquid);
        double gibbs = densities.gibbs(temperature, present);
        for (double factor : DENSER) {
            double denser = densities.near(temperature, solver.pressure(), present * factor);
            if (denser > present * 1.01 && densities.gibbs(temperature, denser) < gibbs) {
                return Math.log(denser / present);
            }
        }
        return 0;
    }

    /** Density of a liquid of given composition if volumes changed evenly between the liquids of both ends. */
    private double expectedLiquid(double[] composition) {
        double first = liquidDensity(from);
        double second = liquidDensity(to);
        double along = 0;
        double whole = 0;
        for (int i = 0; i < n; i++) {
            double begin = Math.exp(from.x()[i]) / first;
            double change = Math.exp(to.x()[i]) / second - begin;
            along += change * (composition[i] - begin);
            whole += change * change;
        }
        double share = whole > 0 ? Math.max(0, Math.min(1, along / whole)) : 0;
        return 1 / ((1 - share) / first + share / second);
    }

    private double liquidDensity(StretchEnd end) {
        double liquid = 0;
        for (int i = 0; i < n; i++) {
            liquid += Math.exp(end.x()[i]);
        }
        return liquid;
    }

    private void guess(double share, double[] x) {
        for (int i = 0; i < x.length; i++) {
            x[i] = (1 - share) * from.x()[i] + share * to.x()[i];
        }
        double beta = x[2 * n];
        double liquid = 0;
        double vapour = 0;
        for (int i = 0; i < n; i++) {
            liquid += Math.exp(x[i]);
            vapour += Math.exp(x[n + i]);
        }
        x[2 * n + 2] = -Math.log((1 - beta) / liquid + beta / vapour);
    }
}
