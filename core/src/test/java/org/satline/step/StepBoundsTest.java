package org.satline.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.quantity.Mass;
import org.satline.quantity.TemperatureDifference;

/** Which bound holds which step, and the bounds at their exact ends. */
class StepBoundsTest {
    private static final double FULL_KG = 3;
    private static final StepAdvisor ADVISOR =
            StepAdvisor.typical(Mass.ofKilograms(FULL_KG), MeteringDevice.EXPANSION_VALVE, 3 / 1.8);

    private static StepReading reading(double kg, double deviationK) {
        return new StepReading(kg, deviationK, 0.2, true);
    }

    private static StepLimits limits(double roomKg, double availableKg) {
        return StepLimits.usual(Mass.ofKilograms(roomKg), Mass.ofKilograms(availableKg), Mass.ofGrams(10));
    }

    private static StepAdvice.Move move(double deviationK, StepLimits limits) {
        return (StepAdvice.Move) ADVISOR.next(List.of(reading(0, deviationK)), limits);
    }

    private static Finding finding(StepAdvice advice, StepCode code) {
        return advice.reasons().stream()
                .filter(each -> each.code() == code)
                .findFirst()
                .orElseThrow();
    }

    /** A recovery cylinder that is nearly full bounds what comes out, whatever the source could give, and the source what goes in. */
    @Test
    void theRoomBoundsWhatComesOutAndTheSourceWhatGoesIn() {
        assertThat(move(8, limits(0.05, 20)).amount()).isEqualTo(Mass.ofKilograms(0.05));
        assertThat(move(8, limits(20, 0.05)).amount().kilograms()).isGreaterThan(0.1);
        assertThat(move(-8, limits(20, 0.05)).amount()).isEqualTo(Mass.ofKilograms(0.05));
        assertThat(move(-8, limits(0.05, 20)).amount().kilograms()).isGreaterThan(0.1);
        assertThat(move(8, limits(20, 0)).direction()).isEqualTo(StepAdvice.Direction.REMOVE);
        assertThat(move(-8, limits(0, 20)).direction()).isEqualTo(StepAdvice.Direction.ADD);
    }

    @Test
    void aRoomOfJustTheSmallestStepIsUsed() {
        assertThat(move(8, limits(0.01, 0)).amount()).isEqualTo(Mass.ofGrams(10));
        assertThat(ADVISOR.next(List.of(reading(0, 8)), limits(Math.nextDown(0.01), 20)))
                .isInstanceOf(StepAdvice.Blocked.class);
        assertThat(move(-8, limits(0, 0.01)).amount()).isEqualTo(Mass.ofGrams(10));
        assertThat(ADVISOR.next(List.of(reading(0, -8)), limits(20, Math.nextDown(0.01))))
                .isInstanceOf(StepAdvice.Blocked.class);
    }

    /** Half of the full charge is still a charge error that is looked for, more is not; our choice, no source. */
    @Test
    void halfOfTheChargeIsTheMostThatIsMoved() {
        StepLimits ample = limits(20, 20);
        assertThat(ADVISOR.next(List.of(reading(-FULL_KG / 2, 8)), ample)).isInstanceOf(StepAdvice.Move.class);
        assertThat(ADVISOR.next(List.of(reading(-Math.nextUp(FULL_KG / 2), 8)), ample))
                .isInstanceOf(StepAdvice.NotCharge.class);
        assertThat(ADVISOR.next(List.of(reading(Math.nextUp(FULL_KG / 2), -8)), ample))
                .isInstanceOf(StepAdvice.NotCharge.class);
        assertThat(move(1e4, ample).amount().kilograms()).isEqualTo(FULL_KG / 2);
    }

    @Test
    void theReasonsCarryTheFigures() {
        StepAdvice.Move removing = move(8, limits(20, 20));
        assertThat(removing.settlingTime()).isEqualTo(Duration.ofMinutes(15));
        assertThat(removing.changesDirection()).isFalse();
        assertThat(finding(removing, StepCode.OFF_TARGET).figures())
                .containsExactly(
                        Figure.of("off", TemperatureDifference.ofKelvins(8)),
                        Figure.of("band", TemperatureDifference.ofKelvins(3 / 1.8)));
        assertThat(finding(removing, StepCode.CHANCE_OF_PASSING).figures())
                .containsExactly(Figure.of("probability", removing.passing(), "1"));
        StepAdvisor orifice = StepAdvisor.typical(Mass.ofKilograms(FULL_KG), MeteringDevice.FIXED_ORIFICE, 2);
        // too much charge is too little superheat
        assertThat(finding(orifice.next(List.of(reading(0, 8)), limits(20, 20)), StepCode.OFF_TARGET)
                        .figures())
                .contains(Figure.of("off", TemperatureDifference.ofKelvins(-8)));
    }

    @Test
    void onlyAStepTheOtherWayTurnsRound() {
        StepLimits ample = limits(20, 20);
        for (double[] way : new double[][] {{-0.2, 0}, {0.2, 1}, {0, 0}}) {
            StepAdvice advice = ADVISOR.next(List.of(reading(0, 9), reading(way[0], way[1] == 1 ? 10 : 7)), ample);
            if (advice instanceof StepAdvice.Move move) {
                assertThat(move.changesDirection()).isEqualTo(way[1] == 1);
                assertThat(move.direction()).isEqualTo(StepAdvice.Direction.REMOVE);
            }
        }
        assertThat(ADVISOR.next(List.of(reading(0, 6), reading(0.3, 9)), ample))
                .isInstanceOfSatisfying(
                        StepAdvice.Move.class,
                        move -> assertThat(move.changesDirection()).isTrue());
    }

