package org.satline.simulation;

import java.util.Optional;
import org.satline.simulation.Cycle.Parts;
import org.satline.simulation.Cycle.Surroundings;

/**
 * Newton's method with a numerical Jacobian and halved steps on all three balances at once, from the rating point. Some fifty times quicker
 * than {@link Balance}; where a kink between zones stops it, that one takes over.
 */
final class QuickBalance {
    private static final int MOST_ROUNDS = 25;
    private static final double ACCURACY = 1e-8;
    private static final double LEAST_STEP = 1.0 / 64;
    private static final double[] TRIAL = {1e-6, 1e-6, 1e-4};
    /** Largest change in one round: of ln p, ln p and superheat. */
    private static final double[] MOST = {0.12, 0.12, 8};

    private final Parts parts;
    private final Surroundings around;
    private final double charge;

    QuickBalance(Parts parts, Surroundings around, double charge) {
        this.parts = parts;
        this.around = around;
        this.charge = charge;
    }

    Optional<Balance.Point> from(double evaporatingPa, double condensingPa, double superheatK) {
        double[] x = {Math.log(evaporatingPa), Math.log(condensingPa), superheatK};
        if (!inside(x)) {
            return Optional.empty();
        }
        Cycle cycle = at(x);
        double[] f = excess(cycle);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (size(f) < ACCURACY) {
                return Optional.of(new Balance.Point(Math.exp(x[0]), Math.exp(x[1]), x[2], cycle));
            }
            double[] step = step(x, f);
            double factor = 1;
            for (int i = 0; i < 3; i++) {
                factor = Math.min(factor, MOST[i] / Math.max(1e-30, Math.abs(step[i])));
            }
            boolean better = false;
            for (double part = factor; part >= LEAST_STEP * factor && !better; part /= 2) {
                double[] next = {x[0] + part * step[0], x[1] + part * step[1], x[2] + part * step[2]};
                if (inside(next)) {
                    Cycle there = at(next);
                    double[] g = excess(there);
                    if (size(g) < size(f)) {
                        x = next;
                        cycle = there;
                        f = g;
                        better = true;
                    }
                }
            }
            if (!better) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private double[] step(double[] x, double[] f) {
        double[][] columns = new double[3][];
        for (int i = 0; i < 3; i++) {
            double[] moved = x.clone();
            moved[i] += TRIAL[i];
            columns[i] = excess(at(moved));
            for (int j = 0; j < 3; j++) {
                columns[i][j] = (columns[i][j] - f[j]) / TRIAL[i];
            }
        }
        double whole = determinant(columns[0], columns[1], columns[2]);
        return new double[] {
            -determinant(f, columns[1], columns[2]) / whole,
            -determinant(columns[0], f, columns[2]) / whole,
            -determinant(columns[0], columns[1], f) / whole
        };
    }

    private static double determinant(double[] a, double[] b, double[] c) {
        return a[0] * (b[1] * c[2] - b[2] * c[1])
                - b[0] * (a[1] * c[2] - a[2] * c[1])
                + c[0] * (a[1] * b[2] - a[2] * b[1]);
    }

    private Cycle at(double[] x) {
        return Cycle.at(parts, around, Math.exp(x[0]), Math.exp(x[1]), x[2]);
    }

    /** Excess of suction enthalpy over some kilojoules, of flow and of charge over the rated ones: all of one order. */
    private double[] excess(Cycle cycle) {
        return new double[] {
            cycle.suctionExcess() / 2e4,
            (cycle.meteredFlow() - cycle.flow()) / parts.ratedFlow(),
            cycle.charge() / charge - 1
        };
    }

    private static double size(double[] f) {
        double size = Math.max(Math.abs(f[0]), Math.max(Math.abs(f[1]), Math.abs(f[2])));
        return size >= 0 ? size : Double.POSITIVE_INFINITY; // not a number: no step towards it
    }

    private boolean inside(double[] x) {
        WorkingFluid fluid = parts.fluid();
        double evaporatingPa = Math.exp(x[0]);
        double condensingPa = Math.exp(x[1]);
        return evaporatingPa > fluid.lowPa()
                && evaporatingPa < condensingPa
                && condensingPa + around.fault().nonCondensable().pascals() < fluid.highPa()
                && fluid.bubbleK(condensingPa) > around.outdoorK() + 0.3
                && fluid.dewK(evaporatingPa) + Math.max(0, x[2])
                        < around.returnAir().dryBulbK()
                && x[2] > Balance.WETTEST;
    }
}
