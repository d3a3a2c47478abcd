package org.satline.tables;

import org.satline.saturation.SaturationProperty;

/**
 * One tabulated property: piecewise polynomials whose piece is found without a search. The body covers [low, split); the top covers [split,
 * high] in {@code theta = sqrt(1 - x/end)}, which straightens what bends towards the end of the line. Immutable.
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
            case OctaveQuartic.DEGREE -> new OctaveQuartic(property, data);
            case OctaveSextic.DEGREE -> new OctaveSextic(property, data);
            default -> new UniformNonic(property, data);
        };
    }

    /** Pressures are asked most: the shortest polynomials, the most pieces. */
    static int bodyDegree(SaturationProperty property) {
        if (property.askedByPressure()) {
            return OctaveSextic.DEGREE;
        }
        return isPressure(property) ? OctaveQuartic.DEGREE : UniformNonic.DEGREE;
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

    /**
     * Pieces that divide each factor of two evenly: exponent and top mantissa bits of the double are the index, the bits below are the
     * position. Both come out by a few operations on whole numbers, without rounding.
     */
    abstract static class Octaves extends Column {
        static final int MANTISSA_BITS = 52;
        static final long ONE = Double.doubleToRawLongBits(1);
        static final long MANTISSA = (1L << MANTISSA_BITS) - 1;

        Octaves(SaturationProperty property, ColumnData data) {
            super(property, data);
        }

        /** Each factor of two has 2 to this many pieces. */
        static int pieceBits(SaturationProperty property) {
            return property.askedByPressure() ? OctaveSextic.PIECE_BITS : OctaveQuartic.PIECE_BITS;
        }

        static int index(double x, int pieceBits) {
            return (int) (Double.doubleToRawLongBits(x) >>> (MANTISSA_BITS - pieceBits));
        }

        /** Where the piece of an index begins. */
        static double start(int index, int pieceBits) {
            return Double.longBitsToDouble((long) index << (MANTISSA_BITS - pieceBits));
        }

        /** How far x lies within its piece, from 0 to 1. */
        static double within(long bitsOfX, int pieceBits) {
            return Double.longBitsToDouble(((bitsOfX << pieceBits) & MANTISSA) | ONE) - 1;
        }
    }

    /** Pieces of degree 4, 128 to each factor of two: the fastest form. */
    static final class OctaveQuartic extends Octaves {
        static final int DEGREE = 4;
        static final int PIECE_BITS = 7;
        private final int first;

        OctaveQuartic(SaturationProperty property, ColumnData data) {
            super(property, data);
            first = index(low, PIECE_BITS);
        }

        @Override
        double body(double x) {
            long bits = Double.doubleToRawLongBits(x);
            int k = ((int) (bits >>> (MANTISSA_BITS - PIECE_BITS)) - first) * (DEGREE + 1);
            double t = within(bits, PIECE_BITS);
            double[] c = body;
            double t2 = t * t;
            // halves summed apart: a shorter chain of dependent operations than Horner's
            return c[k] + c[k + 1] * t + t2 * (c[k + 2] + c[k + 3] * t + t2 * c[k + 4]);
        }
    }

    /** Pieces of degree 6, four to each factor of two. */
    static final class OctaveSextic extends Octaves {
        static final int DEGREE = 6;
        static final int PIECE_BITS = 2;
        private final int first;

        OctaveSextic(SaturationProperty property, ColumnData data) {
            super(property, data);
            first = index(low, PIECE_BITS);
        }

        @Override
        double body(double x) {
            long bits = Double.doubleToRawLongBits(x);
            int k = ((int) (bits >>> (MANTISSA_BITS - PIECE_BITS)) - first) * (DEGREE + 1);
            double t = within(bits, PIECE_BITS);
            double[] c = body;
            double t2 = t * t;
            return c[k]
                    + c[k + 1] * t
                    + t2 * (c[k + 2] + c[k + 3] * t + t2 * (c[k + 4] + c[k + 5] * t + t2 * c[k + 6]));
        }
    }
}
