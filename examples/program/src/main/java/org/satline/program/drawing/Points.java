package org.satline.program.drawing;

import java.util.ArrayList;
import java.util.List;

/** Points of a line, in units of the picture. A gap lifts the pen. For one thread. */
public final class Points {
    private final List<Double> xs = new ArrayList<>();
    private final List<Double> ys = new ArrayList<>();

    /** No points yet. */
    public Points() {}

    /**
     * Points in order.
     *
     * @param pairs x and y in turn
     * @return the points
     */
    public static Points of(double... pairs) {
        Points points = new Points();
        for (int i = 0; i < pairs.length; i += 2) {
            points.add(pairs[i], pairs[i + 1]);
        }
        return points;
    }

    /**
     * Goes on to a point.
     *
     * @param x along the horizontal axis
     * @param y along the vertical axis
     */
    public void add(double x, double y) {
        xs.add(x);
        ys.add(y);
    }

    /** Lifts the pen; at the begin and after another gap it does nothing. */
    public void gap() {
        if (!ys.isEmpty() && !Double.isNaN(ys.get(ys.size() - 1))) {
            xs.add(xs.get(xs.size() - 1));
            ys.add(Double.NaN);
        }
    }

    /**
     * Tells whether there is none.
     *
     * @return whether nothing was added
     */
    public boolean isEmpty() {
        return xs.isEmpty();
    }

    /**
     * Returns where they are along the horizontal axis.
     *
     * @return one value for each point and gap
     */
    public double[] x() {
        return xs.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * Returns where they are along the vertical axis.
     *
     * @return one value for each point; NaN where the pen is lifted
     */
    public double[] y() {
        return ys.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
