package org.satline.program.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.explanation.Figure;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.UnitSystem;

/**
 * Every answer of the key, computed anew from the printed question: parsed back from the sheet and solved with other code and the other
 * engine.
 *
 * <p>1000 seeds with the profile {@code exercises} ({@code -Dsatline.exercise.seeds=1000}), {@value #USUAL_SEEDS} otherwise; every seed
 * gives a rising sheet of all topics.
 */
class ExerciseAnswersTest {
    private static final int USUAL_SEEDS = 40;
    /**
     * The tables are certified to 1E-8 of a pressure and 1E-7 of a temperature and density; the slope in an uncertainty is taken over other
     * steps, which moves it by less than 1E-4 of itself. Beyond that only the rounding of the last printed digit is allowed.
     */
    private static final double CERTIFIED = 1e-4;

    private static final SheetMaker MAKER = new SheetMaker();

    @Test
    void everyAnswerFollowsFromThePrintedQuestion() {
        int seeds = Integer.getInteger("satline.exercise.seeds", USUAL_SEEDS);
        long figures = IntStream.rangeClosed(1, seeds)
                .parallel()
                .mapToLong(seed -> checked(MAKER.sheet(SheetOrder.usual(seed))))
                .sum();
        assertThat(figures).as("figures checked").isGreaterThan(seeds * 15L);
    }

    /** By hand from the printed rows and densities: what a careful student finds lies in the range that the key accepts. */
    @Test
    void whatAStudentReadsFromThePrintedTablesIsAccepted() {
        int seeds = Integer.getInteger("satline.exercise.seeds", USUAL_SEEDS);
        IntStream.rangeClosed(1, seeds).parallel().forEach(seed -> {
            ExerciseSheet sheet = MAKER.sheet(SheetOrder.usual(seed));
            List<PrintedExercise> printed = PrintedExercise.all(sheet);
            for (int i = 0; i < printed.size(); i++) {
                accepted(sheet.exercises().get(i), printed.get(i));
            }
        });
    }

    @Test
    void soInEveryGradeAndBothFamiliesOfUnitsByHand() {
        for (Difficulty difficulty : Difficulty.values()) {
            for (UnitSystem units : UnitSystem.values()) {
                ExerciseSheet sheet = MAKER.sheet(
                        new SheetOrder(2027, 36, Optional.of(difficulty), List.of(Topic.values()), Optional.of(units)));
                List<PrintedExercise> printed = PrintedExercise.all(sheet);
                for (int i = 0; i < printed.size(); i++) {
                    accepted(sheet.exercises().get(i), printed.get(i));
                }
            }
        }
    }

    /** An answer above the unrounded maximum fills a cylinder too full, so no range of accepted answers may reach beyond it. */
    @ParameterizedTest
    @EnumSource(
            value = Topic.class,
            names = {"FILL_LIMIT", "NEXT_STEP"})
    void noAcceptedAnswerIsAboveAMaximum(Topic topic) {
        // of the next step only who is experienced is asked how much
        Optional<Difficulty> difficulty =
                topic == Topic.NEXT_STEP ? Optional.of(Difficulty.EXPERIENCED) : Optional.empty();
        int seeds = Math.max(200, Integer.getInteger("satline.exercise.seeds", USUAL_SEEDS));
        Pattern accept = Pattern.compile("\\(accept [0-9.]+ to ([0-9.]+)\\)$");
        long maxima = IntStream.rangeClosed(1, seeds)
                .parallel()
                .mapToLong(seed -> {
                    ExerciseSheet sheet =
                            MAKER.sheet(new SheetOrder(seed, 6, difficulty, List.of(topic), Optional.empty()));
                    List<PrintedExercise> printed = PrintedExercise.all(sheet);
                    long found = 0;
                    for (int i = 0; i < printed.size(); i++) {
                        PrintedExercise it = printed.get(i);
                        Map<String, Object> exact =
                                HandSolver.solve(topic, it, Lines.solving(HandSolver.curve(it.designation())));
                        Map<String, Object> byHand = HandSolver.solve(topic, it, Lines.printed(it));
                        for (int k = 0; k < it.answers().size(); k++) {
                            Part part = sheet.exercises().get(i).parts().get(k);
                            Matcher range = accept.matcher(it.answers().get(k));
                            if (part.ask().contains("rounded down") && range.find()) {
                                String unit = ((Answer.Figure) part.answer()).unit();
                                double most = Math.min(
                                        in(Objects.requireNonNull(exact.get(part.name())), unit),
                                        in(Objects.requireNonNull(byHand.get(part.name())), unit));
                                // the tables are certified to 1E-7 of a density
                                assertThat(Double.parseDouble(range.group(1)))
                                        .as("seed %s, %s, %s: %s", seed, it.title(), part.name(), it.givens())
                                        .isLessThanOrEqualTo(most * (1 + 1e-7));
                                found++;
                            }
                        }
                    }
                    return found;
                })
                .sum();
        assertThat(maxima).as("maxima checked").isGreaterThan(seeds * (topic == Topic.NEXT_STEP ? 4L : 12L));
    }

