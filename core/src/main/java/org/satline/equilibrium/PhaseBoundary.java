package org.satline.equilibrium;

import java.util.List;
import java.util.Locale;
import org.satline.equation.FixedComposition;
import org.satline.equation.PureEquation;
import org.satline.equilibrium.BoundaryTrace.Node;
import org.satline.equilibrium.BoundaryTrace.Traced;
import org.satline.equilibrium.IncipientPhase.Specified;

/**
 * A bubble or dew line of one composition, prepared for many questions: traced once, then each question starts from the traced points and
 * ends in Newton's method. Immutable and thread-safe.
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
    private final List<Node> beyond;
    private final List<BoundaryEnd> turns;
    private final boolean reachesCriticalPoint;
    private final BoundaryEnd end;
    private final double coldest;
    private final boolean beginsAtSplit;

    /** The line as far as its liquid does not split in two. */
    static PhaseBoundary of(FixedComposition composition, boolean feedIsLiquid) {
        double[] feed = composition.moleFractions();
        double coldest = coldest(composition);
        Traced traced = trace(composition, feed, feedIsLiquid, coldest);
        PhaseBoundary whole = new PhaseBoundary(composition, feedIsLiquid, traced, coldest);
        if (feed.length == 1) {
            return whole;
        }
        try {
            return whole.withoutSplit();
        } catch (TwoLiquidsException everywhere) {
            // a trace from the cold can have followed a second liquid; the line that ends at the critical point is
            // another one
            try {
                return new PhaseBoundary(
                                composition,
                                feedIsLiquid,
                                throughCriticalPoint(composition, feed, feedIsLiquid, coldest),
                                coldest)
                        .withoutSplit();
            } catch (ConvergenceException noOther) {
                throw everywhere;
            }
        }
    }

    private PhaseBoundary(FixedComposition composition, boolean feedIsLiquid, Traced traced, double coldest) {
        this.composition = composition;
        this.feed = composition.moleFractions();
        this.feedIsLiquid = feedIsLiquid;
        this.coldest = coldest;
        nodes = traced.nodes().toArray(new Node[0]);
        if (nodes.length < 2) {
            throw new ConvergenceException(String.format(
                    Locale.ROOT,
                    "%s line: ends below %s K, the coldest temperature of the components' equations",
                    feedIsLiquid ? "bubble" : "dew",
                    coldest));
        }
        if (!rises(traced.nodes())) {
            throw new ConvergenceException(String.format(
                    Locale.ROOT,
                    "%s line: its pressure falls from %.4g to %.4g MPa as it gets warmer",
                    feedIsLiquid ? "bubble" : "dew",
                    Math.exp(nodes[0].logPressure()) / 1e6,
                    Math.exp(nodes[nodes.length - 1].logPressure()) / 1e6));
        }
        end = traced.end();
        beyond = traced.beyond();
        turns = traced.turns();
        reachesCriticalPoint = traced.reachesCriticalPoint();
        beginsAtSplit = false;
    }

    private PhaseBoundary(PhaseBoundary whole, Node[] nodes, double coldest, BoundaryEnd end, boolean beginsAtSplit) {
        this.composition = whole.composition;
        this.feed = whole.feed;
        this.feedIsLiquid = whole.feedIsLiquid;
        this.end = end;
        this.beyond = whole.beyond;
        this.turns = whole.turns;
        this.reachesCriticalPoint = whole.reachesCriticalPoint;
        this.nodes = nodes;
        this.coldest = coldest;
        this.beginsAtSplit = beginsAtSplit;
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
        return new PhaseBoundary(this, kept, high, end, true);
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
        return traced.end().kind() == BoundaryEnd.Kind.LAST_POINT_FOUND || !rises(traced.nodes())
                ? otherBranch(traced, composition, feed, feedIsLiquid, coldest)
                : traced;
    }

    /** A second liquid's line runs towards its own critical point as it gets colder, or its pressure falls as it gets warmer. */
    private static boolean rises(List<Node> nodes) {
        Node last = nodes.get(nodes.size() - 1);
        return nodes.size() > 1
                && last.logTemperature() > nodes.get(0).logTemperature()
                && last.logPressure() > nodes.get(0).logPressure();
    }

    /**
     * A dew line can fold back where its first drop changes from one liquid to another, and a bubble line where its first bubble would be a
     * second liquid. The trace from the cold is then lost at the fold or leads to the second liquid, and the part on the other side, up to
     * the critical point, is the one asked for.
     */
    private static Traced otherBranch(
            Traced cold, FixedComposition composition, double[] feed, boolean feedIsLiquid, double coldest) {
        try {
            Traced warm = throughCriticalPoint(composition, feed, feedIsLiquid, coldest);
            return !rises(cold.nodes())
                            || warm.end().temperatureK() > cold.end().temperatureK()
                    ? warm
                    : cold;
        } catch (ConvergenceException noWayBack) {
            if (rises(cold.nodes())) {
                return cold;
            }
            throw noWayBack;
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

    /** Where the line is near a temperature or pressure within its range: read from the traced points, not solved. */
    Estimate estimate(Specified specified, double target) {
        int k = piece(specified, target);
        return Estimate.of(new BoundaryPiece(nodes[k], nodes[k + 1]), specified, target, feedIsLiquid);
    }

    /**
     * A point read from the traced line.
     *
     * @param x unknowns of {@link IncipientPhase} there
     * @param pressure p, Pa
     * @param feedDensity mol/m3
     * @param incipientDensity mol/m3
     */
    @SuppressWarnings("ArrayRecordComponent") // package-private, never compared
    record Estimate(double[] x, double pressure, double feedDensity, double incipientDensity) {
        static Estimate of(BoundaryPiece piece, Specified specified, double target, boolean feedIsLiquid) {
            double s = piece.invert(specified, target);
            double[] x = new double[piece.first().x().length];
            piece.guess(s, x);
            return new Estimate(
                    x, Math.exp(piece.logPressure(s)), Math.exp(x[0]), Math.exp(x[0] + (feedIsLiquid ? -s : s)));
        }

        double temperature() {
            return Math.exp(x[x.length - 1]);
        }
    }

    /** Solves at a temperature within [min, max]. */
    IncipientPhase atTemperature(double temperature) {
        return solve(Specified.TEMPERATURE, Math.log(temperature));
    }

    /** Solves at a pressure within [min, max]. */
    IncipientPhase atPressure(double pressure) {
        return solve(Specified.PRESSURE, Math.log(pressure));
    }

    private IncipientPhase solve(Specified specified, double target) {
        int k = piece(specified, target);
        return solve(specified, target, new BoundaryPiece(nodes[k], nodes[k + 1]));
    }

    /** Solves between two neighbouring points that hold the target. */
    IncipientPhase solve(Specified specified, double target, BoundaryPiece piece) {
        IncipientPhase solver = new IncipientPhase(composition.mixture(), feed, feedIsLiquid);
        double s = piece.invert(specified, target);
        piece.guess(s, solver.x);
        if (solver.solve(specified, target) && Math.abs(solver.logDensityRatio() - s) < 0.2 * s) {
            return solver;
        }
        return alongLine(specified, target, piece, solver);
    }

    /** Where temperature or pressure hardly change with S: bisect in S, each point solved at its S. */
    private IncipientPhase alongLine(Specified specified, double target, BoundaryPiece piece, IncipientPhase solver) {
        double low = piece.first().s();
        double high = piece.second().s();
        boolean rising = BoundaryPiece.value(specified, piece.second()) > BoundaryPiece.value(specified, piece.first());
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            piece.guess(middle, solver.x);
            if (!solver.solve(Specified.DENSITY_RATIO, middle)) {
                break;
            }
            double value =
                    specified == Specified.TEMPERATURE ? solver.x[solver.size() - 1] : Math.log(solver.pressure());
            if (Math.abs(value - target) < 4e-16 * Math.max(1, Math.abs(target)) || middle == low || middle == high) {
                return solver;
            }
            if (value < target == rising) {
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

    private int piece(Specified specified, double target) {
        int low = 0;
        int high = nodes.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (BoundaryPiece.value(specified, nodes[middle]) <= target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The same line with its critical point solved. */
    PhaseBoundary endingAt(CriticalPoint critical) {
        return new PhaseBoundary(
                this,
                nodes,
                coldest,
                new BoundaryEnd(BoundaryEnd.Kind.CRITICAL_POINT, critical.temperatureK(), critical.pressurePa()),
                beginsAtSplit);
    }

    /** The traced point nearest to the critical point. */
    Node last() {
        return beyond.isEmpty() ? nodes[nodes.length - 1] : beyond.get(beyond.size() - 1);
    }

    /** Traced points up to the end, coldest first. */
    List<Node> nodes() {
        return List.of(nodes);
    }

    /** Traced points from the end towards the critical point. */
    List<Node> beyond() {
        return beyond;
    }

    /** Where temperature or pressure turn. */
    List<BoundaryEnd> turns() {
        return turns;
    }

    boolean reachesCriticalPoint() {
        return reachesCriticalPoint;
    }

    boolean feedIsLiquid() {
        return feedIsLiquid;
    }
}
