package org.satline.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** What the answers so far say, at the ends of what is still believed. Expected: 33.5 K x 0.9 / 3 kg = 10.05 K/kg above the band. */
class StepAnswersTest {
    private static final StepLimits AMPLE =
            StepLimits.usual(Mass.ofKilograms(20), Mass.ofKilograms(20), Mass.ofGrams(10));
    private static final double EXPECTED = 33.5 * 0.9 / 3;

    private static StepAdvice advice(double... massDeviationRepeatability) {
        List<StepReading> readings = new ArrayList<>();
        for (int i = 0; i < massDeviationRepeatability.length; i += 3) {
            readings.add(new StepReading(
                    massDeviationRepeatability[i],
                    massDeviationRepeatability[i + 1],
                    massDeviationRepeatability[i + 2],
                    true));
        }
        return StepAdvisor.typical(Mass.ofKilograms(3), MeteringDevice.EXPANSION_VALVE, 5.0 / 3)
                .next(readings, AMPLE);
    }

    private static boolean has(StepAdvice advice, StepCode code) {
        return advice.reasons().stream().map(Finding::code).anyMatch(code::equals);
    }

    /** 15 % of the expected answer, 1.51 K/kg, below a fifth of the charge moved; 30 %, 3.02 K/kg, from there on; our choice, no source. */
    @ParameterizedTest
    @CsvSource({
        "0, -0.5, 1.6, false",
        "0, -0.5, 1.4, true",
        "0.3, -0.2, 1.6, false",
        "0.3, -0.2, 1.4, true",
        "0, -0.59, 2.9, false",
        "0, -0.61, 2.9, true",
        "0, -0.61, 3.1, false",
        "0.3, -0.31, 2.9, true"
    })
    void anAnswerTooWeakForACharge(double fromKg, double toKg, double kelvinsPerKg, boolean none) {
        StepAdvice advice = advice(fromKg, 9, 0.001, toKg, 9 - kelvinsPerKg * (fromKg - toKg), 0.001);
        assertThat(advice instanceof StepAdvice.NotCharge).isEqualTo(none);
    }

    /** 95 % one-sided: 1.645 standard deviations of the slope, here 0.4 K x root 2 / 0.5 kg = 1.13 K/kg: 1.51 - 1.86 = -0.35 K/kg. */
    @ParameterizedTest
    @CsvSource({"-0.4, true", "-0.3, false", "0, false"})
    void doubtOfTheInstrumentsCounts(double kelvinsPerKg, boolean none) {
        StepAdvice advice = advice(0, 9, 0.4, -0.5, 9 + 0.5 * -kelvinsPerKg, 0.4);
        assertThat(advice instanceof StepAdvice.NotCharge).isEqualTo(none);
    }

    /** Six times the expected answer, 60.3 K/kg, beyond 1.645 x 0.1 K/kg of doubt; our choice, no source. */
    @ParameterizedTest
    @CsvSource({"60.2, false", "60.4, false", "60.6, true"})
    void anAnswerTooStrongForACharge(double kelvinsPerKg, boolean apart) {
        double doubt = 0.1 * 0.1 / Math.sqrt(2);
        StepAdvice advice = advice(0, 9, doubt, -0.1, 9 - 0.1 * kelvinsPerKg, doubt);
        assertThat(has(advice, StepCode.READINGS_APART)).isEqualTo(apart);
    }

    /** Two readings of the same mass differ from their mean by half of their difference; twice their own doubt is still one thing. */
    @ParameterizedTest
    @CsvSource({"1.99, false", "2.01, true"})
    void readingsOfOneMassBelongTogether(double differenceK, boolean apart) {
        assertThat(has(advice(-0.1, 9 + differenceK, 0.5, -0.1, 9, 0.5), StepCode.READINGS_APART))
                .isEqualTo(apart);
        assertThat(has(advice(-0.1, 9 - differenceK, 0.5, -0.1, 9, 0.5), StepCode.READINGS_APART))
                .isEqualTo(apart);
    }

    /** A reading of low worth far off the line of two good ones, 2 K/kg, turns no answer into none. */
    @Test
    void goodReadingsWeighMoreThanPoorOnes() {
        assertThat(advice(0, 9, 0.01, -0.4, 12, 8, -0.5, 8, 0.01)).isNotInstanceOf(StepAdvice.NotCharge.class);
        assertThat(advice(0, 9, 0.01, -0.4, 12, 0.01, -0.5, 8, 0.01)).isInstanceOf(StepAdvice.NotCharge.class);
    }