    /** The step as the library derives it is in the key too: it must not name more than the cylinder of the question takes or gives. */
    @Test
    void noDerivedStepIsMoreThanTheCylinderAllows() {
        int seeds = Math.max(60, Integer.getInteger("satline.exercise.seeds", USUAL_SEEDS));
        Pattern amount = Pattern.compile("(?:add|take out) ([0-9.]+) (lb|oz) \\(([0-9.]+) (kg|g)\\)");
        IntStream.rangeClosed(1, seeds).parallel().forEach(seed -> {
            ExerciseSheet sheet = MAKER.sheet(new SheetOrder(
                    seed, 6, Optional.of(Difficulty.EXPERIENCED), List.of(Topic.NEXT_STEP), Optional.empty()));
            List<PrintedExercise> printed = PrintedExercise.all(sheet);
            for (int i = 0; i < printed.size(); i++) {
                PrintedExercise it = printed.get(i);
                // in the unit of the question
                double allowed = (Double) Objects.requireNonNull(
                        HandSolver.solve(Topic.NEXT_STEP, it, Lines.printed(it)).get("available"));
                Mass most = it.text("scale under the cylinder now").endsWith("lb")
                        ? Mass.ofPounds(allowed)
                        : Mass.ofKilograms(allowed);
                Figure step = sheet.exercises().get(i).derivation().get(0).result();
                Matcher printedStep = amount.matcher(((Figure.Word) step).value());
                assertThat(printedStep.find()).as(step.toString()).isTrue();
                // round-off of a difference of two weights
                assertThat(Double.parseDouble(printedStep.group(1)))
                        .isLessThanOrEqualTo(most.valueIn(printedStep.group(2)) + 1e-9);
                assertThat(Double.parseDouble(printedStep.group(3)))
                        .isLessThanOrEqualTo(most.valueIn(printedStep.group(4)) + 1e-9);
            }
        });
    }

    private static void accepted(Exercise exercise, PrintedExercise printed) {
        Map<String, Object> solved = HandSolver.solve(exercise.topic(), printed, Lines.printed(printed));
        for (int i = 0; i < exercise.parts().size(); i++) {
            Object found =
                    Objects.requireNonNull(solved.get(exercise.parts().get(i).name()));
            String answer = printed.answers().get(i);
            if (found instanceof String words) {
                assertThat(answer).startsWith(words);
                continue;
            }
            Answer.Figure figure = (Answer.Figure) exercise.parts().get(i).answer();
            double value = in(found, figure.unit());
            double digit = figure.printed().ulp().doubleValue();
            double low = figure.rounding() == RoundingMode.FLOOR ? 0 : -digit / 2; // what rounds to an accepted answer
            assertThat(value)
                    .as("%s, %s: %s", printed.title(), exercise.parts().get(i), printed.givens())
                    .isBetween(figure.lowest() + low - 1e-9, figure.highest() + low + digit + 1e-9);
        }
    }

    @Test
    void soInEveryGradeAndBothFamiliesOfUnits() {
        for (Difficulty difficulty : Difficulty.values()) {
            for (UnitSystem units : UnitSystem.values()) {
                SheetOrder order =
                        new SheetOrder(2026, 36, Optional.of(difficulty), List.of(Topic.values()), Optional.of(units));
                checked(MAKER.sheet(order));
            }
        }
    }

    /** Checks a sheet; returns how many numbers it held. */
    private static long checked(ExerciseSheet sheet) {
        List<PrintedExercise> printed = PrintedExercise.all(sheet);
        assertThat(printed).hasSameSizeAs(sheet.exercises());
        long figures = 0;
        for (int i = 0; i < printed.size(); i++) {
            figures += checked(sheet.order().seed(), sheet.exercises().get(i), printed.get(i));
        }
        return figures;
    }

    private static long checked(long seed, Exercise exercise, PrintedExercise printed) {
        Map<String, Object> solved =
                HandSolver.solve(exercise.topic(), printed, Lines.solving(HandSolver.curve(printed.designation())));
        assertThat(printed.answers()).hasSameSizeAs(exercise.parts());
        long figures = 0;
        for (int i = 0; i < exercise.parts().size(); i++) {
            Part part = exercise.parts().get(i);
            String answer = printed.answers().get(i);
            String what = "seed " + seed + ", " + printed.title() + ", " + part.name() + ": " + answer + "; "
                    + printed.givens();
            Object expected = Objects.requireNonNull(solved.get(part.name()), what);
            if (expected instanceof String words) {
                assertThat(answer).as(what).startsWith(words);
            } else {
                compare(what, answer, expected, ((Answer.Figure) part.answer()).rounding());
                figures++;
            }
        }
        return figures;
    }

    private static void compare(String what, String answer, Object expected, RoundingMode rounding) {
        String[] words = answer.replaceAll(" \\(accept .*\\)$", "").split(" ", 2);
        BigDecimal shown = new BigDecimal(words[0]);
        double value = in(expected, words[1]);
        double digit = shown.ulp().doubleValue();
        double difference = value - shown.doubleValue();
        double slack = CERTIFIED * Math.max(1, Math.abs(value) / 100);
        if (rounding == RoundingMode.FLOOR) {
            assertThat(difference).as(what + ", by hand " + value).isBetween(-slack, digit + slack);
        } else {
            assertThat(Math.abs(difference)).as(what + ", by hand " + value).isLessThanOrEqualTo(digit / 2 + slack);
        }
    }

    private static double in(Object expected, String unit) {
        if (expected instanceof Temperature temperature) {
            return temperature.valueIn(unit);
        }
        if (expected instanceof TemperatureDifference difference) {
            return difference.valueIn(unit);
        }
        if (expected instanceof Pressure pressure) {
            return pressure.valueIn(unit);
        }
        if (expected instanceof PressureDifference difference) {
            return difference.valueIn(unit);
        }
        return expected instanceof Mass mass ? mass.valueIn(unit) : (Double) expected;
    }
}
