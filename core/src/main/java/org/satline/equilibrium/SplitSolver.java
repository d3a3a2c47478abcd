package org.satline.equilibrium;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.satline.equation.FixedComposition;
import org.satline.equilibrium.TwoPhaseNewton.Amount;

/** Two-phase states between a bubble and a dew point of the same temperature or pressure. Immutable and thread-safe. */
final class SplitSolver {
    private static final int MOST_HALVINGS = 100;
    private static final double DENSITY_ACCURACY = 1e-10;
    /** Where the search for a denser root of the liquid starts, as multiples of the present density. */
    private static final double[] DENSER = {1.1, 1.2, 1.35, 1.5, 1.7, 1.9};

    private static final int MOST_ROOTS = 4;

    private final FixedComposition composition;
    private final double[] z;

    SplitSolver(FixedComposition composition) {
        this.composition = composition;
        this.z = composition.moleFractions();
    }

    /** Bubble and dew point with their unknowns, between which a split lies. */
    @SuppressWarnings("ArrayRecordComponent") // private, never compared
    private record Ends(double[] atBubble, double[] atDew) {}

    /** State at a vapour mass fraction within [0, 1]. */
    TwoPhaseNewton atVapourFraction(
            boolean pressureGiven, double logGiven, BoundaryPoint bubble, BoundaryPoint dew, double q) {
        TwoPhaseNewton solver = new TwoPhaseNewton(composition.mixture(), z);
        Ends ends = ends(bubble, dew);
        guess(ends, q, solver.x);
        if (solveStable(solver, pressureGiven, logGiven, Amount.VAPOUR_MASS_FRACTION, q)) {
            return solver;
        }
        TwoPhaseNewton walked = walk(pressureGiven, logGiven, ends, q);
        if (walked == null) {
            throw new ConvergenceException(String.format(
                    Locale.ROOT,
                    "two-phase state at vapour fraction %s and %s K: no convergence",
                    q,
                    bubble.temperatureK()));
        }
        return walked;
    }

    /** State at an overall molar density between those of the dew and the bubble point, at one temperature. */
    TwoPhaseNewton atDensity(BoundaryPoint bubble, BoundaryPoint dew, double molarDensity) {
        double logTemperature = Math.log(bubble.temperatureK());
        double vl = 1 / bubble.saturated().molarDensity();
        double vv = 1 / dew.saturated().molarDensity();
        double estimate = Math.max(0, Math.min(1, (1 / molarDensity - vl) / (vv - vl)));
        TwoPhaseNewton solver = new TwoPhaseNewton(composition.mixture(), z);
        Ends ends = ends(bubble, dew);
        guess(ends, estimate, solver.x);
        solver.x[2 * z.length + 2] = Math.log(molarDensity);
        if (solveStable(solver, false, logTemperature, Amount.LOG_DENSITY, Math.log(molarDensity))
                && solver.vapourMoleFraction() > -1e-9
                && solver.vapourMoleFraction() < 1 + 1e-9) {
            return solver;
        }
        return densityByHalving(bubble, dew, molarDensity);
    }

    private TwoPhaseNewton densityByHalving(BoundaryPoint bubble, BoundaryPoint dew, double molarDensity) {
        double logTemperature = Math.log(bubble.temperatureK());
        double low = 0;
        double high = 1;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double middle = (low + high) / 2;
            TwoPhaseNewton solver = atVapourFraction(false, logTemperature, bubble, dew, middle);
            if (solver.density() > molarDensity) {
                low = middle;
            } else {
                high = middle;
            }
            if (Math.abs(solver.density() / molarDensity - 1) < DENSITY_ACCURACY) {
                return solver;
            }
        }
        throw new ConvergenceException(String.format(
                Locale.ROOT,
                "two-phase state at %s mol/m3 and %s K: no convergence",
                molarDensity,
                bubble.temperatureK()));
    }

    /** Goes from the nearer end to the wanted vapour fraction in steps, each starting from the last. */
    private @Nullable TwoPhaseNewton walk(boolean pressureGiven, double logGiven, Ends ends, double q) {
        for (int pieces = 4; pieces <= 256; pieces *= 4) {
            for (boolean fromBubble : new boolean[] {q < 0.5, q >= 0.5}) {
                TwoPhaseNewton solver = new TwoPhaseNewton(composition.mixture(), z);
                double start = fromBubble ? 0 : 1;
                guess(ends, start, solver.x);
                boolean good = true;
                for (int k = 1; k <= pieces && good; k++) {
                    double next = start + (q - start) * k / pieces;
                    good = solveStable(solver, pressureGiven, logGiven, Amount.VAPOUR_MASS_FRACTION, next);
                }
                if (good) {
                    return solver;
                }
            }
        }
        return null;
    }

    /**
     * Solves, and makes sure that the liquid is the stable root of its composition: at low temperature an isotherm can have a second root at a lower
     * density, which Gibbs energy tells apart.
     */
    private boolean solveStable(
            TwoPhaseNewton solver, boolean pressureGiven, double logGiven, Amount amount, double amountValue) {
        for (int root = 0; root < MOST_ROOTS; root++) {
            if (!solver.solve(pressureGiven, logGiven, amount, amountValue)) {
                return false;
            }
            double shift = towardsStableLiquid(solver);
            if (shift == 0) {
                return true;
            }
            for (int i = 0; i < z.length; i++) {
                solver.x[i] += shift;
            }
        }
        return false;
    }

    /** ln of (density of a denser root with a lower Gibbs energy / present density); 0 if there is none. */
    private double towardsStableLiquid(TwoPhaseNewton solver) {
        double present = solver.liquidState.density;
        double temperature = solver.temperature();
        FixedComposition liquid = composition.mixture().at(solver.liquidState.moleFractions);
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

    private Ends ends(BoundaryPoint bubble, BoundaryPoint dew) {
        return new Ends(unknowns(bubble, true), unknowns(dew, false));
    }

    private double[] unknowns(BoundaryPoint point, boolean isBubble) {
        int n = z.length;
        double[] x = new double[2 * n + 3];
        double saturated = point.saturated().molarDensity();
        double[] incipient = point.incipientMoleFractions();
        for (int i = 0; i < n; i++) {
            double feed = Math.log(z[i] * saturated);
            double other = Math.log(incipient[i] * point.incipientMolarDensity());
            x[i] = isBubble ? feed : other;
            x[n + i] = isBubble ? other : feed;
        }
        x[2 * n] = isBubble ? 0 : 1;
        x[2 * n + 1] = Math.log(point.temperatureK());
        x[2 * n + 2] = Math.log(saturated);
        return x;
    }

    private void guess(Ends ends, double q, double[] x) {
        int n = z.length;
        for (int i = 0; i < x.length; i++) {
            x[i] = (1 - q) * ends.atBubble[i] + q * ends.atDew[i];
        }
        double vl = Math.exp(-ends.atBubble[2 * n + 2]);
        double vv = Math.exp(-ends.atDew[2 * n + 2]);
        double volume = (1 - q) * vl + q * vv;
        x[2 * n] = q;
        x[2 * n + 2] = -Math.log(volume);
    }
}
