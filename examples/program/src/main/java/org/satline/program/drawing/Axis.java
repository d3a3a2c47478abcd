package org.satline.program.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * An axis of a chart: a range, even or by decades, and its ticks. Immutable.
 *
 * @param title quantity and unit
 * @param low least value
 * @param high largest value
 * @param scale even or by decades
 * @param shift how far the printed values lie below those of the scale; 0 for most axes
 */
public record Axis(String title, double low, double high, Scale scale, double shift) {
    /** Beyond this ratio only decades are labelled. */
    private static final double MANY_DECADES = 1e4;

    private static final int FEWEST_TICKS = 3;
    private static final double ROUNDING = 1e-9;

    /** Spacing of values along an axis. */
    public enum Scale {
        /** Equal differences are equally long. */
        EVEN,
        /** Equal ratios are equally long. */
        LOGARITHMIC
    }

    /** {@inheritDoc} */
    public Axis {
        if (!(Double.isFinite(low) && Double.isFinite(high) && low < high)) {
            throw new IllegalArgumentException("axis from " + low + " to " + high + " has no length");
        }
        if (scale == Scale.LOGARITHMIC && !(low > 0)) {
            throw new IllegalArgumentException("logarithmic axis begins at " + low + ", which is not above zero");
        }
    }

    /**
     * An axis that prints the values of its scale.
     *
     * @param title quantity and unit
     * @param low least value
     * @param high largest value
     * @param scale even or by decades
     */
    public Axis(String title, double low, double high, Scale scale) {
        this(title, low, high, scale, 0);
    }

    /**
     * The same scale, labelled with values that lie below its own by a constant, as gauge pressures do.
     *
     * @param name quantity and unit of the labels
     * @param below how far below
     * @return the axis
     */
    public Axis shown(String name, double below) {
        return new Axis(name, low, high, scale, below);
    }

    /** Where a value lies between the ends, 0 to 1; outside of that beyond them. */
    double share(double value) {
        return scale == Scale.EVEN ? (value - low) / (high - low) : Math.log(value / low) / Math.log(high / low);
    }

    /**
     * A labelled value.
     *
     * @param value the value
     * @param text as printed
     */
    record Tick(double value, String text) {}

    /** Ticks, rising. */
    List<Tick> ticks(double length, double spacing) {
        int most = Math.max(2, (int) (length / spacing));
        if (shift != 0) {
            return shifted();
        }
        if (scale == Scale.EVEN) {
            return even(most);
        }
        if (high / low > MANY_DECADES) {
            return decades(most);
        }
        List<Tick> ticks = new ArrayList<>();
        for (double value : LogTicks.between(low, high)) {
            ticks.add(new Tick(value, plain(BigDecimal.valueOf(value))));
        }
        return ticks.size() >= FEWEST_TICKS ? ticks : even(most);
    }

    /** Round labels where the scale itself has none. */
    private List<Tick> shifted() {
        List<Tick> ticks = new ArrayList<>();
        if (low < shift && shift < high) {
            ticks.add(new Tick(shift, "0"));
        }
        double least = Math.max(low - shift, 0.2 * shift);
        for (double value : LogTicks.between(least, high - shift)) {
            ticks.add(new Tick(value + shift, plain(BigDecimal.valueOf(value))));
        }
        return ticks;
    }

    private List<Tick> even(int most) {
        double raw = (high - low) / most;
        int exponent = (int) Math.floor(Math.log10(raw));
        BigDecimal step = BigDecimal.ONE.scaleByPowerOfTen(exponent);
        for (String factor : List.of("1", "2", "2.5", "5", "10")) {
            step = new BigDecimal(factor).scaleByPowerOfTen(exponent);
            if (step.doubleValue() >= raw * (1 - ROUNDING)) {
                break;
            }
        }
        List<Tick> ticks = new ArrayList<>();
        long first = (long) Math.ceil(low / step.doubleValue() - ROUNDING);
        int decimals = Math.max(0, step.stripTrailingZeros().scale());
        for (long i = first; i * step.doubleValue() <= high + ROUNDING * (high - low); i++) {
            BigDecimal value = step.multiply(BigDecimal.valueOf(i));
            ticks.add(new Tick(
                    value.doubleValue(),
                    value.setScale(decimals, RoundingMode.HALF_EVEN).toPlainString()));
        }
        return ticks;
    }

    private List<Tick> decades(int most) {
        int first = (int) Math.ceil(Math.log10(low) - ROUNDING);
        int last = (int) Math.floor(Math.log10(high) + ROUNDING);
        int step = Math.max(1, (int) Math.ceil((last - first + 1.0) / most));
        List<Tick> ticks = new ArrayList<>();
        for (int exponent = first; exponent <= last; exponent += step) {
            ticks.add(new Tick(Math.pow(10, exponent), "1E" + exponent));
        }
        return ticks;
    }

    private static String plain(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }
}
