package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.satline.equation.MixtureEquation;
import org.satline.equilibrium.IncipientPhase.Specified;

/**
 * Traces one phase boundary from the coldest temperature to its end in steps of {@code S = ln(liquid density / vapour
 * density)}.
 *
 * <p>S falls steadily from about 20 on a cold line to 0 at the critical point, and temperature, pressure and
 * compositions are smooth functions of it there: nothing is singular where temperature or pressure pass through a
 * maximum. The line ends at the critical point or at the largest temperature or pressure, where that comes first; the
 * points between that end and the critical point are kept for states in the retrograde region.
 */
final class BoundaryTrace {
    private static final double LARGEST_STEP = 0.5;
    private static final double SMALLEST_STEP = 1e-3;
    /** The trace stops this close to the critical point: about 1e-5 of the critical temperature away from it. */
    private static final double LAST_RATIO = 0.01;
    /** Where the critical point is crossed by a straight step: the nearer, the straighter the line, the worse the conditioning. */
    private static final double[] CROSSING_RATIOS = {0.1, 0.03, 0.01};

    private static final double CROSSING_GROWTH = 1.1;
    private static final double LARGEST_RATIO = 40;
    /** How closely in S a largest temperature or pressure is found; both are flat there. */
    private static final double TURN_FOUND = 1e-6;

    private final IncipientPhase solver;
    private final double coldest;
    private final int size;

    /** One point of the boundary with its direction. */
    @SuppressWarnings("ArrayRecordComponent") // private to the tracer, never compared
    record Node(double s, double[] x, double[] dx, double logPressure, double dLogPressure) {
        double logTemperature() {
            return x[x.length - 1];
        }

        double dLogTemperature() {
            return dx[dx.length - 1];
        }
    }

    /**
     * The traced line.
     *
     * @param nodes as far as temperature and pressure rise together, coldest first
     * @param beyond from there towards the critical point
     * @param turns where temperature or pressure turn, in the order of the line
     * @param end what ends the nodes
     * @param reachesCriticalPoint whether the last of all nodes lies beside the critical point
     */
    record Traced(
            List<Node> nodes,
            List<Node> beyond,
            List<BoundaryEnd> turns,
            BoundaryEnd end,
            boolean reachesCriticalPoint) {}

    BoundaryTrace(MixtureEquation equation, double[] feed, boolean feedIsLiquid, double coldest) {
        this.solver = new IncipientPhase(equation, feed, feedIsLiquid);
        this.coldest = coldest;
        this.size = solver.size();
    }

    /**
     * Traces from a first point.
     *
     * @param start unknowns near the boundary
     * @param startTemperature temperature at which the first point is solved, K
     */
    Traced from(double[] start, double startTemperature) {
        System.arraycopy(start, 0, solver.x, 0, size);
        if (!solver.solve(Specified.TEMPERATURE, Math.log(startTemperature))) {
            throw new ConvergenceException("phase boundary: no first point at " + startTemperature + " K");
        }
        return around(node(solver.logDensityRatio()));
    }

    private Traced around(Node first) {
        List<Node> nodes = new ArrayList<>(colder(first));
        if (nodes.isEmpty() || first.logTemperature() > Math.log(coldest)) {
            nodes.add(first);
        }
        return warmer(nodes);
    }

