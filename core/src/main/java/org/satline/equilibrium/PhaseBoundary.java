package org.satline.equilibrium;

import java.util.List;
import java.util.Locale;
import org.satline.equation.FixedComposition;
import org.satline.equation.PureEquation;
import org.satline.equilibrium.BoundaryTrace.Node;
import org.satline.equilibrium.BoundaryTrace.Traced;
import org.satline.equilibrium.IncipientPhase.Specified;

/**
 * A bubble or dew line of one composition, prepared for many questions: traced once, then each question starts from the traced points and ends in
 * Newton's method. Immutable and thread-safe.
 */
final class PhaseBoundary {
    private static final double ROUND_OFF = 1e-10;
    /** How closely the temperature of a split is found, K; no model knows it better than by kelvins. */
    private static final double SPLIT_ACCURACY = 0.01;
    /** Traced points closer than this in S count as one. */
    private static final double SAME_NODE = 1e-9;

    private final FixedComposition composition;
    private final double[] feed;
    private final boolean feedIsLiquid;
    private final Node[] nodes;
    private final BoundaryEnd end;
    private final double coldest;
    private final boolean beginsAtSplit;

    /** The line as far as its liquid does not split in two. */
    static PhaseBoundary of(FixedComposition composition, boolean feedIsLiquid) {
        PhaseBoundary whole = new PhaseBoundary(composition, feedIsLiquid);
        return whole.feed.length == 1 ? whole : whole.withoutSplit();
    }

    private PhaseBoundary(FixedComposition composition, boolean feedIsLiquid) {
        this.composition = composition;
        this.feed = composition.moleFractions();
        this.feedIsLiquid = feedIsLiquid;
        coldest = coldest(composition);
        Traced traced = trace(composition, feed, feedIsLiquid, coldest);
        nodes = traced.nodes().toArray(new Node[0]);
        if (nodes.length < 2) {
            throw new ConvergenceException(String.format(
                    Locale.ROOT,
                    "%s line: ends below %s K, the coldest temperature of the components' equations",
                    feedIsLiquid ? "bubble" : "dew",
                    coldest));
        }
        end = new BoundaryEnd(traced.kind(), traced.endTemperature(), traced.endPressure());
        beginsAtSplit = false;
    }

    private PhaseBoundary(PhaseBoundary whole, Node[] nodes, double coldest) {
        this.composition = whole.composition;
        this.feed = whole.feed;
        this.feedIsLiquid = whole.feedIsLiquid;
        this.end = whole.end;
        this.nodes = nodes;
        this.coldest = coldest;
        this.beginsAtSplit = true;
    }

