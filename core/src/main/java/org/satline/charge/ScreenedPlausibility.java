package org.satline.charge;

import org.jspecify.annotations.Nullable;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.Margins;
import org.satline.measurement.Place;
import org.satline.measurement.UncertaintyBudget;

/**
 * The checks of {@link Margins#checked} in doubles: which reading no running system can show, without a message. Both
 * ask the same questions with the same room for error; a test holds one against the other.
 */
final class ScreenedPlausibility {
    private final ChargeRow row;
    private final @Nullable ScreenedSide suction;
    private final @Nullable ScreenedSide liquid;

    ScreenedPlausibility(ChargeRow row, @Nullable ScreenedSide suction, @Nullable ScreenedSide liquid) {
        this.row = row;
        this.suction = suction;
        this.liquid = liquid;
    }

    /** Before the curve is asked: a compressor lifts the pressure, and a wick cools. */
    static @Nullable Place beforeTheCurve(ChargeRow row) {
        // a comparison with a reading that was not taken is false
        if (row.si(Place.SUCTION_PRESSURE) >= row.si(Place.LIQUID_PRESSURE)) {
            return Place.SUCTION_PRESSURE;
        }
        if (row.isRead(Place.RETURN_WET_BULB) && row.isRead(Place.RETURN_DRY_BULB)) {
            double u = Math.hypot(row.uncertainty(Place.RETURN_WET_BULB), row.uncertainty(Place.RETURN_DRY_BULB));
            double excess = row.si(Place.RETURN_WET_BULB) - row.si(Place.RETURN_DRY_BULB);
            return excess > Margins.BEYOND * u + 0.05 ? Place.RETURN_WET_BULB : null;
        }
        return null;
    }

    /** The first reading that cannot be. */
    @Nullable
    Place impossible() {
        if (liquid != null && isColder(liquid.dewK, liquid.dewDoubtK, Place.OUTDOOR_AIR)) {
            return Place.LIQUID_PRESSURE;
        }
        if (suction != null && isWarmer(suction.bubbleK, suction.bubbleDoubtK, Place.RETURN_DRY_BULB)) {
            return Place.SUCTION_PRESSURE;
        }
        if (row.isRead(Place.LIQUID_LINE) && liquidLineImpossible()) {
            return Place.LIQUID_LINE;
        }
        if (liquid != null && isWarmer(liquid.bubbleK, liquid.bubbleDoubtK, Place.DISCHARGE_LINE)) {
            return Place.DISCHARGE_LINE;
        }
        if (suctionLineTooWarm()) {
            return Place.SUCTION_LINE;
        }
        if (suction != null && suction.marginK < -Margins.ALLOWANCE_K - Margins.BEYOND * suction.marginDoubtK) {
            return Place.SUCTION_LINE;
        }
        return liquid != null
                        && liquid.marginK
                                < -(Margins.CURVE_K
                                        + (liquid.dewK - liquid.bubbleK)
                                        + UncertaintyBudget.USUAL_COVERAGE_FACTOR * liquid.marginDoubtK)
                ? Place.LIQUID_LINE
                : null;
    }

    private boolean liquidLineImpossible() {
        double line = row.si(Place.LIQUID_LINE);
        return isColder(line, row.uncertainty(Place.LIQUID_LINE), Place.OUTDOOR_AIR)
                || (suction != null && isWarmer(suction.bubbleK, suction.bubbleDoubtK, Place.LIQUID_LINE));
    }

    private boolean suctionLineTooWarm() {
        if (!row.isRead(Place.SUCTION_LINE) || !row.isRead(Place.RETURN_DRY_BULB) || !row.isRead(Place.OUTDOOR_AIR)) {
            return false;
        }
        Place warmer =
                row.si(Place.RETURN_DRY_BULB) > row.si(Place.OUTDOOR_AIR) ? Place.RETURN_DRY_BULB : Place.OUTDOOR_AIR;
        return isWarmer(row.si(Place.SUCTION_LINE), row.uncertainty(Place.SUCTION_LINE), warmer);
    }

    /** Whether the maker's target is more than saturation and air allow. */
    boolean isTargetImpossible() {
        boolean subcooled = row.metering().judgedBy() == Criterion.SUBCOOLING;
        ScreenedSide side = subcooled ? liquid : suction;
        Place air = subcooled ? Place.OUTDOOR_AIR : Place.RETURN_DRY_BULB;
        if (side == null || !row.isRead(air)) {
            return false;
        }
        double most = subcooled ? side.bubbleK - row.si(air) : row.si(air) - side.dewK;
        double u = subcooled ? side.bubbleDoubtK : side.dewDoubtK;
        return row.targetK() > most + doubtK(u, air);
    }

    private boolean isColder(double kelvins, double uK, Place than) {
        return row.isRead(than) && kelvins < row.si(than) - doubtK(uK, than);
    }

    private boolean isWarmer(double kelvins, double uK, Place than) {
        return row.isRead(than) && kelvins > row.si(than) + doubtK(uK, than);
    }

    private double doubtK(double uK, Place other) {
        return Margins.ALLOWANCE_K + Margins.BEYOND * Math.hypot(uK, row.uncertainty(other));
    }
}
