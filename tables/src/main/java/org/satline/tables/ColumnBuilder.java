package org.satline.tables;

import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.satline.saturation.SaturationProperty;
import org.satline.tables.Column.Octaves;

/**
 * Makes one column: the fewest pieces that keep a third of every bound at the points where the interpolation error is largest. Where no
 * number of pieces does near the end of the line, the column stops earlier.
 */
final class ColumnBuilder {
    /** Part of the bound that the generator aims at. */
    private static final double MARGIN = 1.0 / 3;
    /** Temperatures of the table start here, except for refrigerants whose line ends below {@link #COLD_END}. */
    static final double COLDEST = 150;

    private static final double COLD_END = 250;
    /**
     * Where the body may end, as a part of the end of the line, the farthest that keeps the bounds: it is faster than the top and has no
     * square root.
     */
    private static final double[] PRESSURE_COLUMN_SPLITS = {0.98, 0.96, 0.93, 0.9};

    private static final double[] OTHER_COLUMN_SPLITS = {0.9};
    private static final double[] INVERSE_SPLITS = {0.85, 0.75, 0.6};
    private static final int MOST_RETREATS = 8;
    private static final int MOST_COLD_RETREATS = 8;
    /** A bend at the start of the line may lie this many pieces of the pressure columns away from it. */
    private static final int MOST_FINE_RETREATS = 16;

    private static final double COLD_RETREAT = 0.01;
    private static final int[] BODY_PIECES = {4, 6, 8, 10, 12, 16, 20, 24, 32, 40, 48, 64, 80, 96, 128, 160, 192};
    private static final int[] TOP_PIECES = {1, 2, 3, 4, 6, 8, 12, 16};

    private final SaturationProperty property;
    private final LineSampler line;
    private final double endTemperature;
    private final double coldest;
    private boolean kept = true;

    ColumnBuilder(SaturationProperty property, LineSampler line) {
        this.property = property;
        this.line = line;
        this.endTemperature = line.model().twoPhaseEnd().temperatureK();
        double start = line.temperatures().low();
        this.coldest = endTemperature < COLD_END ? start : Math.max(start, COLDEST);
    }

    Column build() {
        LineFacts facts = line.facts();
        boolean byPressure = property.askedByPressure();
        double high =
                byPressure ? facts.pressures().high() : facts.temperatures().high();
        double located = byPressure ? facts.end().pressurePa() : facts.end().temperatureK();
        // theta must not reach 0, where heat capacities are divided by its square
        double end = Math.max(located, high * (1 + 1e-7));
        double low = byPressure ? lowestPressure() : coldest;
        ColumnData body = body(low, end);
        double split = body.split();
        double top = high;
        for (int i = 0; i < MOST_RETREATS && top > split; i++) {
            ColumnData whole = top(body, split, top, end);
            if (whole != null) {
                return Column.of(property, whole);
            }
            top = end - 3 * (end - top);
        }
        kept = false;
        return Column.of(property, topOf(body, split, high, end, TOP_PIECES[TOP_PIECES.length - 1]));
    }

    private ColumnData body(double low, double end) {
        ColumnData body = null;
        for (double part : splits()) {
            kept = true;
            body = body(low, part, end);
            if (kept) {
                return body;
            }
        }
        return Objects.requireNonNull(body, "at least one split was tried");
    }

    private ColumnData body(double low, double part, double end) {
        if (Column.bodyDegree(property) == Column.UniformNonic.DEGREE) {
            return uniformWithRetreat(low, Math.max(part * end, low + 0.02 * (end - low)));
        }
        int bits = Octaves.pieceBits(property);
        double split = Octaves.start(Octaves.index(part * end, bits), bits);
        if (!(split > low)) {
            throw new IllegalStateException(property.words() + ": the line is too short for a table");
        }
        return octaves(low, split);
    }

    private double[] splits() {
        if (property.askedByPressure()) {
            return INVERSE_SPLITS;
        }
        return Column.bodyDegree(property) == Column.UniformNonic.DEGREE ? OTHER_COLUMN_SPLITS : PRESSURE_COLUMN_SPLITS;
    }

    /** Whether every bound is kept at the points tried. */
    boolean kept() {
        return kept;
    }

    private double lowestPressure() {
        LineFacts facts = line.facts();
        if (coldest <= facts.temperatures().low()) {
            return facts.pressures().low();
        }
        SaturationProperty pressure =
                property.onBubbleLine() ? SaturationProperty.BUBBLE_PRESSURE : SaturationProperty.DEW_PRESSURE;
        return Math.max(facts.pressures().low(), line.value(pressure, coldest));
    }

    private boolean keeps(Column column, double x, boolean body) {
        double exact = line.value(property, x);
        double error = Math.abs((body ? column.body(x) : column.top(x)) - exact);
        double temperature = property.askedByPressure() ? exact : x;
        double bound = Region.of(temperature / endTemperature).bound(property) * MARGIN;
        return error <= (Region.relative(property) ? bound * Math.abs(exact) : bound);
    }

    /** A line that begins where its liquid stops being stable bends there: the table begins a little warmer. */
    private ColumnData uniformWithRetreat(double low, double split) {
        double start = low;
        for (int i = 0; i < MOST_COLD_RETREATS; i++) {
            kept = true;
            ColumnData body = uniform(start, split);
            if (kept) {
                return body;
            }
            start += COLD_RETREAT * (split - low);
        }
        kept = true;
        return uniform(low, split);
    }