    /**
     * Traces from the other side of the critical point, where the line of the same feed as the opposite phase ends:
     * both are one curve.
     *
     * @param opposite traces of the same feed as the opposite phase
     * @param start unknowns near the first point of that line
     * @param startTemperature temperature of that point, K
     */
    Traced throughCriticalPoint(BoundaryTrace opposite, double[] start, double startTemperature) {
        Node first = null;
        for (double ratio : CROSSING_RATIOS) {
            first = first == null ? crossed(opposite, start, startTemperature, ratio) : first;
        }
        if (first == null) {
            throw new ConvergenceException("phase boundary: critical point not passed");
        }
        // back over a largest pressure or temperature on this side of the critical point
        while (first.dLogTemperature() >= 0 || first.dLogPressure() >= 0) {
            Node next = attempt(first, first.s() * CROSSING_GROWTH);
            if (next == null || next.logTemperature() < Math.log(coldest) || next.s() > LARGEST_RATIO) {
                throw new ConvergenceException("phase boundary: its largest pressure comes below " + coldest
                        + " K, the coldest temperature of the components' equations");
            }
            first = next;
        }
        if (first.logTemperature() < Math.log(coldest)) {
            throw new ConvergenceException("phase boundary: ends below " + coldest
                    + " K, the coldest temperature of the components' equations");
        }
        return around(first);
    }

    /** The point beyond the critical point of the same density ratio as one before it; null where the straight step fails. */
    private @Nullable Node crossed(BoundaryTrace opposite, double[] start, double startTemperature, double ratio) {
        Node near = opposite.nearCritical(start, startTemperature, ratio);
        for (int i = 0; i < size; i++) {
            solver.x[i] = near.x()[i] - near.dx()[i] * (near.s() + ratio);
        }
        if (!solver.solve(Specified.DENSITY_RATIO, ratio)) {
            return null;
        }
        Node there = node(ratio);
        return Math.abs(there.logTemperature() - near.logTemperature()) < ratio ? there : null;
    }

    private Node nearCritical(double[] start, double startTemperature, double ratio) {
        System.arraycopy(start, 0, solver.x, 0, size);
        if (!solver.solve(Specified.TEMPERATURE, Math.log(startTemperature))) {
            throw new ConvergenceException("phase boundary: no first point at " + startTemperature + " K");
        }
        Node last = node(solver.logDensityRatio());
        double step = LARGEST_STEP;
        while (last.s() > ratio * 1.000001) {
            step = Math.min(step, Math.max(0.3 * last.s(), ratio / 2));
            Node node = attempt(last, Math.max(ratio, last.s() - step));
            if (node == null) {
                step /= 2;
                if (step < SMALLEST_STEP) {
                    throw new ConvergenceException("phase boundary: lost at " + Math.exp(last.logTemperature()) + " K");
                }
                continue;
            }
            last = node;
            step = Math.min(LARGEST_STEP, step * 1.5);
        }
        return last;
    }

    /** Follows the line down to the coldest temperature, or as far as this branch exists and its pressure falls. */
    private List<Node> colder(Node first) {
        List<Node> found = new ArrayList<>();
        Node last = first;
        double step = LARGEST_STEP;
        double end = Math.log(coldest);
        while (last.logTemperature() > end) {
            double next = last.s() + step;
            Node node = attempt(last, next);
            // a dissolved gas can raise the pressure of a cold liquid: the line begins where its pressure is least
            if (node == null || node.dLogTemperature() >= 0 || node.dLogPressure() >= 0) {
                step /= 2;
                if (step < SMALLEST_STEP) {
                    break;
                }
                continue;
            }
            if (node.logTemperature() < end) {
                System.arraycopy(node.x(), 0, solver.x, 0, size);
                predict(
                        last,
                        last.s()
                                + step
                                        * (end - last.logTemperature())
                                        / (node.logTemperature() - last.logTemperature()));
                if (!solver.solve(Specified.TEMPERATURE, end)) {
                    throw new ConvergenceException("phase boundary: no point at " + coldest + " K");
                }
                node = node(solver.logDensityRatio());
                found.add(0, node);
                break;
            }
            found.add(0, node);
            last = node;
            step = Math.min(LARGEST_STEP, step * 1.5);
        }
        return found;
    }