    private static double figure(StepAdvice advice, String name) {
        return advice.reasons().stream()
                .filter(each -> each.code() == StepCode.RESPONSE)
                .flatMap(each -> each.figures().stream())
                .filter(each -> each.name().equals(name))
                .mapToDouble(each -> ((Figure.Plain) each).value())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theResponseToldIsTheSharpenedBelief() {
        StepReading only = new StepReading(0, 9, 0.2, true);
        ResponsePrior sharpened = new ResponsePrior(EXPECTED, 0.33 * EXPECTED).given(only, Optional.empty(), 3);
        StepAdvice advice = advice(0, 9, 0.2);
        assertThat(figure(advice, "response")).isCloseTo(sharpened.mean(), within(1e-9)); // round-off
        assertThat(figure(advice, "u")).isCloseTo(sharpened.deviation(), within(1e-9));
        assertThat(figure(advice, "readings")).isEqualTo(1);
    }

    /** Only a reading at zero just before the first signal tells how much may have been spent at zero. */
    @Test
    void whatWentBeforeTheFirstSignal() {
        StepAdvisor advisor = StepAdvisor.typical(Mass.ofKilograms(3), MeteringDevice.EXPANSION_VALVE, 5.0 / 3);
        StepReading zero = new StepReading(0, -5.6, 0.2, false);
        StepReading later = new StepReading(0.1, -5.5, 0.2, false);
        StepReading signal = new StepReading(0.3, -3, 0.2, true);
        StepReading stillNone = new StepReading(0.3, -5.4, 0.2, false);
        double alone = figure(advisor.next(List.of(signal), AMPLE), "response");
        double afterZero = figure(advisor.next(List.of(zero, signal), AMPLE), "response");
        assertThat(afterZero).isGreaterThan(alone);
        ResponsePrior sharpened = new ResponsePrior(33.5 * 1.1 / 3, 0.33 * 33.5 * 1.1 / 3);
        assertThat(afterZero)
                .isCloseTo(sharpened.given(signal, Optional.of(zero), 3).mean(), within(1e-9)); // round-off
        assertThat(figure(advisor.next(List.of(zero, later, signal), AMPLE), "response"))
                .isCloseTo(sharpened.given(signal, Optional.of(later), 3).mean(), within(1e-9));
        assertThat(figure(advisor.next(List.of(zero, stillNone), AMPLE), "response"))
                .isCloseTo(sharpened.given(stillNone, Optional.empty(), 3).mean(), within(1e-9));
    }

    /** By hand: 0.3 K off, band 0.5 K, doubt 0.2 K: -4 to 1 standard deviations, 0.84134 - 0.00003 (Abramowitz and Stegun, 26.1). */
    @Test
    void theChanceOfBeingOnTarget() {
        StepAdvisor narrow = StepAdvisor.typical(Mass.ofKilograms(3), MeteringDevice.EXPANSION_VALVE, 0.5);
        for (double side : new double[] {0.3, -0.3}) {
            StepAdvice advice = narrow.next(List.of(new StepReading(0, side, 0.2, true)), AMPLE);
            assertThat(advice)
                    .isInstanceOfSatisfying(
                            StepAdvice.Done.class,
                            done -> assertThat(done.probabilityOnTarget()).isCloseTo(0.84131, within(0.00001)));
        }
    }

    /** The direction of the last step counts, and not the sum that was moved so far. */
    @Test
    void goingOnTakingOutAfterAddingTooMuchTurnsRoundOnce() {
        StepAdvice advice = advice(0, -6, 0.2, 0.8, 5, 0.2, 0.7, 4.2, 0.2);
        assertThat(advice).isInstanceOfSatisfying(StepAdvice.Move.class, move -> {
            assertThat(move.direction()).isEqualTo(StepAdvice.Direction.REMOVE);
            assertThat(move.changesDirection()).isFalse();
        });
    }

    @Test
    void nothingIsNull() {
        Mass mass = Mass.ofKilograms(1);
        assertThatNullPointerException()
                .isThrownBy(() -> StepLimits.usual(mass, mass, missing()))
                .withMessage("smallest");
        assertThatNullPointerException()
                .isThrownBy(() -> new StepAdvice.Move(missing(), mass, 0, AMPLE.settlingTime(), false, List.of()));
        assertThatNullPointerException()
                .isThrownBy(() -> new CopperTube("3/8", missing(), Length.ofMetres(1), Length.ofMetres(1), true));
        assertThatNullPointerException()
                .isThrownBy(() -> new CopperTube(
                        "3/8", CopperTube.Temper.DRAWN, Length.ofMetres(1), StepAnswersTest.<Length>missing(), true));
        assertThatNullPointerException()
                .isThrownBy(() -> StepAdvisor.typical(missing(), MeteringDevice.EXPANSION_VALVE, 1));
    }

    @SuppressWarnings({"NullAway", "TypeParameterUnusedInFormals"}) // that null is refused is what is tested
    private static <T> T missing() {
        return (T) null;
    }

    @Test
    void tubesSayWhereTheirWallIsFrom() {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-134a"));
        LineCharge.Filling liquid = LineCharge.liquid(curve, org.satline.quantity.Temperature.ofCelsius(40));
        CopperTube read = CopperTube.of("3/8", CopperTube.Temper.DRAWN);
        CopperTube remembered = CopperTube.of("1-5/8", CopperTube.Temper.DRAWN);
        assertThat(LineCharge.of(read, Length.ofMetres(1), liquid).steps())
                .anySatisfy(step -> assertThat(step.source()).isEqualTo("ASTM B280"));
        assertThat(LineCharge.of(remembered, Length.ofMetres(1), liquid).steps())
                .anySatisfy(step -> assertThat(step.source()).contains("memory"));
        assertThat(LineCharge.additional(read, liquid, read, liquid, Length.ofMetres(5), Length.ofMetres(5))
                        .mass())
                .isEqualTo(Mass.ZERO);
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> CopperTube.of("1-5/8", CopperTube.Temper.ANNEALED_HEAVY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageEndingWith("take one of 3/4");
    }
}
