package org.satline.program.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/** No question is trivial or impossible: the margins that README.md promises, looked up in the printed sheets. */
class ExerciseFairnessTest {
    private static final int SHEET = 40;
    private static final SheetMaker MAKER = new SheetMaker();

    /** An exercise with what it comes to. */
    private record Case(PrintedExercise it, Exercise exercise, Map<String, Object> solved) {
        <T> T solved(String part, Class<T> type) {
            return type.cast(Objects.requireNonNull(solved.get(part), part));
        }

        double kelvins(String part) {
            return solved(part, TemperatureDifference.class).kelvins();
        }

        double celsius(String part) {
            return solved(part, Temperature.class).celsius();
        }

        String words(String part) {
            return solved(part, String.class);
        }
    }

    private static List<Case> cases(Topic topic, Difficulty difficulty) {
        SheetOrder order = new SheetOrder(71, SHEET, Optional.of(difficulty), List.of(topic), Optional.empty());
        ExerciseSheet sheet = MAKER.sheet(order);
        List<PrintedExercise> printed = PrintedExercise.all(sheet);
        return IntStream.range(0, SHEET)
                .mapToObj(i -> new Case(
                        printed.get(i),
                        sheet.exercises().get(i),
                        HandSolver.solve(
                                topic,
                                printed.get(i),
                                Lines.solving(HandSolver.curve(printed.get(i).designation())))))
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Difficulty.class)
    void readingsAreThoseOfARunningAirConditioner(Difficulty difficulty) {
        for (Topic topic : List.of(Topic.MARGINS, Topic.VERDICT)) {
            for (Case each : cases(topic, difficulty)) {
                Lines lines = Lines.solving(HandSolver.curve(each.it().designation()));
                Pressure suction = each.it().pressure("suction pressure");
                Pressure liquid = each.it().pressure("liquid pressure");
                assertThat(lines.dewTemperature(suction).celsius()).isBetween(-4.1, 14.1);
                assertThat(lines.bubbleTemperature(liquid).celsius()).isBetween(26.9, 62.1);
                assertThat(each.it().temperature("suction-line temperature").celsius())
                        .isBetween(0.0, 26.0);
                assertThat(each.it().temperature("liquid-line temperature").celsius())
                        .isBetween(23.9, 58.0);
                assertThat(each.kelvins("superheat")).isBetween(0.5, 20.1);
                assertThat(each.kelvins("subcooling")).isBetween(0.5, 18.1);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Difficulty.class)
    void noVerdictHangsOnARounding(Difficulty difficulty) {
        double clear = difficulty == Difficulty.EXPERIENCED ? 0.4 : 0.6;
        for (Case each : cases(Topic.VERDICT, difficulty)) {
            double band = each.it()
                    .difference("tolerance around the target, either way")
                    .kelvins();
            double distance = Math.abs(each.kelvins("deviation"));
            assertThat(Math.abs(distance - band)).as(each.it().title()).isGreaterThanOrEqualTo(clear - 1e-6);
            if (each.solved().containsKey("holds") && !each.words("level").equals("no level")) {
                assertThat(Math.abs(Math.abs(distance - band) / each.kelvins("uncertainty") - 1.645))
                        .isGreaterThan(0.29);
            }
        }
        if (difficulty == Difficulty.EXPERIENCED) {
            assertThat(cases(Topic.VERDICT, difficulty))
                    .extracting(each -> each.words("level"))
                    .contains("low", "on target", "high", "no level");
        }
    }

    @ParameterizedTest
    @EnumSource(Difficulty.class)
    void noDirectionIsPlainOrADeadHeat(Difficulty difficulty) {
        boolean hard = difficulty == Difficulty.EXPERIENCED;
        for (Case each : cases(Topic.FLOW, difficulty)) {
            double driving = Math.abs(
                    each.solved("driving pressure", PressureDifference.class).kilopascals());
            if (each.words("direction").equals("too close to call")) {
                assertThat(hard).isTrue();
                assertThat(driving)
                        .isLessThan(0.61
                                * each.solved("uncertainty", PressureDifference.class)
                                        .kilopascals());
            } else {
                assertThat(driving).isGreaterThan(24.9);
                if (hard) {
                    assertThat(driving)
                            .isGreaterThan(1.59
                                    * each.solved("uncertainty", PressureDifference.class)
                                            .kilopascals());
                }
            }
        }
        assertThat(cases(Topic.FLOW, difficulty))
                .extracting(each -> each.words("wanted"))
                .contains("yes", "no");
    }

    @ParameterizedTest
    @EnumSource(Difficulty.class)
    void glideAndAltitudeShow(Difficulty difficulty) {
        for (Case each : cases(Topic.GLIDE, difficulty)) {
            assertThat(each.kelvins("glide")).isGreaterThan(1.49);
        }
        for (Case each : cases(Topic.ALTITUDE, difficulty)) {
            assertThat(each.celsius("dew point at sea level") - each.celsius("dew point"))
                    .isGreaterThan(0.59);
        }
    }

    @ParameterizedTest
    @EnumSource(Difficulty.class)
    void cylindersHaveRoomAndNothingIsNegative(Difficulty difficulty) {
        for (Case each : cases(Topic.FILL_LIMIT, difficulty)) {
            each.solved().forEach((part, value) -> {
                if (value instanceof Mass mass) {
                    assertThat(mass.kilograms()).as(part).isPositive();
                }
            });
        }
    }

    @ParameterizedTest
    @EnumSource(Difficulty.class)
    void aPurgeNeedsAThoughtInProportion(Difficulty difficulty) {
        for (Case each : cases(Topic.PURGE, difficulty)) {
            String possible = each.words("possible");
            switch (difficulty) {
                case STARTING -> assertThat(possible).isEqualTo("yes, as it hangs");
                case PRACTISED -> assertThat(possible).startsWith("yes");
                case EXPERIENCED -> assertThat(possible).isNotEmpty();
            }
        }
        if (difficulty == Difficulty.EXPERIENCED) {
            assertThat(cases(Topic.PURGE, difficulty))
                    .extracting(each -> each.words("possible"))
                    .contains("yes, as it hangs", "yes, after it is turned round", "no");
        }
    }

    @ParameterizedTest
    @EnumSource(Difficulty.class)
    void aStepIsWorthTakingAndGoesBothWays(Difficulty difficulty) {
        List<Case> cases = cases(Topic.NEXT_STEP, difficulty);
        for (Case each : cases) {
            double band = each.it()
                    .difference("tolerance around the target, either way")
                    .kelvins();
            assertThat(Math.abs(Math.abs(each.kelvins("deviation")) - band)).isGreaterThan(0.59);
            if (each.solved().containsKey("rest")) {
                assertThat(each.solved("rest", Double.class)).isGreaterThan(0.05);
            }
        }
        assertThat(cases).extracting(each -> each.words("direction")).contains("add", "take out");
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void whoBeginsNeedsEveryFigureAndMeetsNoHiddenGlide(Topic topic) {
        for (Case each : cases(topic, Difficulty.STARTING)) {
            assertThat(each.it().body()).doesNotContain("uncertainty", "0.4536", "453.59");
            if (topic != Topic.GLIDE && topic != Topic.FILL_LIMIT && topic != Topic.PURGE) {
                Lines lines = Lines.solving(HandSolver.curve(each.it().designation()));
                Temperature warm = Temperature.ofCelsius(30);
                Pressure dew = lines.dewPressure(warm);
                assertThat(warm.celsius() - lines.bubbleTemperature(dew).celsius())
                        .isLessThan(0.2);
            }
        }
    }
}