    /**
     * By hand: 4 K off, 10 K/kg, 0.3 kg out leaves 1 K; the far edge is 2.5 K away; variances 0.04 + 0.3^2 x 4 +
     * (0.25 x 3)^2 + 0.5^2 = 1.2125 K2; 2.5 / 1.1011 = 2.2704, whose upper tail is 0.0116 (Abramowitz and Stegun, table
     * 26.1: P(2.26) = 0.98809, P(2.28) = 0.98870). A covariance of 0.1 K2/kg takes 2 x 0.3 x 0.1 off: 2.3287, 0.0099
     * (P(2.32) = 0.98983, P(2.34) = 0.99036).
     */
    @ParameterizedTest
    @CsvSource({"0, 0.0116", "0.1, 0.0099"})
    void theChanceOfPassingByHand(double covariance, double chance) {
        LearnedResponse learned = new LearnedResponse(4, 0.04, 10, 4, covariance, 2);
        assertThat(learned.passing(-0.3, 1.5, 0.5)).isCloseTo(chance, within(0.00005));
        LearnedResponse mirrored = new LearnedResponse(-4, 0.04, 10, 4, -covariance, 2);
        assertThat(mirrored.passing(0.3, 1.5, 0.5)).isCloseTo(chance, within(0.00005));
    }

    /** By hand: a quarter of the band of 1.5 K is left, (4 - 0.375) / 10 = 0.3625 kg; where that is too risky, the risk is met. */
    @Test
    void theLargestStepByHand() {
        LearnedResponse known = new LearnedResponse(4, 1e-6, 10, 0, 0, 2);
        assertThat(known.largestStepKg(1.5, 0.1, 0.05)).isCloseTo(-0.3625, within(1e-12)); // round-off of two sums
        LearnedResponse doubtful = new LearnedResponse(-4, 0.04, 10, 9, 0, 2);
        double step = doubtful.largestStepKg(1.5, 0.1, 0.05);
        assertThat(step).isBetween(0.05, 0.36);
        assertThat(doubtful.passing(step, 1.5, 0.1)).isCloseTo(0.05, within(1e-9)); // halving to the last bit
        assertThat(new LearnedResponse(0.375, 1e-6, 10, 0, 0, 2).largestStepKg(1.5, 0.1, 0.05))
                .isZero();
    }

    @Test
    void whatCannotBeUsedIsRefused() {
        Mass mass = Mass.ofKilograms(1);
        Duration wait = Duration.ofMinutes(1);
        for (double risk : new double[] {0, 0.5, Double.NaN}) {
            assertThatThrownBy(() -> new StepLimits(mass, mass, mass, risk, 0.5, wait))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        for (double confidence : new double[] {Math.nextDown(0.5), 1, Double.NaN}) {
            assertThatThrownBy(() -> new StepLimits(mass, mass, mass, 0.1, confidence, wait))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> ADVISOR.next(List.of(), limits(1, 1))).isInstanceOf(IllegalArgumentException.class);
        for (double tolerance : new double[] {0, 1000, Double.NaN}) {
            assertThatThrownBy(() -> StepAdvisor.typical(mass, MeteringDevice.EXPANSION_VALVE, tolerance))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> StepAdvisor.typical(Mass.ZERO, MeteringDevice.EXPANSION_VALVE, 1))
                .isInstanceOf(IllegalArgumentException.class);
        for (double[] r :
                new double[][] {{0, 0.1, 0}, {1e4, 0.1, 0}, {1, 0, 0}, {1, 1.01, 0}, {1, 0.1, -0.01}, {1, 0.1, 0.51}}) {
            assertThatThrownBy(() -> new ExpectedResponse(r[0], r[1], r[2]))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(new ExpectedResponse(Math.nextDown(1e4), 1, 0.5).kelvins(0)).isLessThan(1e4);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 1000, Double.NaN, Double.POSITIVE_INFINITY})
    void aReadingHasARepeatability(double repeatabilityK) {
        assertThatThrownBy(() -> new StepReading(0, 1, repeatabilityK, true))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StepReading(Double.NaN, 1, 1, true)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StepReading(0, Double.POSITIVE_INFINITY, 1, true))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LearnedResponse(0, 1, 0, 1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LearnedResponse(0, -1, 1, 1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LearnedResponse(0, 1, 1, -1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A figure that the instruments cannot tell from zero says nothing of the charge: 0.5 K, or twice the repeatability. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.1, false", "0.51, 0.1, true", "2, 1, false", "2.01, 1, true"})
    void aSignalStandsOutOfZero(double measuredK, double repeatabilityK, boolean signal) {
        assertThat(StepReading.of(0, Criterion.SUBCOOLING, measuredK, 5, repeatabilityK)
                        .signal())
                .isEqualTo(signal);
    }

    @Test
    void towardsMoreChargeIsPositive() {
        assertThat(StepReading.of(0.1, Criterion.SUBCOOLING, 8, 5, 0.2)).isEqualTo(new StepReading(0.1, 3, 0.2, true));
        assertThat(StepReading.of(0.1, Criterion.SUPERHEAT, 8, 5, 0.2)).isEqualTo(new StepReading(0.1, -3, 0.2, true));
    }
}