    private ColumnData uniform(double low, double split) {
        int degree = Column.bodyDegree(property);
        ColumnData last = null;
        for (int pieces : BODY_PIECES) {
            double scale = Column.scale(low, split, pieces);
            double[] body = new double[pieces * (degree + 1)];
            for (int i = 0; i < pieces; i++) {
                int piece = i;
                DoubleUnaryOperator f = t -> line.value(property, clamp(low + (piece + t) / scale, low, split));
                double[] c = PieceFit.fit(f, 0, 1, degree, degree + 1);
                System.arraycopy(c, 0, body, i * (degree + 1), degree + 1);
            }
            last = bodyOnly(low, split, pieces, TableWriter.rounded(body, degree + 1));
            if (uniformKeeps(Column.of(property, last), scale, pieces, degree)) {
                return last;
            }
        }
        kept = false;
        return Objects.requireNonNull(last, "at least one number of pieces was tried");
    }

    private boolean uniformKeeps(Column column, double scale, int pieces, int degree) {
        for (int i = 0; i < pieces; i++) {
            for (int j = 0; j < degree; j++) {
                double x = column.low + (i + PieceFit.midpoint(j, degree, 0, 1)) / scale;
                if (!keeps(column, x, true)) {
                    return false;
                }
            }
        }
        return true;
    }

    private ColumnData octaves(double low, double split) {
        int bits = Octaves.pieceBits(property);
        int highest = Column.bodyDegree(property);
        int first = Octaves.index(low, bits);
        int pieces = Octaves.index(split, bits) - first;
        int length = highest + 1;
        double[] body = new double[pieces * length];
        for (int i = 0; i < pieces; i++) {
            double start = Octaves.start(first + i, bits);
            double width = Octaves.start(first + i + 1, bits) - start;
            double from = i == 0 ? (low - start) / width : 0;
            DoubleUnaryOperator f = t -> line.value(property, clamp(start + t * width, low, split));
            // the first piece may be a sliver: a high degree there would only magnify rounding
            int degree = 1 - from > 0.3 ? highest : 1 - from > 0.03 ? 4 : 2;
            double[] c = PieceFit.fit(f, from, 1, degree, length);
            System.arraycopy(c, 0, body, i * length, length);
        }
        ColumnData data = bodyOnly(low, split, pieces, TableWriter.rounded(body, length));
        Column column = Column.of(property, data);
        int mostRetreats = property.askedByPressure() ? MOST_COLD_RETREATS : MOST_FINE_RETREATS;
        for (int i = 0; i < pieces; i++) {
            double start = Math.max(low, Octaves.start(first + i, bits));
            double end = Octaves.start(first + i + 1, bits);
            boolean piece = true;
            for (int j = 0; j < highest; j++) {
                piece &= keeps(column, PieceFit.midpoint(j, highest, start, end), true);
            }
            if (!piece && i <= mostRetreats) {
                return octaves(end, split);
            }
            kept &= piece;
        }
        return data;
    }

    private static ColumnData bodyOnly(double low, double split, int pieces, double[] body) {
        return new ColumnData(
                low, split, split, split * (1 + 1e-7), pieces, 1, body, new double[Column.TOP_DEGREE + 1]);
    }

    private @Nullable ColumnData top(ColumnData body, double split, double high, double end) {
        for (int pieces : TOP_PIECES) {
            ColumnData whole = topOf(body, split, high, end, pieces);
            if (topKeeps(Column.of(property, whole), end)) {
                return whole;
            }
        }
        return null;
    }

    private ColumnData topOf(ColumnData body, double split, double high, double end, int pieces) {
        int length = Column.TOP_DEGREE + 1;
        double[] top = new double[pieces * length];
        double from = Column.theta(high, end);
        double scale = Column.scale(from, Column.theta(split, end), pieces);
        for (int i = 0; i < pieces; i++) {
            int piece = i;
            DoubleUnaryOperator f = t -> {
                double theta = from + (piece + t) / scale;
                double value = line.value(property, clamp(end * (1 - theta * theta), split, high));
                return Column.divergent(property) ? value * theta * theta : value;
            };
            double[] c = PieceFit.fit(f, 0, 1, Column.TOP_DEGREE, length);
            System.arraycopy(c, 0, top, i * length, length);
        }
        return new ColumnData(
                body.low(), split, high, end, body.bodyPieces(), pieces, body.body(), TableWriter.rounded(top, length));
    }

    private boolean topKeeps(Column column, double end) {
        double from = Column.theta(column.high, end);
        double scale = Column.scale(from, Column.theta(column.split, end), column.data.topPieces());
        for (int i = 0; i < column.data.topPieces(); i++) {
            for (int j = 0; j < Column.TOP_DEGREE; j++) {
                double theta = from + (i + PieceFit.midpoint(j, Column.TOP_DEGREE, 0, 1)) / scale;
                if (!keeps(column, clamp(end * (1 - theta * theta), column.split, column.high), false)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static double clamp(double x, double low, double high) {
        return Math.max(low, Math.min(high, x));
    }
}
