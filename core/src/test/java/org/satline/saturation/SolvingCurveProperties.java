package org.satline.saturation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/** What holds on every saturation curve, in the range where it holds: below 0.95 of the end of the two-phase line unless said otherwise. */
class SolvingCurveProperties {
    private static final double BELOW_THE_END = 0.95;

    @Provide
    Arbitrary<String> refrigerants() {
        return CurveSamples.refrigerants();
    }

    @Provide
    Arbitrary<String> substances() {
        return CurveSamples.substances();
    }

    @Provide
    Arbitrary<Double> fractions() {
        return CurveSamples.fractions();
    }

    private static double temperature(String name, double fraction) {
        return CurveSamples.temperature(name, fraction, BELOW_THE_END);
    }

    @Property(tries = 500)
    void pressureRisesWithTemperature(
            @ForAll("refrigerants") String name, @ForAll("fractions") double a, @ForAll("fractions") double b) {
        Assume.that(a < b);
        SaturationCurve curve = CurveSamples.curve(name);
        double cold = temperature(name, a);
        double warm = temperature(name, b);
        assertThat(curve.bubblePressurePa(warm)).isGreaterThan(curve.bubblePressurePa(cold));
        assertThat(curve.dewPressurePa(warm)).isGreaterThan(curve.dewPressurePa(cold));
    }

    @Property(tries = 500)
    void dewPressureIsNotAboveBubblePressureAndLiquidIsDenserThanVapour(
            @ForAll("refrigerants") String name, @ForAll("fractions") double fraction) {
        SaturationCurve curve = CurveSamples.curve(name);
        double t = temperature(name, fraction);
        // round-off where both are one
        assertThat(curve.dewPressurePa(t)).isLessThanOrEqualTo(curve.bubblePressurePa(t) * (1 + 1e-12));
        assertThat(curve.bubbleLiquidDensity(t)).isGreaterThan(curve.dewVapourDensity(t));
        assertThat(curve.dewVapourEnthalpy(t)).isGreaterThan(curve.bubbleLiquidEnthalpy(t));
        assertThat(curve.dewVapourEntropy(t)).isGreaterThan(curve.bubbleLiquidEntropy(t));
    }

    @Property(tries = 500)
    void temperatureToPressureAndBackReturns(
            @ForAll("refrigerants") String name, @ForAll("fractions") double fraction) {
        SaturationCurve curve = CurveSamples.curve(name);
        double t = temperature(name, fraction);
        assertThat(curve.bubbleTemperatureK(curve.bubblePressurePa(t))).isCloseTo(t, within(1e-9));
        assertThat(curve.dewTemperatureK(curve.dewPressurePa(t))).isCloseTo(t, within(1e-9));
    }

    @Property(tries = 300)
    void pureSubstanceKeepsTheEquationOfClausiusAndClapeyron(
            @ForAll("substances") String name, @ForAll("fractions") double fraction) {
        SaturationCurve curve = CurveSamples.curve(name);
        FluidModel model = CurveSamples.model(name);
        double step = 2e-4;
        double low = model.minTemperatureK();
        double high = BELOW_THE_END * CurveSamples.endTemperature(name);
        double t = low / (1 - 2 * step) + fraction * (high - low / (1 - 2 * step));
        // d ln p/d ln T from four points, error of order step^4 (about 1e-12), round-off about 1e-11
        double slope = (8 * logDifference(curve, t, step) - logDifference(curve, t, 2 * step)) / (12 * step);
        double latent = curve.dewVapourEnthalpy(t) - curve.bubbleLiquidEnthalpy(t);
        double volume = 1 / curve.dewVapourDensity(t) - 1 / curve.bubbleLiquidDensity(t);
        assertThat(latent / (volume * curve.dewPressurePa(t)) / slope).isCloseTo(1, within(1e-6));
    }

    private static double logDifference(SaturationCurve curve, double t, double step) {
        // ln T steps are symmetric in T to second order only, so step in ln T itself
        return Math.log(curve.dewPressurePa(t * Math.exp(step)) / curve.dewPressurePa(t * Math.exp(-step)));
    }

