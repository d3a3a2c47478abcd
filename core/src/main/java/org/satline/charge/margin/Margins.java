package org.satline.charge.margin;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.satline.equilibrium.Range;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationLines;

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
    /** Room for pressure drop between port and sensor and for a clamp's contact error, K; common practice, no source. */
    public static final double ALLOWANCE_K = 2;
    /** Standard uncertainties beyond which a reading counts as impossible; our choice. */
    public static final double BEYOND = 3;
    /** Uncertainty of the saturation line itself, which the reading's own does not hold, K. */
    public static final double CURVE_K = 0.1;

    /** Relative step of the difference quotient for dT/dp; its error is below 1E-6 of the slope. */
    private static final double STEP = 1e-3;

    private static final String SOURCE_SUPERHEAT = "definition; superheat counts from the dew line";
    private static final String SOURCE_SUBCOOLING = "definition; subcooling counts from the bubble line";

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
        Parts.required("readings", readings);
        Objects.requireNonNull(curve, "curve");
        return new Margins(
                readings.pressure(Place.SUCTION_PRESSURE)
                        .flatMap(pressure -> readings.temperature(Place.SUCTION_LINE)
                                .map(line -> superheat(curve, pressure, line, readings.drop(Place.SUCTION_DROP)))),
                readings.pressure(Place.LIQUID_PRESSURE)
                        .flatMap(pressure -> readings.temperature(Place.LIQUID_LINE)
                                .map(line -> subcooling(curve, pressure, line, readings.drop(Place.LIQUID_DROP)))));
    }

    /**
     * Computes what these readings give, and refuses readings that no running system can show.
     *
     * @param curve saturation curve of the refrigerant in the system
     * @param readings what was read
     * @param metering what meters the refrigerant
     * @param target the maker's target of the quantity that it is judged by, where there is one
     * @return superheat and subcooling
     * @throws ImplausibleReadingException if the readings contradict physics
     * @throws org.satline.quantity.OutOfValidityException if a pressure is outside the saturation curve
     */
    public static Margins checked(
            SaturationCurve curve,
            SystemReadings readings,
            MeteringDevice metering,
            Optional<TemperatureDifference> target) {
        Parts.required("curve readings metering target", curve, readings, metering, target);
        return Plausibility.checked(curve, readings, metering, target);
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
                        saturationStep("dewPoint", "T_dew(p)", coilPa, dewK, curve),
                        new Step(
                                "superheat",
                                "SH = T_line - T_dew",
                                List.of(
                                        Figure.of("T_line", line.value()),
                                        Figure.of("T_dew", Temperature.ofKelvins(dewK))),
                                Figure.of("SH", TemperatureDifference.ofKelvins(superheatK)),
                                SOURCE_SUPERHEAT)));
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
                        saturationStep("bubblePoint", "T_bubble(p)", coilPa, bubbleK, curve),
                        new Step(
                                "subcooling",
                                "SC = T_bubble - T_line",
                                List.of(
                                        Figure.of("T_bubble", Temperature.ofKelvins(bubbleK)),
                                        Figure.of("T_line", line.value())),
                                Figure.of("SC", TemperatureDifference.ofKelvins(subcoolingK)),
                                SOURCE_SUBCOOLING)));
    }

    private static double coilPressurePa(Reading<Pressure> pressure, PressureDifference drop, String side) {
        double coilPa = pressure.value().pascals() + drop.pascals();
        if (!(coilPa > 0)) {
            throw new IllegalArgumentException("pressure drop " + drop + " takes the " + side + " pressure "
                    + pressure.value() + " to vacuum; check its sign");
        }
        return coilPa;
    }

    /**
     * Slope of the dew line.
     *
     * @param curve of the refrigerant
     * @param pressurePa absolute pressure, Pa; within the line
     * @return K/Pa
     */
    public static double dewSlope(SaturationLines curve, double pressurePa) {
        return slope(pressurePa, curve.dewPressureRange(), curve::dewTemperatureK);
    }

    /**
     * Slope of the bubble line.
     *
     * @param curve of the refrigerant
     * @param pressurePa absolute pressure, Pa; within the line
     * @return K/Pa
     */
    public static double bubbleSlope(SaturationLines curve, double pressurePa) {
        return slope(pressurePa, curve.bubblePressureRange(), curve::bubbleTemperatureK);
    }

    /** dT/dp of a saturation line, K/Pa; one-sided where the line ends. */
    static double slope(double pressurePa, Range line, DoubleUnaryOperator temperatureK) {
        double low = Math.max(line.low(), pressurePa * (1 - STEP));
        double high = Math.min(line.high(), pressurePa * (1 + STEP));
        return (temperatureK.applyAsDouble(high) - temperatureK.applyAsDouble(low)) / (high - low);
    }

    private static Step saturationStep(
            String key, String formula, double pressurePa, double temperatureK, SaturationCurve curve) {
        return new Step(
                key,
                formula,
                List.of(
                        Figure.of("refrigerant", curve.refrigerant().designation()),
                        Figure.of("p", Pressure.ofPascals(pressurePa))),
                Figure.of("T", Temperature.ofKelvins(temperatureK)),
                curve.source());
    }
}