    /** Liquids split when they get cold: if none does at the coldest point, none does on the line. */
    private PhaseBoundary withoutSplit() {
        LiquidStability stability = new LiquidStability(composition.mixture(), feed);
        int k = 0;
        while (k < nodes.length && !stability.holds(point(nodes[k]))) {
            k++;
        }
        if (k == 0) {
            return this;
        }
        if (k >= nodes.length - 1) {
            throw TwoLiquidsException.everywhere(composition.mixture().components().stream()
                    .map(c -> c.constants().designation())
                    .toList());
        }
        double low = Math.exp(nodes[k - 1].logTemperature());
        double high = Math.exp(nodes[k].logTemperature());
        while (high - low > SPLIT_ACCURACY) {
            double middle = (low + high) / 2;
            if (stability.holds(atTemperature(middle))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        IncipientPhase first = atTemperature(high);
        Node begin = BoundaryTrace.node(first, first.logDensityRatio());
        int from = nodes[k].s() < begin.s() * (1 - SAME_NODE) ? k : k + 1;
        Node[] kept = new Node[nodes.length - from + 1];
        kept[0] = begin;
        System.arraycopy(nodes, from, kept, 1, nodes.length - from);
        return new PhaseBoundary(this, kept, high);
    }

    private IncipientPhase point(Node node) {
        IncipientPhase point = new IncipientPhase(composition.mixture(), feed, feedIsLiquid);
        System.arraycopy(node.x(), 0, point.x, 0, point.size());
        point.evaluate(Specified.TEMPERATURE, node.logTemperature());
        return point;
    }

    /** True if the line begins where the liquid would split in two, not where the components' equations begin. */
    boolean beginsAtSplit() {
        return beginsAtSplit;
    }

    /** From an easy point of the line itself, or else from the opposite line through the critical point. */
    private static Traced trace(FixedComposition composition, double[] feed, boolean feedIsLiquid, double coldest) {
        Traced traced;
        try {
            FirstPoint first = new FirstPoint(composition.mixture(), feed, feedIsLiquid, coldest);
            double temperature = first.temperature();
            traced = new BoundaryTrace(composition.mixture(), feed, feedIsLiquid, coldest)
                    .from(first.near(temperature), temperature);
        } catch (ConvergenceException noEasyPoint) {
            return throughCriticalPoint(composition, feed, feedIsLiquid, coldest);
        }
        return traced.kind() == BoundaryEnd.Kind.LAST_POINT_FOUND
                ? warmer(traced, composition, feed, feedIsLiquid, coldest)
                : traced;
    }

    /**
     * A dew line can fold back where its first drop changes from one liquid to another. The trace from the cold is then lost at the fold, and the part on the
     * other side of it, up to the critical point, is the one that is asked for.
     */
    private static Traced warmer(
            Traced cold, FixedComposition composition, double[] feed, boolean feedIsLiquid, double coldest) {
        try {
            Traced warm = throughCriticalPoint(composition, feed, feedIsLiquid, coldest);
            return warm.endTemperature() > cold.endTemperature() ? warm : cold;
        } catch (ConvergenceException noWayBack) {
            return cold;
        }
    }

    private static Traced throughCriticalPoint(
            FixedComposition composition, double[] feed, boolean feedIsLiquid, double coldest) {
        BoundaryTrace trace = new BoundaryTrace(composition.mixture(), feed, feedIsLiquid, coldest);
        BoundaryTrace opposite = new BoundaryTrace(composition.mixture(), feed, !feedIsLiquid, coldest);
        FirstPoint first = new FirstPoint(composition.mixture(), feed, !feedIsLiquid, coldest);
        double temperature = first.temperature();
        return trace.throughCriticalPoint(opposite, first.near(temperature), temperature);
    }

    /** Largest lower limit among the components, K. */
    static double coldest(FixedComposition composition) {
        double coldest = 0;
        for (PureEquation component : composition.mixture().components()) {
            coldest = Math.max(coldest, component.constants().saturationStart());
        }
        return coldest;
    }

    BoundaryEnd end() {
        return end;
    }

    /** The limit of the components' equations to the last digit where the line reaches it. */
    double minTemperature() {
        double traced = Math.exp(nodes[0].logTemperature());
        return Math.abs(traced - coldest) < ROUND_OFF * coldest ? coldest : traced;
    }

    /** Temperature of the last traced point: questions beyond it are refused. */
    double maxTemperature() {
        return Math.exp(nodes[nodes.length - 1].logTemperature());
    }

    /** A hair lower than the pressure at the coldest temperature, so that a pressure computed there can be asked back. */
    double minPressure() {
        return Math.exp(nodes[0].logPressure()) * (1 - ROUND_OFF);
    }

    double maxPressure() {
        return Math.exp(nodes[nodes.length - 1].logPressure()) * (1 + ROUND_OFF);
    }

    /** ln p near the line at a temperature within [min, max], and the saturated density there: read from the traced points, not solved. */
    Estimate estimate(double temperature) {
        double target = Math.log(temperature);
        int k = piece(Specified.TEMPERATURE, target);
        Node a = nodes[k];
        Node b = nodes[k + 1];
        double s = invert(Specified.TEMPERATURE, target, a, b);
        double h = b.s() - a.s();
        double u = (s - a.s()) / h;
        double logPressure = hermite(u, a.logPressure(), b.logPressure(), a.dLogPressure() * h, b.dLogPressure() * h);
        double logFeed = hermite(u, a.x()[0], b.x()[0], a.dx()[0] * h, b.dx()[0] * h);
        double sign = feedIsLiquid ? -s : s;
        return new Estimate(Math.exp(logPressure), Math.exp(logFeed), Math.exp(logFeed + sign));
    }

    /** A point read from the traced line. */
    record Estimate(double pressure, double feedDensity, double incipientDensity) {}

    /** Solves at a temperature within [min, max]. */
    IncipientPhase atTemperature(double temperature) {
        return solve(Specified.TEMPERATURE, Math.log(temperature));
    }

    /** Solves at a pressure within [min, max]. */
    IncipientPhase atPressure(double pressure) {
        return solve(Specified.PRESSURE, Math.log(pressure));
    }

    private IncipientPhase solve(Specified specified, double target) {
        IncipientPhase solver = new IncipientPhase(composition.mixture(), feed, feedIsLiquid);
        int k = piece(specified, target);
        double s = invert(specified, target, nodes[k], nodes[k + 1]);
        guess(k, s, solver.x);
        if (solver.solve(specified, target) && Math.abs(solver.logDensityRatio() - s) < 0.2 * s) {
            return solver;
        }
        return alongLine(specified, target, k, solver);
    }

    /** Where temperature or pressure hardly change with S: bisect in S, each point solved at its S. */
    private IncipientPhase alongLine(Specified specified, double target, int k, IncipientPhase solver) {
        double low = nodes[k].s();
        double high = nodes[k + 1].s();
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            guess(k, middle, solver.x);
            if (!solver.solve(Specified.DENSITY_RATIO, middle)) {
                break;
            }
            double value =
                    specified == Specified.TEMPERATURE ? solver.x[solver.size() - 1] : Math.log(solver.pressure());
            if (Math.abs(value - target) < 4e-16 * Math.max(1, Math.abs(target)) || middle == low || middle == high) {
                return solver;
            }
            if (value < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        throw new ConvergenceException(String.format(
                Locale.ROOT,
                "%s point at %s %.17g: no convergence",
                feedIsLiquid ? "bubble" : "dew",
                specified == Specified.TEMPERATURE ? "T/K =" : "p/Pa =",
                Math.exp(target)));
    }

    private static double value(Specified specified, Node node) {
        return specified == Specified.TEMPERATURE ? node.logTemperature() : node.logPressure();
    }

    private static double slope(Specified specified, Node node) {
        return specified == Specified.TEMPERATURE ? node.dLogTemperature() : node.dLogPressure();
    }

    private int piece(Specified specified, double target) {
        int low = 0;
        int high = nodes.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (value(specified, nodes[middle]) <= target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** S at which the cubic through two points and their slopes takes the target value. */
    private static double invert(Specified specified, double target, Node a, Node b) {
        double va = value(specified, a);
        double vb = value(specified, b);
        double ha = slope(specified, a) * (b.s() - a.s());
        double hb = slope(specified, b) * (b.s() - a.s());
        double low = 0;
        double high = 1;
        double u = (target - va) / (vb - va);
        for (int i = 0; i < 30; i++) {
            double f = hermite(u, va, vb, ha, hb) - target;
            if (f < 0) {
                low = u;
            } else {
                high = u;
            }
            double next = u - f / hermiteSlope(u, va, vb, ha, hb);
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(next - u) < 1e-9) {
                break;
            }
            u = next;
        }
        return a.s() + u * (b.s() - a.s());
    }

    private void guess(int k, double s, double[] x) {
        Node a = nodes[k];
        Node b = nodes[k + 1];
        double h = b.s() - a.s();
        double u = (s - a.s()) / h;
        for (int i = 0; i < x.length; i++) {
            x[i] = hermite(u, a.x()[i], b.x()[i], a.dx()[i] * h, b.dx()[i] * h);
        }
    }

    private static double hermite(double u, double a, double b, double ha, double hb) {
        double v = 1 - u;
        return a * v * v * (1 + 2 * u) + b * u * u * (3 - 2 * u) + ha * u * v * v - hb * u * u * v;
    }

    private static double hermiteSlope(double u, double a, double b, double ha, double hb) {
        double v = 1 - u;
        return 6 * u * v * (b - a) + ha * v * (1 - 3 * u) + hb * u * (3 * u - 2);
    }

    List<Node> nodes() {
        return List.of(nodes);
    }
}
