package org.satline.charge;

import java.util.Locale;
import org.satline.measurement.Reading;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** Refuses readings that no running system can show, whatever is wrong with it. */
final class Plausibility {
    /** Room for pressure drop between port and sensor and for a clamp's contact error, K; common practice, no source. */
    private static final double ALLOWANCE_K = 2;

    private static final double COVERAGE = 3;

    /** Uncertainty of the saturation line itself, which the reading's own does not hold, K. */
    private static final double CURVE_K = 0.1;

    private Plausibility() {}

    static void check(SaturationCurve curve, SystemReadings readings) {
        readings.suctionPressure()
                .ifPresent(suction -> readings.liquidPressure().ifPresent(liquid -> {
                    if (!(suction.value().pascals() < liquid.value().pascals())) {
                        throw new IllegalArgumentException(
                                "suction pressure " + suction.value() + " is not below liquid pressure "
                                        + liquid.value() + "; the compressor does not run, or the gauges are swapped");
                    }
                }));
        readings.returnWetBulb()
                .ifPresent(wet -> readings.returnDryBulb().ifPresent(dry -> {
                    double excess = wet.value().kelvins() - dry.value().kelvins();
                    if (!(excess <= COVERAGE * wet.budget().minus(dry.budget()).combined() + 0.05)) {
                        throw new IllegalArgumentException("return wet bulb " + wet.value() + " is above dry bulb "
                                + dry.value() + "; check the wick and which sensor is which");
                    }
                }));
        checkCoils(curve, readings);
        checkLines(curve, readings);
        Margins margins = Margins.of(curve, readings);
        margins.superheat()
                .ifPresent(m -> refuseBelow(
                        m,
                        ALLOWANCE_K + COVERAGE * m.standardUncertaintyK(),
                        "suction line",
                        "colder than the dew point",
                        "the clamp, the gauge and which"));
        margins.subcooling().ifPresent(m -> {
            double glide =
                    curve.glide(readings.liquidPressure().orElseThrow().value()).kelvins();
            // no liquid is that warm; a mixture with vapour is, up to the dew point: the system is short of refrigerant
            refuseBelow(
                    m,
                    CURVE_K + glide + m.budget().expanded(),
                    "liquid line",
                    "warmer than the bubble point",
                    "the clamp, the gauge, whether hot gas reaches the liquid port, and which");
        });
    }

    /** Heat flows from warm to cold: neither coil can stand on the wrong side of its air. */
    private static void checkCoils(SaturationCurve curve, SystemReadings readings) {
        readings.liquidPressure()
                .ifPresent(pressure -> readings.condenserAir().ifPresent(air -> {
                    double dewK = curve.dewTemperatureK(pressure.value().pascals());
                    double doubtK = doubtK(
                            pressure.budget().combined()
                                    * Margins.dewSlope(curve, pressure.value().pascals()),
                            air);
                    if (!(dewK >= air.value().kelvins() - doubtK)) {
                        throw new IllegalArgumentException(
                                "condensing temperature " + Temperature.ofKelvins(dewK)
                                        + " is below the air entering the condenser, " + air.value()
                                        + "; no condenser rejects heat to warmer air: check the gauge, the probe and which refrigerant is in the system");
                    }
                }));
        readings.suctionPressure()
                .ifPresent(pressure -> readings.returnDryBulb().ifPresent(air -> {
                    double bubbleK = curve.bubbleTemperatureK(pressure.value().pascals());
                    double doubtK = doubtK(
                            pressure.budget().combined()
                                    * Margins.bubbleSlope(
                                            curve, pressure.value().pascals()),
                            air);
                    if (!(bubbleK <= air.value().kelvins() + doubtK)) {
                        throw new IllegalArgumentException(
                                "evaporating temperature " + Temperature.ofKelvins(bubbleK)
                                        + " is above the return air, " + air.value()
                                        + "; no evaporator cools with a warmer coil: check the gauge, the probe and which refrigerant is in the system");
                    }
                }));
    }

    /** Neither can the liquid line be colder than the air that cools the condenser, nor hot gas colder than what it condenses at. */
    private static void checkLines(SaturationCurve curve, SystemReadings readings) {
        readings.liquidLine()
                .ifPresent(line -> readings.condenserAir().ifPresent(air -> {
                    double doubtK = doubtK(line.standardUncertainty(), air);
                    if (!(line.value().kelvins() >= air.value().kelvins() - doubtK)) {
                        throw new IllegalArgumentException(
                                "liquid line " + line.value()
                                        + " is colder than the air entering the condenser, " + air.value()
                                        + "; no condenser cools below its air: check which clamp is on which line, and the probe in the air");
                    }
                }));
        readings.dischargeLine()
                .ifPresent(line -> readings.liquidPressure().ifPresent(pressure -> {
                    double bubbleK = curve.bubbleTemperatureK(pressure.value().pascals());
                    double doubtK = doubtK(
                            pressure.budget().combined()
                                    * Margins.bubbleSlope(
                                            curve, pressure.value().pascals()),
                            line);
                    if (!(line.value().kelvins() >= bubbleK - doubtK)) {
                        throw new IllegalArgumentException(
                                "discharge line " + line.value()
                                        + " is colder than the condensing temperature " + Temperature.ofKelvins(bubbleK)
                                        + "; a compressor does not cool its gas: check which clamp is on which line, and the gauge");
                    }
                }));
    }

    private static double doubtK(double saturationK, Reading<Temperature> air) {
        return ALLOWANCE_K + COVERAGE * Math.hypot(saturationK, air.standardUncertainty());
    }

    private static void refuseBelow(LineMargin margin, double doubtK, String line, String words, String advice) {
        if (!(margin.value().kelvins() >= -doubtK)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s is %.1f K %s at its pressure (%s), more than [%.1f] K of doubt allow; check %s refrigerant is in the system",
                    line,
                    -margin.value().kelvins(),
                    words,
                    margin.saturation(),
                    doubtK,
                    advice));
        }
    }
}
