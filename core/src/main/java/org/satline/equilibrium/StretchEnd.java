package org.satline.equilibrium;

import org.satline.equation.FixedComposition;

/**
 * Where an isotherm or isobar of one composition enters or leaves the two-phase region, with the unknowns of {@link TwoPhaseNewton} there.
 * Immutable.
 *
 * @param x the unknowns; never changed
 * @param pressure p, Pa
 * @param solved false for a starting value: read from the traced line, or the critical point itself
 */
@SuppressWarnings("ArrayRecordComponent") // package-private, never compared
record StretchEnd(double[] x, double pressure, boolean solved) {
    static StretchEnd of(IncipientPhase point, FixedComposition composition) {
        return new StretchEnd(
                unknowns(point.x, point.feedIsLiquid(), composition.moleFractions()), point.pressure(), true);
    }

    /** The same point of a pure substance, seen from its vapour. */
    static StretchEnd vapourOf(IncipientPhase point) {
        double[] x = unknowns(point.x, true, new double[] {1});
        x[2] = 1;
        x[4] = x[1];
        return new StretchEnd(x, point.pressure(), true);
    }

    static StretchEnd of(PhaseBoundary.Estimate estimate, boolean feedIsLiquid, double[] z) {
        return new StretchEnd(unknowns(estimate.x(), feedIsLiquid, z), estimate.pressure(), false);
    }

    /** A pure substance's estimate seen from its vapour. */
    static StretchEnd vapourOf(PhaseBoundary.Estimate estimate) {
        double[] x = unknowns(estimate.x(), true, new double[] {1});
        x[2] = 1;
        x[4] = x[1];
        return new StretchEnd(x, estimate.pressure(), false);
    }

    static StretchEnd of(CriticalPoint critical, double[] z) {
        double[] x = new double[z.length + 2];
        x[0] = Math.log(critical.molarDensity());
        for (int i = 0; i < z.length; i++) {
            x[i + 1] = Math.log(z[i] * critical.molarDensity());
        }
        x[z.length + 1] = Math.log(critical.temperatureK());
        return new StretchEnd(unknowns(x, true, z), critical.pressurePa(), false);
    }

    private static double[] unknowns(double[] incipient, boolean feedIsLiquid, double[] z) {
        int n = z.length;
        double[] x = new double[2 * n + 3];
        for (int i = 0; i < n; i++) {
            double feed = Math.log(z[i]) + incipient[0];
            x[i] = feedIsLiquid ? feed : incipient[i + 1];
            x[n + i] = feedIsLiquid ? incipient[i + 1] : feed;
        }
        x[2 * n] = feedIsLiquid ? 0 : 1;
        x[2 * n + 1] = incipient[n + 1];
        x[2 * n + 2] = incipient[0];
        return x;
    }

    double temperature() {
        return Math.exp(x[x.length - 2]);
    }

    double molarDensity() {
        return Math.exp(x[x.length - 1]);
    }

    /** Mole fraction of vapour: 0 or 1. */
    double vapourFraction() {
        return x[x.length - 3];
    }

    /** Mass fraction of vapour: between 0 and 1 where the coldest temperature cuts the two-phase region. */
    double vapourMassFraction(FixedComposition composition) {
        double beta = vapourFraction();
        if (beta == 0 || beta == 1) {
            return beta;
        }
        int n = (x.length - 3) / 2;
        double density = 0;
        double mass = 0;
        for (int i = 0; i < n; i++) {
            double partial = Math.exp(x[n + i]);
            density += partial;
            mass += partial * composition.mixture().components().get(i).molarMass();
        }
        return beta * mass / density / composition.molarMass();
    }
}
