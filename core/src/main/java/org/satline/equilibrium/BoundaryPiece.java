package org.satline.equilibrium;

import org.satline.equilibrium.BoundaryTrace.Node;
import org.satline.equilibrium.IncipientPhase.Specified;

/**
 * The cubic between two neighbouring points of a traced boundary: starting values for the point that is asked for. Immutable and
 * thread-safe.
 */
final class BoundaryPiece {
    private static final int MOST_ITERATIONS = 30;
    private static final double CLOSE = 1e-9;

    private final Node a;
    private final Node b;

    BoundaryPiece(Node a, Node b) {
        this.a = a;
        this.b = b;
    }

    Node first() {
        return a;
    }

    Node second() {
        return b;
    }

    /** True if the quantity takes the value between the two points, which must not turn in between. */
    boolean holds(Specified specified, double target) {
        double va = value(specified, a);
        double vb = value(specified, b);
        return (va <= target && target <= vb) || (vb <= target && target <= va);
    }

    static double value(Specified specified, Node node) {
        return specified == Specified.TEMPERATURE ? node.logTemperature() : node.logPressure();
    }

    private static double slope(Specified specified, Node node) {
        return specified == Specified.TEMPERATURE ? node.dLogTemperature() : node.dLogPressure();
    }

    /** S at which the cubic takes the target value. */
    double invert(Specified specified, double target) {
        double va = value(specified, a);
        double vb = value(specified, b);
        double ha = slope(specified, a) * (b.s() - a.s());
        double hb = slope(specified, b) * (b.s() - a.s());
        boolean rising = vb > va;
        double low = 0;
        double high = 1;
        double u = va == vb ? 0.5 : (target - va) / (vb - va);
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            double f = hermite(u, va, vb, ha, hb) - target;
            if (f < 0 == rising) {
                low = u;
            } else {
                high = u;
            }
            double next = u - f / hermiteSlope(u, va, vb, ha, hb);
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(next - u) < CLOSE) {
                break;
            }
            u = next;
        }
        return a.s() + u * (b.s() - a.s());
    }

    /** Fills the unknowns of {@link IncipientPhase} at an S between those of the two points. */
    void guess(double s, double[] x) {
        double h = b.s() - a.s();
        double u = (s - a.s()) / h;
        for (int i = 0; i < x.length; i++) {
            x[i] = hermite(u, a.x()[i], b.x()[i], a.dx()[i] * h, b.dx()[i] * h);
        }
    }

    double logPressure(double s) {
        double h = b.s() - a.s();
        return hermite((s - a.s()) / h, a.logPressure(), b.logPressure(), a.dLogPressure() * h, b.dLogPressure() * h);
    }

    private static double hermite(double u, double a, double b, double ha, double hb) {
        double v = 1 - u;
        return a * v * v * (1 + 2 * u) + b * u * u * (3 - 2 * u) + ha * u * v * v - hb * u * u * v;
    }

    private static double hermiteSlope(double u, double a, double b, double ha, double hb) {
        double v = 1 - u;
        return 6 * u * v * (b - a) + ha * v * (1 - 3 * u) + hb * u * (3 * u - 2);
    }
}
