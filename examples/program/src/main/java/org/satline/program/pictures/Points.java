package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;

/** Points of a line, in units of the picture. A gap lifts the pen. For one thread. */
final class Points {
    private final List<Double> xs = new ArrayList<>();
    private final List<Double> ys = new ArrayList<>();

    static Points of(double... pairs) {
        Points points = new Points();
        for (int i = 0; i < pairs.length; i += 2) {
            points.add(pairs[i], pairs[i + 1]);
        }
        return points;
    }

    void add(double x, double y) {
        xs.add(x);
        ys.add(y);
    }

    /** Lifts the pen; at the begin and after another gap it does nothing. */
    void gap() {
        if (!ys.isEmpty() && !Double.isNaN(ys.get(ys.size() - 1))) {
            xs.add(xs.get(xs.size() - 1));
            ys.add(Double.NaN);
        }
    }

    boolean isEmpty() {
        return xs.isEmpty();
    }

    double[] x() {
        return xs.stream().mapToDouble(Double::doubleValue).toArray();
    }

    double[] y() {
        return ys.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
