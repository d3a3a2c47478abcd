package org.satline.charge;

import org.satline.charge.margin.Margins;
import org.satline.measurement.Place;
import org.satline.measurement.StandardUncertainty;
import org.satline.saturation.SaturationLines;

/**
 * Saturation at a pressure that was read, with the standard uncertainties that the gauge brings, in doubles. One for each side of a row.
 */
final class ScreenedSide {
    final double bubbleK;
    final double dewK;
    final double bubbleDoubtK;
    final double dewDoubtK;
    /** Superheat of the suction side, subcooling of the liquid side, K; NaN where the line was not read. */
    final double marginK;
    /** Its standard uncertainty, K. */
    final double marginDoubtK;

    private ScreenedSide(SaturationLines curve, ChargeRow row, Place pressure, Place line, double coilPa) {
        double pa = row.si(pressure);
        double doubtPa = row.uncertainty(pressure);
        bubbleK = curve.bubbleTemperatureK(pa);
        dewK = curve.dewTemperatureK(pa);
        bubbleDoubtK = doubtPa * Margins.bubbleSlope(curve, pa);
        dewDoubtK = doubtPa * Margins.dewSlope(curve, pa);
        if (!row.isRead(line)) {
            marginK = Double.NaN;
            marginDoubtK = Double.NaN;
        } else if (pressure == Place.SUCTION_PRESSURE) {
            marginK = row.si(line) - curve.dewTemperatureK(coilPa);
            marginDoubtK = doubtK(row.uncertainty(line), doubtPa * Margins.dewSlope(curve, coilPa), curve);
        } else {
            marginK = curve.bubbleTemperatureK(coilPa) - row.si(line);
            marginDoubtK = doubtK(row.uncertainty(line), doubtPa * Margins.bubbleSlope(curve, coilPa), curve);
        }
    }

    /** What the lines themselves may miss counts too, where they state it. */
    private static double doubtK(double lineK, double gaugeK, SaturationLines curve) {
        double stated = curve.limitOfErrorK();
        double readings = Math.hypot(lineK, gaugeK);
        return stated > 0 ? Math.hypot(readings, StandardUncertainty.ofLimits(stated)) : readings;
    }

    static ScreenedSide suction(SaturationLines curve, ChargeRow row) {
        return new ScreenedSide(curve, row, Place.SUCTION_PRESSURE, Place.SUCTION_LINE, coilPa(row, true));
    }

    static ScreenedSide liquid(SaturationLines curve, ChargeRow row) {
        return new ScreenedSide(curve, row, Place.LIQUID_PRESSURE, Place.LIQUID_LINE, coilPa(row, false));
    }

    /** Whether port and coil stand within both lines. */
    static boolean isOnCurve(SaturationLines curve, ChargeRow row, boolean suction) {
        double pa = row.si(suction ? Place.SUCTION_PRESSURE : Place.LIQUID_PRESSURE);
        double coilPa = coilPa(row, suction);
        double low = Math.max(
                curve.bubblePressureRange().low(), curve.dewPressureRange().low());
        double high = Math.min(
                curve.bubblePressureRange().high(), curve.dewPressureRange().high());
        return pa >= low && coilPa <= high;
    }

    private static double coilPa(ChargeRow row, boolean suction) {
        double pa = row.si(suction ? Place.SUCTION_PRESSURE : Place.LIQUID_PRESSURE);
        double drop = row.si(suction ? Place.SUCTION_DROP : Place.LIQUID_DROP);
        return Double.isNaN(drop) ? pa : pa + drop;
    }

    boolean hasMargin() {
        return !Double.isNaN(marginK);
    }
}