    @Property(tries = 500)
    void phasesAreInEquilibriumAndDiffer(@ForAll("refrigerants") String name, @ForAll("fractions") double fraction) {
        FluidModel model = CurveSamples.model(name);
        double t = temperature(name, fraction);
        for (BoundaryPoint point : new BoundaryPoint[] {model.bubbleAtTemperature(t), model.dewAtTemperature(t)}) {
            assertThat(point.fugacityResidual()).isLessThanOrEqualTo(1e-10);
            assertThat(point.pressureResidual()).isLessThanOrEqualTo(1e-10);
            double ratio = point.incipientMolarDensity() / point.saturated().molarDensity();
            assertThat(Math.abs(Math.log(ratio))).as("not the trivial solution").isGreaterThan(0.5);
            // the printed pressure is that of the equation at the printed density, as far as the liquid's density can
            // say
            double scale = Math.max(point.saturated().molarDensity(), point.incipientMolarDensity())
                    * model.equation().gasConstant()
                    * t;
            assertThat(point.saturated().pressurePa()).isCloseTo(point.pressurePa(), within(1e-10 * scale));
        }
    }

    @Property(tries = 300)
    void superheatFallsAndSubcoolingRisesWithPressure(
            @ForAll("refrigerants") String name, @ForAll("fractions") double a, @ForAll("fractions") double b) {
        Assume.that(b - a > 1e-3);
        SaturationCurve curve = CurveSamples.curve(name);
        Temperature line = Temperature.ofKelvins(300);
        Pressure lowDew = curve.dewPressure(Temperature.ofKelvins(temperature(name, a)));
        Pressure highDew = curve.dewPressure(Temperature.ofKelvins(temperature(name, b)));
        assertThat(curve.superheat(highDew, line)).isLessThan(curve.superheat(lowDew, line));
        Pressure lowBubble = curve.bubblePressure(Temperature.ofKelvins(temperature(name, a)));
        Pressure highBubble = curve.bubblePressure(Temperature.ofKelvins(temperature(name, b)));
        assertThat(curve.subcooling(highBubble, line)).isGreaterThan(curve.subcooling(lowBubble, line));
    }

    @Property(tries = 200)
    void glideIsNoughtForSubstancesAndNeverNegative(
            @ForAll("refrigerants") String name, @ForAll("fractions") double fraction) {
        SaturationCurve curve = CurveSamples.curve(name);
        double pressure = curve.dewPressurePa(temperature(name, fraction));
        Assume.that(pressure > curve.bubblePressureRange().low());
        double glide = curve.glide(Pressure.ofPascals(pressure)).kelvins();
        assertThat(glide).isGreaterThan(-1e-9);
        if (CurveSamples.SUBSTANCES.contains(name)) {
            assertThat(glide).isCloseTo(0, within(1e-9));
        }
    }

    @Property(tries = 100)
    void whatLiesOutsideIsRefusedWithTheRange(
            @ForAll("refrigerants") String name, @ForAll("fractions") double fraction) {
        SaturationCurve curve = CurveSamples.curve(name);
        double far = 1 + fraction;
        for (double t : outside(curve.bubbleTemperatureRange(), fraction)) {
            assertThatExceptionOfType(OutOfValidityException.class)
                    .isThrownBy(() -> curve.bubbleLiquidDensity(t))
                    .withMessageContaining("temperature")
                    .withMessageContaining("is outside [")
                    .satisfies(e -> assertThat(e.low())
                            .isEqualTo(curve.bubbleTemperatureRange().low()))
                    .withMessageContaining(name);
        }
        for (double t : outside(curve.dewTemperatureRange(), fraction)) {
            assertThatExceptionOfType(OutOfValidityException.class)
                    .isThrownBy(() -> curve.dewPressurePa(t))
                    .satisfies(e -> assertThat(e.high())
                            .isEqualTo(curve.dewTemperatureRange().high()));
        }
        for (double p : new double[] {
            0,
            -1e5 * far,
            curve.dewPressureRange().low() * 0.999 / far,
            curve.dewPressureRange().high() * 1.001 * far,
            Double.NaN,
            Double.POSITIVE_INFINITY
        }) {
            assertThatExceptionOfType(OutOfValidityException.class)
                    .isThrownBy(() -> curve.dewTemperatureK(p))
                    .withMessageContaining("pressure")
                    .withMessageContaining(name)
                    .satisfies(e -> assertThat(e.high())
                            .isEqualTo(curve.dewPressureRange().high()));
        }
    }

    private static double[] outside(Range range, double fraction) {
        return new double[] {
            range.low() - 1e-6 - fraction * range.low(),
            range.high() * (1 + 1e-6 + fraction),
            Double.NaN,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            0,
            -fraction
        };
    }
}
