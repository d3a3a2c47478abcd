package org.satline.tables;

import org.satline.saturation.SaturationProperty;

/**
 * One tabulated property: piecewise polynomials whose piece is found without a search. The body covers [low, split); the top covers [split, high]
 * in {@code theta = sqrt(1 - x/end)}, which straightens what bends towards the end of the line. Immutable.
 */
abstract class Column {
    static final int TOP_DEGREE = 9;

    final double low;
    final double split;
    final double high;
    final ColumnData data;
    final double[] body;
    private final double end;
    private final double[] top;
    private final double topStart;
    private final double topScale;
    private final boolean divergent;

    Column(SaturationProperty property, ColumnData data) {
        this.data = data;
        low = data.low();
        split = data.split();
        high = data.high();
        end = data.end();
        body = data.body();
        top = data.top();
        topStart = theta(high, end);
        topScale = scale(topStart, theta(split, end), data.topPieces());
        divergent = divergent(property);
    }

    static Column of(SaturationProperty property, ColumnData data) {
        return switch (bodyDegree(property)) {
            case UniformQuintic.DEGREE -> new UniformQuintic(property, data);
            case OctaveSextic.DEGREE -> new OctaveSextic(property, data);
            default -> new UniformNonic(property, data);
        };
    }

    /** Pressures are asked most: short polynomials, many pieces. Temperatures go by octaves of pressure. */
    static int bodyDegree(SaturationProperty property) {
        if (property.askedByPressure()) {
            return OctaveSextic.DEGREE;
        }
        return isPressure(property) ? UniformQuintic.DEGREE : UniformNonic.DEGREE;
    }

    private static boolean isPressure(SaturationProperty property) {
        return property == SaturationProperty.BUBBLE_PRESSURE || property == SaturationProperty.DEW_PRESSURE;
    }

    /** Heat capacities grow like 1/theta^2 towards a critical point: the top holds their product with theta^2. */
    static boolean divergent(SaturationProperty property) {
        return property == SaturationProperty.BUBBLE_LIQUID_HEAT_CAPACITY
                || property == SaturationProperty.DEW_VAPOUR_HEAT_CAPACITY;
    }

    static double theta(double x, double end) {
        return Math.sqrt((end - x) / end);
    }

    /** Pieces per unit; a hair small, so that the upper limit itself still falls into the last piece. */
    static double scale(double from, double to, int pieces) {
        return pieces / (to - from) * (1 - 1e-13);
    }

    /** Value in [low, split); anything else is the caller's mistake. */
    abstract double body(double x);

    /** Value in [split, high]. */
    final double top(double x) {
        double theta = theta(x, end);
        double u = (theta - topStart) * topScale;
        int piece = (int) u;
        double t = u - piece;
        int k = piece * (TOP_DEGREE + 1) + TOP_DEGREE;
        double sum = top[k];
        for (int i = 0; i < TOP_DEGREE; i++) {
            sum = sum * t + top[--k];
        }
        return divergent ? sum / (theta * theta) : sum;
    }

    final boolean covers(double x) {
        return x >= low && x <= high;
    }

    final double at(double x) {
        return x < split ? body(x) : top(x);
    }

    /** Quintic pieces of equal width: the fastest form. */
    static final class UniformQuintic extends Column {
        static final int DEGREE = 5;
        private final double scale;

        UniformQuintic(SaturationProperty property, ColumnData data) {
            super(property, data);
            scale = scale(low, split, data.bodyPieces());
        }

        @Override
        double body(double x) {
            double u = (x - low) * scale;
            int piece = (int) u;
            double t = u - piece;
            int k = piece * (DEGREE + 1);
            double[] c = body;
            double t2 = t * t;
            // halves summed apart: a shorter chain of dependent operations than Horner's
            return c[k] + c[k + 1] * t + t2 * (c[k + 2] + c[k + 3] * t + t2 * (c[k + 4] + c[k + 5] * t));
        }
    }

    /** Pieces of degree 9 and equal width: the smallest form. */
    static final class UniformNonic extends Column {
        static final int DEGREE = 9;
        private final double scale;

        UniformNonic(SaturationProperty property, ColumnData data) {
            super(property, data);
            scale = scale(low, split, data.bodyPieces());
        }

        @Override
        double body(double x) {
            double u = (x - low) * scale;
            int piece = (int) u;
            double t = u - piece;
            int k = piece * (DEGREE + 1);
            double[] c = body;
            double t2 = t * t;
            double t4 = t2 * t2;
            return c[k]
                    + c[k + 1] * t
                    + t2 * (c[k + 2] + c[k + 3] * t)
                    + t4 * (c[k + 4] + c[k + 5] * t + t2 * (c[k + 6] + c[k + 7] * t) + t4 * (c[k + 8] + c[k + 9] * t));
        }
    }

    /** Four pieces of degree 6 to each factor of two: exponent and top mantissa bits of the double are the index. */
    static final class OctaveSextic extends Column {
        static final int DEGREE = 6;
        private static final int MANTISSA_BITS = 52;
        private static final int PIECE_BITS = 2;
        private static final int SHIFT = MANTISSA_BITS - PIECE_BITS;
        private static final long WITHIN = (1L << SHIFT) - 1;
        private static final long ONE = Double.doubleToRawLongBits(1);
        private final int first;

        OctaveSextic(SaturationProperty property, ColumnData data) {
            super(property, data);
            first = index(low);
        }

        static int index(double x) {
            return (int) (Double.doubleToRawLongBits(x) >>> SHIFT);
        }

        /** Where the piece of an index begins. */
        static double start(int index) {
            return Double.longBitsToDouble((long) index << SHIFT);
        }

        @Override
        double body(double x) {
            long bits = Double.doubleToRawLongBits(x);
            int k = ((int) (bits >>> SHIFT) - first) * (DEGREE + 1);
            double t = Double.longBitsToDouble(((bits & WITHIN) << PIECE_BITS) | ONE) - 1;
            double[] c = body;
            double t2 = t * t;
            return c[k]
                    + c[k + 1] * t
                    + t2 * (c[k + 2] + c[k + 3] * t + t2 * (c[k + 4] + c[k + 5] * t + t2 * c[k + 6]));
        }
    }
}
