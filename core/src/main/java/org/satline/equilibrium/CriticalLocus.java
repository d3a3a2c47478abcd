package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.equation.EquationLibrary;
import org.satline.equation.InteractionModel;
import org.satline.equation.MixtureEquation;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Refrigerant;

/**
 * Critical points of two substances at all their proportions. Immutable and thread-safe.
 *
 * @param first the substance whose mole fraction is counted
 * @param second the other one
 * @param points critical points by rising mole fraction, beginning at 0
 * @param closed true if the points lead from the one pure substance to the other; false where the line of critical points that begins at
 *     the second turns away, as it does for substances that mix badly
 */
public record CriticalLocus(Refrigerant first, Refrigerant second, List<Point> points, boolean closed) {
    private static final double SMALLEST_STEP = 1e-4;
    /** Critical temperature and density change by less than this from one point to the next, relative; a jump would be another branch. */
    private static final double LARGEST_CHANGE = 0.05;

    /**
     * One critical point.
     *
     * @param moleFraction mole fraction of the first substance
     * @param critical the critical point of that composition
     */
    public record Point(double moleFraction, CriticalPoint critical) {
        /** {@inheritDoc} */
        public Point {
            Parts.numbers("moleFraction", moleFraction);
            Parts.required("critical", critical);
        }
    }

    /** {@inheritDoc} */
    public CriticalLocus {
        Parts.required("first second", first, second);
        points = Parts.list("points", points);
    }

    /**
     * Computes the locus.
     *
     * @param first a substance
     * @param second another one
     * @param model which pair parameters to use
     * @param step distance of the points in mole fraction, in [0.001, 0.5]
     * @return the locus
     * @throws org.satline.equation.MissingEquationException if a substance has no equation
     */
    public static CriticalLocus of(Refrigerant first, Refrigerant second, InteractionModel model, double step) {
        Parts.required("first second model", first, second, model);
        if (!(step >= 0.001 && step <= 0.5)) {
            throw new IllegalArgumentException("step of mole fraction " + step + " is outside [0.001, 0.5]");
        }
        MixtureEquation mixture =
                EquationLibrary.standard().mixture(List.of(first.designation(), second.designation()), model);
        List<Point> points = new ArrayList<>();
        points.add(new Point(0, pure(second)));
        CriticalPoint last = points.get(0).critical();
        double at = 0;
        double stride = step;
        double due = step;
        while (due < 1 - step / 2) {
            double next = Math.min(due, at + stride);
            Optional<CriticalPoint> found = new CriticalPointSolver(mixture.at(new double[] {next, 1 - next}))
                    .near(last.temperatureK(), last.molarDensity());
            if (found.isEmpty() || jumps(last, found.get())) {
                stride /= 2;
                if (stride < SMALLEST_STEP) {
                    return new CriticalLocus(first, second, points, false);
                }
                continue;
            }
            last = found.get();
            at = next;
            stride = Math.min(step, stride * 1.5);
            if (next == due) {
                points.add(new Point(next, last));
                due = step * points.size();
            }
        }
        points.add(new Point(1, pure(first)));
        return new CriticalLocus(
                first,
                second,
                points,
                !farther(last, points.get(points.size() - 1).critical(), step));
    }

    private static CriticalPoint pure(Refrigerant substance) {
        return FluidModel.of(substance).lines().criticalPoint().orElseThrow();
    }

    private static boolean jumps(CriticalPoint from, CriticalPoint to) {
        return Math.abs(to.temperatureK() / from.temperatureK() - 1) > LARGEST_CHANGE
                || Math.abs(to.molarDensity() / from.molarDensity() - 1) > 3 * LARGEST_CHANGE;
    }

    /** The last stretch to the pure substance changes more than its neighbours can. */
    private static boolean farther(CriticalPoint last, CriticalPoint end, double step) {
        return Math.abs(end.temperatureK() / last.temperatureK() - 1) > 2 * step + LARGEST_CHANGE;
    }
}
