package org.satline.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.quantity.Mass;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** The advice step by step, and its bounds. */
class StepAdvisorTest {
    private static final StepLimits AMPLE =
            StepLimits.usual(Mass.ofKilograms(20), Mass.ofKilograms(20), Mass.ofGrams(10));

    private static final StepAdvisor ADVISOR =
            StepAdvisor.typical(Mass.ofKilograms(3), MeteringDevice.EXPANSION_VALVE, 3 / 1.8);

    private static StepReading reading(double kg, double deviationK) {
        return new StepReading(kg, deviationK, 0.2, true);
    }

    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.US);

    /** What is found, all of which can be put into words. */
    private static List<FindingCode> codes(StepAdvice advice) {
        advice.reasons().forEach(reason -> assertThat(WORDING.lacking(reason)).isEmpty());
        return advice.reasons().stream().map(Finding::code).toList();
    }

    @Test
    void saysSoWhereItStartsWithoutASignal() {
        StepAdvice first = ADVISOR.next(List.of(new StepReading(0, -5.6, 0.2, false)), AMPLE);
        assertThat(first).isInstanceOf(StepAdvice.Move.class);
        assertThat(codes(first)).contains(StepCode.OFF_TARGET, StepCode.RESPONSE, StepCode.NO_SIGNAL);
    }

    @Test
    void stopsOnTarget() {
        StepAdvice advice = ADVISOR.next(List.of(reading(0, 0.3)), AMPLE);
        assertThat(advice).isInstanceOf(StepAdvice.Done.class);
        assertThat(codes(advice)).containsExactly(StepCode.OFF_TARGET, StepCode.CHANCE_ON_TARGET);
    }

    @Test
    void saysSoWhenTheAnswerContradictsACharge() {
        // 0.4 kg of 3 kg should have moved subcooling by some 4 K; it did not move
        StepAdvice advice = ADVISOR.next(List.of(reading(0, 6), reading(-0.2, 6.1), reading(-0.4, 6.0)), AMPLE);
        assertThat(advice).isInstanceOf(StepAdvice.NotCharge.class);
        assertThat(codes(advice)).containsExactly(StepCode.NO_ANSWER);
        List<StepReading> pinned = new ArrayList<>();
        for (int i = 0; i <= 4; i++) {
            pinned.add(new StepReading(0.4 * i, -5.6, 0.2, false));
        }
        assertThat(ADVISOR.next(pinned, AMPLE)).isInstanceOf(StepAdvice.NotCharge.class);
    }

    /** Hand instruments, u = 1.2 K: a pound out in halves, a fifth of the charge and more in all, and subcooling stands where it stood. */
    @Test
    void doesNotGoOnDrainingASystemThatDoesNotAnswer() {
        List<StepReading> readings = new ArrayList<>();
        for (int i = 0; i <= 4; i++) {
            readings.add(new StepReading(-0.227 * i, 3.4, 1.2, true));
        }
        assertThat(ADVISOR.next(readings, AMPLE)).isInstanceOf(StepAdvice.NotCharge.class);
        // net mass beyond half of the full charge: whatever the reading, not an error of the charge, with or without
        // the first reading
        assertThat(ADVISOR.next(List.of(reading(-1.6, 8)), AMPLE)).isInstanceOf(StepAdvice.NotCharge.class);
        assertThat(ADVISOR.next(List.of(reading(0, 12), reading(-1.6, 8)), AMPLE))
                .isInstanceOf(StepAdvice.NotCharge.class);
    }

    @Test
    void asksForAnotherReadingWhereTheReadingsDoNotBelongTogether() {
        // 24 K for 0.14 kg is 180 K/kg, where some 10 K/kg are expected
        StepAdvice advice =
                ADVISOR.next(List.of(new StepReading(0, 28, 1.2, true), new StepReading(-0.14, 3.4, 1.2, true)), AMPLE);
        assertThat(advice).isInstanceOf(StepAdvice.Blocked.class);
        assertThat(codes(advice)).contains(StepCode.READINGS_APART);
        // the same mass read 6 K apart
        assertThat(ADVISOR.next(
                        List.of(new StepReading(-0.14, -2.8, 1.2, true), new StepReading(-0.14, 3.4, 1.2, true)),
                        AMPLE))
                .isInstanceOf(StepAdvice.Blocked.class);
    }

    @Test
    void stopsOnTargetOnlyWhereTheLastReadingIsInsideTheBand() {
        assertThat(ADVISOR.next(
                        List.of(new StepReading(0, -0.4, 1.2, true), new StepReading(0.03, -2.2, 1.2, true)), AMPLE))
                .isNotInstanceOf(StepAdvice.Done.class);
    }

    @Test
    void noStepIsLargerThanHalfOfTheCharge() {
        StepAdvice.Move move = (StepAdvice.Move) ADVISOR.next(List.of(reading(0, 300)), AMPLE);
        assertThat(move.amount().kilograms()).isLessThanOrEqualTo(1.5);
    }

    @Test
    void avoidsTurningRoundInsideTheBand() {
        StepAdvice inside = ADVISOR.next(List.of(reading(0, 6), reading(-0.6, -1.5)), AMPLE);
        assertThat(inside).isInstanceOf(StepAdvice.Done.class);
        StepAdvice outside = ADVISOR.next(List.of(reading(0, 6), reading(-0.6, -4)), AMPLE);
        assertThat(outside).isInstanceOfSatisfying(StepAdvice.Move.class, move -> {
            assertThat(move.changesDirection()).isTrue();
            assertThat(move.direction()).isEqualTo(StepAdvice.Direction.ADD);
        });
        assertThat(codes(outside)).contains(StepCode.TURNS_ROUND, StepCode.CHANCE_OF_PASSING);
    }

    @Test
    void saysWhatStandsInTheWayOfAStep() {
        StepLimits none = StepLimits.usual(Mass.ofGrams(5), Mass.ofGrams(5), Mass.ofGrams(10));
        assertThat(codes(ADVISOR.next(List.of(reading(0, 6)), none))).contains(StepCode.NO_ROOM_FOR_STEP);
        assertThat(codes(ADVISOR.next(List.of(reading(0, -6)), none))).contains(StepCode.SOURCE_SPENT);
        StepLimits coarse = StepLimits.usual(Mass.ofKilograms(20), Mass.ofKilograms(20), Mass.ofKilograms(1));
        StepAdvice advice = ADVISOR.next(List.of(reading(0, 3)), coarse);
        assertThat(advice).isInstanceOf(StepAdvice.Blocked.class);
        assertThat(codes(advice)).contains(StepCode.TOO_COARSE);
    }

    @Property(tries = 500)
    void neverExceedsTheRoomAndKeepsTheRisk(
            @ForAll @DoubleRange(min = 2, max = 40) double deviationK,
            @ForAll @DoubleRange(min = 0, max = 1) double roomKg,
            @ForAll boolean high) {
        StepLimits limits = StepLimits.usual(Mass.ofKilograms(roomKg), Mass.ofKilograms(roomKg), Mass.ofGrams(10));
        StepAdvice advice = ADVISOR.next(List.of(reading(0, high ? deviationK : -deviationK)), limits);
        if (advice instanceof StepAdvice.Move move) {
            assertThat(move.amount().kilograms()).isLessThanOrEqualTo(roomKg).isGreaterThanOrEqualTo(0.01);
            assertThat(move.passing()).isLessThanOrEqualTo(limits.risk() + 1e-9);
            assertThat(move.direction()).isEqualTo(high ? StepAdvice.Direction.REMOVE : StepAdvice.Direction.ADD);
        } else {
            assertThat(advice).isInstanceOf(StepAdvice.Blocked.class);
            assertThat(roomKg).isLessThan(0.01);
            assertThat(codes(advice)).contains(high ? StepCode.NO_ROOM_FOR_STEP : StepCode.SOURCE_SPENT);
        }
    }

    @Property
    void withTheResponseHeldFixedALargerDeviationNeverLowersTheAmount(
            @ForAll @DoubleRange(min = 0, max = 30) double deviationK,
            @ForAll @DoubleRange(min = 0, max = 10) double moreK,
            @ForAll @DoubleRange(min = 0.5, max = 30) double response,
            @ForAll @DoubleRange(min = 0, max = 0.5) double relativeDoubt,
            @ForAll @DoubleRange(min = 0.05, max = 1) double repeatabilityK) {
        double variance = relativeDoubt * response * relativeDoubt * response;
        double less = new LearnedResponse(deviationK, 0.04, response, variance, 0, 1)
                .largestStepKg(1.7, repeatabilityK, 0.05);
        double more = new LearnedResponse(deviationK + moreK, 0.04, response, variance, 0, 1)
                .largestStepKg(1.7, repeatabilityK, 0.05);
        assertThat(Math.abs(more)).isGreaterThanOrEqualTo(Math.abs(less) - 1e-9);
    }

    /**
     * A straight answer of 4 K/kg, prior 10 +/- 4 K/kg. By hand: the bend allowance of 0.25 x 10 K/kg gives the readings 0.4 and 0.8 kg
     * away variances of 1 and 4 K2, so information of 0.16 / 1 + 0.64 / 4 = 0.32 against 1 / 16 of the prior: (4 x 0.32 + 10 / 16) / (0.32
     * + 1 / 16) = 4.98 K/kg.
     */
    @Test
    void learnsAStraightAnswer() {
        List<StepReading> readings = List.of(
                new StepReading(0, 6, 0.01, true),
                new StepReading(-0.4, 4.4, 0.01, true),
                new StepReading(-0.8, 2.8, 0.01, true));
        LearnedResponse learned = LearnedResponse.from(readings, 10, 4);
        assertThat(learned.deviationK()).isCloseTo(2.8, within(0.01));
        // noise of 0.01 K moves the hand-worked figure by less than 0.001
        assertThat(learned.kelvinsPerKilogram()).isCloseTo(4.98, within(0.005));
    }
}
