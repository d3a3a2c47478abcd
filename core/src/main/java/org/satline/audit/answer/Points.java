package org.satline.audit.answer;

import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;

/**
 * Points of the saturation lines of one fluid. The last some thousand are kept: an answer and its tolerance need the same ones, and so do
 * the rows of a table that ask several quantities at one temperature. Thread-safe.
 */
final class Points {
    private static final int KEPT = 4096;

    private enum Asked {
        BUBBLE_AT_TEMPERATURE,
        BUBBLE_AT_PRESSURE,
        DEW_AT_TEMPERATURE,
        DEW_AT_PRESSURE
    }

    private record Kept(Asked asked, double at, BoundaryPoint point) {}

    private final FluidModel model;
    /** Records are whole wherever they are seen, so threads may write over each other. */
    private final @Nullable Kept[] kept;

    private Points(FluidModel model, int size) {
        this.model = model;
        this.kept = new Kept[size];
    }

    /** Those of a fluid that is asked often. */
    static Points kept(FluidModel model) {
        return new Points(model, KEPT);
    }

    /** Those of a fluid that is asked now and then; none is kept. */
    static Points solved(FluidModel model) {
        return new Points(model, 0);
    }

    FluidModel model() {
        return model;
    }

    BoundaryPoint bubbleAtTemperature(double kelvins) {
        return point(Asked.BUBBLE_AT_TEMPERATURE, kelvins, model::bubbleAtTemperature);
    }

    BoundaryPoint bubbleAtPressure(double pascals) {
        return point(Asked.BUBBLE_AT_PRESSURE, pascals, model::bubbleAtPressure);
    }

    BoundaryPoint dewAtTemperature(double kelvins) {
        return point(Asked.DEW_AT_TEMPERATURE, kelvins, model::dewAtTemperature);
    }

    BoundaryPoint dewAtPressure(double pascals) {
        return point(Asked.DEW_AT_PRESSURE, pascals, model::dewAtPressure);
    }

    private BoundaryPoint point(Asked asked, double at, DoubleFunction<BoundaryPoint> solve) {
        if (kept.length == 0) {
            return solve.apply(at);
        }
        // 2^64 over the golden ratio puts neighbours far apart
        long bits = (Double.doubleToLongBits(at) + asked.name().hashCode()) * 0x9e3779b97f4a7c15L;
        int place = (int) (bits >>> 52);
        Kept there = kept[place];
        if (there != null && there.asked == asked && there.at == at) {
            return there.point;
        }
        BoundaryPoint point = solve.apply(at);
        kept[place] = new Kept(asked, at, point);
        return point;
    }
}
