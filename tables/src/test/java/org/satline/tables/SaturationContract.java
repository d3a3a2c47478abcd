package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.equilibrium.Range;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationProperty;

/** What every saturation curve promises, whichever engine answers. Each engine's test lists its refrigerants in {@code curves()}. */
abstract class SaturationContract {
    private static final int STATES = 25;
    /** Both engines: largest certified error of an inverse temperature, K, with room for the slope of the pressure table. */
    private static final double ROUND_TRIP_K = 1e-6;

    static Range range(SaturationCurve curve, SaturationProperty property) {
        if (property.askedByPressure()) {
            return property.onBubbleLine() ? curve.bubblePressureRange() : curve.dewPressureRange();
        }
        return property.onBubbleLine() ? curve.bubbleTemperatureRange() : curve.dewTemperatureRange();
    }

    /** The lower part, where refrigerants of every kind behave: up to 0.95 of the warmest temperature. */
    static double[] temperatures(SaturationCurve curve, int count) {
        SplittableRandom random = new SplittableRandom(7);
        double low = curve.minTemperatureK();
        double high = 0.95 * curve.maxTemperatureK();
        return random.doubles(count, low, high).sorted().toArray();
    }

    @ParameterizedTest
    @MethodSource("curves")
    void answersAtBothLimitsAndRefusesBeyondThem(SaturationCurve curve) {
        for (SaturationProperty property : SaturationProperty.values()) {
            Range range = range(curve, property);
            assertThat(curve.value(property, range.low())).isFinite();
            assertThat(curve.value(property, range.high())).isFinite();
            double[] outside = {
                Math.nextDown(range.low()),
                Math.nextUp(range.high()),
                Double.NaN,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                -1,
                0
            };
            for (double x : outside) {
                assertThatThrownBy(() -> curve.value(property, x))
                        .isInstanceOf(OutOfValidityException.class)
                        .hasMessageContaining(property.askedByPressure() ? "pressure" : "temperature")
                        .hasMessageContaining(curve.refrigerant().designation());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void pressureRisesAndDewIsNotAboveBubble(SaturationCurve curve) {
        double[] temperatures = temperatures(curve, STATES);
        for (int i = 0; i < STATES; i++) {
            double bubble = curve.bubblePressurePa(temperatures[i]);
            double dew = curve.dewPressurePa(temperatures[i]);
            assertThat(dew).isLessThanOrEqualTo(bubble * (1 + 2e-8)); // two certified errors of 1e-8
            if (i > 0) {
                assertThat(bubble).isGreaterThan(curve.bubblePressurePa(temperatures[i - 1]));
                assertThat(dew).isGreaterThan(curve.dewPressurePa(temperatures[i - 1]));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void temperatureAndPressureRoundTrip(SaturationCurve curve) {
        for (double t : temperatures(curve, STATES)) {
            assertThat(Math.abs(curve.bubbleTemperatureK(curve.bubblePressurePa(t)) - t))
                    .isLessThan(ROUND_TRIP_K);
            assertThat(Math.abs(curve.dewTemperatureK(curve.dewPressurePa(t)) - t))
                    .isLessThan(ROUND_TRIP_K);
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void arraysEqualSingleAnswersToTheLastBit(SaturationCurve curve) {
        double[] temperatures = temperatures(curve, STATES);
        double[] bubble = new double[STATES];
        double[] dew = new double[STATES];
        curve.values(SaturationProperty.BUBBLE_PRESSURE, temperatures, bubble);
        curve.values(SaturationProperty.DEW_PRESSURE, temperatures, dew);
        for (SaturationProperty property : SaturationProperty.values()) {
            double[] at = !property.askedByPressure() ? temperatures : property.onBubbleLine() ? bubble : dew;
            double[] out = new double[STATES + 1];
            out[STATES] = -5;
            curve.values(property, at, out);
            for (int i = 0; i < STATES; i++) {
                assertThat(out[i]).isEqualTo(curve.value(property, at[i]));
            }
            assertThat(out[STATES]).isEqualTo(-5);
            assertThatThrownBy(() -> curve.values(property, at, new double[STATES - 1]))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("longer output array");
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void typedAnswersAreThePrimitiveOnes(SaturationCurve curve) {
        for (double t : temperatures(curve, 3)) {
            Temperature temperature = Temperature.ofKelvins(t);
            Pressure dew = curve.dewPressure(temperature);
            assertThat(dew.pascals()).isEqualTo(curve.dewPressurePa(t));
            assertThat(Math.abs(curve.superheat(dew, temperature).kelvins())).isLessThan(ROUND_TRIP_K);
            Pressure bubble = curve.bubblePressure(temperature);
            assertThat(Math.abs(curve.subcooling(bubble, temperature).kelvins()))
                    .isLessThan(ROUND_TRIP_K);
        }
    }
}