    /** To the critical point; what lies beyond the largest temperature or pressure is kept apart. */
    private Traced warmer(List<Node> nodes) {
        List<Node> beyond = new ArrayList<>();
        List<BoundaryEnd> turns = new ArrayList<>();
        Node last = nodes.get(nodes.size() - 1);
        double step = LARGEST_STEP;
        while (last.s() > LAST_RATIO * 1.000001) {
            step = Math.min(step, Math.max(0.3 * last.s(), LAST_RATIO / 2));
            Node node = attempt(last, Math.max(LAST_RATIO, last.s() - step));
            if (node == null) {
                step /= 2;
                if (step < SMALLEST_STEP) {
                    return traced(nodes, beyond, turns, last, BoundaryEnd.Kind.LAST_POINT_FOUND);
                }
                continue;
            }
            if (turned(last, node)) {
                node = turn(last, node, nodes, beyond, turns);
            }
            (turns.isEmpty() ? nodes : beyond).add(node);
            last = node;
            step = Math.min(LARGEST_STEP, step * 1.5);
        }
        return traced(nodes, beyond, turns, last, BoundaryEnd.Kind.CRITICAL_POINT);
    }

    private static Traced traced(
            List<Node> nodes, List<Node> beyond, List<BoundaryEnd> turns, Node last, BoundaryEnd.Kind kind) {
        BoundaryEnd end = turns.isEmpty()
                ? new BoundaryEnd(kind, Math.exp(last.logTemperature()), Math.exp(last.logPressure()))
                : turns.get(0);
        return new Traced(nodes, beyond, turns, end, kind == BoundaryEnd.Kind.CRITICAL_POINT);
    }

    private static boolean turned(Node before, Node after) {
        return (before.dLogTemperature() < 0) != (after.dLogTemperature() < 0)
                || (before.dLogPressure() < 0) != (after.dLogPressure() < 0);
    }

    /** Bisects for the point where temperature or pressure turns; returns the point just after it. */
    private Node turn(Node before, Node after, List<Node> nodes, List<Node> beyond, List<BoundaryEnd> turns) {
        Node low = before;
        Node high = after;
        for (int i = 0; i < 40 && low.s() - high.s() > TURN_FOUND; i++) {
            Node middle = attempt(low, (low.s() + high.s()) / 2);
            if (middle == null) {
                break;
            }
            if (turned(before, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        if (low.s() < before.s()) {
            (turns.isEmpty() ? nodes : beyond).add(low);
        }
        boolean ofTemperature = (low.dLogTemperature() < 0) != (high.dLogTemperature() < 0);
        turns.add(new BoundaryEnd(
                ofTemperature ? BoundaryEnd.Kind.LARGEST_TEMPERATURE : BoundaryEnd.Kind.LARGEST_PRESSURE,
                Math.exp(low.logTemperature()),
                Math.exp(low.logPressure())));
        return high;
    }

    private @Nullable Node attempt(Node from, double s) {
        predict(from, s);
        if (!solver.solve(Specified.DENSITY_RATIO, s)) {
            return null;
        }
        double moved = 0;
        for (int i = 0; i < size; i++) {
            moved = Math.max(moved, Math.abs(solver.x[i] - from.x()[i] - from.dx()[i] * (s - from.s())));
        }
        return moved > LARGEST_STEP ? null : node(s);
    }

    private void predict(Node from, double s) {
        for (int i = 0; i < size; i++) {
            solver.x[i] = from.x()[i] + from.dx()[i] * (s - from.s());
        }
    }

    private Node node(double s) {
        return node(solver, s);
    }

    /** A converged point with its direction. */
    static Node node(IncipientPhase solver, double s) {
        int size = solver.size();
        double[] pressureGradient = new double[size];
        double[] dx = new double[size];
        if (!solver.tangent(Specified.DENSITY_RATIO, s, dx)) {
            throw new ConvergenceException("phase boundary: no direction at " + solver.temperature() + " K");
        }
        solver.logPressureGradient(pressureGradient);
        double slope = 0;
        for (int i = 0; i < size; i++) {
            slope += pressureGradient[i] * dx[i];
        }
        return new Node(s, solver.x.clone(), dx, Math.log(solver.pressure()), slope);
    }
}
