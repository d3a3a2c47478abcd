package org.satline.charge;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.satline.equilibrium.Range;
import org.satline.explanation.Step;
import org.satline.measurement.Reading;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * Superheat and subcooling of a set of readings, as far as the readings go. Immutable, thread-safe.
 *
 * <p>Superheat counts from the dew line, subcooling from the bubble line. Uncertainty by first-order propagation through the slope of
 * the saturation line (JCGM 100:2008, 5.1.2 and 5.2.2); the curve's own uncertainty (some 0.1 K) is not in it.
 *
 * @param superheat suction superheat, if pressure and line temperature were read
 * @param subcooling liquid subcooling, if pressure and line temperature were read
 */
public record Margins(Optional<LineMargin> superheat, Optional<LineMargin> subcooling) {
    /** Relative step of the difference quotient for dT/dp; its error is below 1E-6 of the slope. */
    private static final double STEP = 1e-3;

    /** {@inheritDoc} */
    public Margins {
        Parts.required("superheat subcooling", superheat, subcooling);
    }

    /**
     * Computes both.
     *
     * @param curve saturation curve of the refrigerant
     * @param readings what was read
     * @return superheat and subcooling
     * @throws org.satline.quantity.OutOfValidityException if a pressure lies outside the saturation line
     */
    public static Margins of(SaturationCurve curve, SystemReadings readings) {
        Objects.requireNonNull(curve, "curve");
        return new Margins(
                readings.suctionPressure()
                        .flatMap(pressure -> readings.suctionLine()
                                .map(line -> superheat(curve, pressure, line, readings.evaporatorAboveSuctionPort()))),
                readings.liquidPressure()
                        .flatMap(pressure -> readings.liquidLine()
                                .map(line -> subcooling(curve, pressure, line, readings.condenserAboveLiquidPort()))));
    }

    /**
     * The one asked for.
     *
     * @param criterion which
     * @return superheat or subcooling
     */
    public Optional<LineMargin> get(Criterion criterion) {
        return criterion == Criterion.SUPERHEAT ? superheat : subcooling;
    }

    private static LineMargin superheat(
            SaturationCurve curve, Reading<Pressure> pressure, Reading<Temperature> line, PressureDifference drop) {
        double coilPa = coilPressurePa(pressure, drop, "suction");
        double dewK = curve.dewTemperatureK(coilPa);
        double superheatK = line.value().kelvins() - dewK;
        UncertaintyBudget dew =
                pressure.budget().scaled(slope(coilPa, curve.dewPressureRange(), curve::dewTemperatureK));
        return new LineMargin(
                Criterion.SUPERHEAT,
                TemperatureDifference.ofKelvins(superheatK),
                Temperature.ofKelvins(dewK),
                line.budget().minus(dew),
                List.of(
                        saturationStep("dew-point temperature", "T_dew(p_suction)", coilPa, dewK, curve),
                        new Step(
                                "superheat",
                                "SH = T_suction_line - T_dew(p_suction)",
                                String.format(
                                        Locale.ROOT,
                                        "%.2f degC - %.2f degC",
                                        line.value().celsius(),
                                        Temperature.ofKelvins(dewK).celsius()),
                                text(superheatK),
                                "definition; superheat counts from the dew line")));
    }

    private static LineMargin subcooling(
            SaturationCurve curve, Reading<Pressure> pressure, Reading<Temperature> line, PressureDifference drop) {
        double coilPa = coilPressurePa(pressure, drop, "liquid");
        double bubbleK = curve.bubbleTemperatureK(coilPa);
        double subcoolingK = bubbleK - line.value().kelvins();
        UncertaintyBudget bubble =
                pressure.budget().scaled(slope(coilPa, curve.bubblePressureRange(), curve::bubbleTemperatureK));
        return new LineMargin(
                Criterion.SUBCOOLING,
                TemperatureDifference.ofKelvins(subcoolingK),
                Temperature.ofKelvins(bubbleK),
                bubble.minus(line.budget()),
                List.of(
                        saturationStep("bubble-point temperature", "T_bubble(p_liquid)", coilPa, bubbleK, curve),
                        new Step(
                                "subcooling",
                                "SC = T_bubble(p_liquid) - T_liquid_line",
                                String.format(
                                        Locale.ROOT,
                                        "%.2f degC - %.2f degC",
                                        Temperature.ofKelvins(bubbleK).celsius(),
                                        line.value().celsius()),
                                text(subcoolingK),
                                "definition; subcooling counts from the bubble line")));
    }

    private static double coilPressurePa(Reading<Pressure> pressure, PressureDifference drop, String side) {
        double coilPa = pressure.value().pascals() + drop.pascals();
        if (!(coilPa > 0)) {
            throw new IllegalArgumentException("pressure drop " + drop + " takes the " + side + " pressure "
                    + pressure.value() + " to vacuum; check its sign");
        }
        return coilPa;
    }

    /** Slope of the dew line, K/Pa. */
    static double dewSlope(SaturationCurve curve, double pressurePa) {
        return slope(pressurePa, curve.dewPressureRange(), curve::dewTemperatureK);
    }

    /** Slope of the bubble line, K/Pa. */
    static double bubbleSlope(SaturationCurve curve, double pressurePa) {
        return slope(pressurePa, curve.bubblePressureRange(), curve::bubbleTemperatureK);
    }

    /** dT/dp of a saturation line, K/Pa; one-sided where the line ends. */
    static double slope(double pressurePa, Range line, DoubleUnaryOperator temperatureK) {
        double low = Math.max(line.low(), pressurePa * (1 - STEP));
        double high = Math.min(line.high(), pressurePa * (1 + STEP));
        return (temperatureK.applyAsDouble(high) - temperatureK.applyAsDouble(low)) / (high - low);
    }

    private static Step saturationStep(
            String name, String formula, double pressurePa, double temperatureK, SaturationCurve curve) {
        return new Step(
                name,
                formula,
                String.format(Locale.ROOT, "p = %.1f kPa absolute", pressurePa / 1000),
                String.format(
                        Locale.ROOT,
                        "%.2f degC",
                        Temperature.ofKelvins(temperatureK).celsius()),
                curve.source());
    }

    private static String text(double kelvins) {
        return String.format(
                Locale.ROOT,
                "%.2f K (%.2f degF)",
                kelvins,
                TemperatureDifference.ofKelvins(kelvins).fahrenheitDegrees());
    }
}
