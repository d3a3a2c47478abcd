package org.satline.program.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.satline.program.exercise.PrintedSum.Interval;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;
import org.satline.wording.StepText;

/**
 * The working of every key, step by step from its printed numbers: each result is what the numbers before it come to, within their last
 * digits. As many seeds as {@link ExerciseAnswersTest} takes.
 */
class PrintedWorkingTest {
    private static final int USUAL_SEEDS = 40;
    private static final Pattern LOOKUP = Pattern.compile("(R-\\S+) at (-?[0-9.]+) (\\S+)");
    private static final Pattern RESULT = Pattern.compile("(-?[0-9.]+(?: kPa gauge| [A-Za-z0-9/]+)?).*");
    private static final SheetMaker MAKER = new SheetMaker();

    private final Map<Topic, AtomicInteger> evaluated = new ConcurrentHashMap<>();
    private final AtomicInteger steps = new AtomicInteger();

    @Test
    void everyStepIsWhatItsPrintedNumbersComeTo() {
        int seeds = Integer.getInteger("satline.exercise.seeds", USUAL_SEEDS);
        IntStream.rangeClosed(1, seeds)
                .parallel()
                .forEach(seed -> MAKER.sheet(SheetOrder.usual(seed))
                        .exercises()
                        .forEach(exercise -> exercise.working().forEach(step -> check(seed, exercise.topic(), step))));
        assertThat(evaluated).containsOnlyKeys(Topic.values());
        int sums = evaluated.values().stream().mapToInt(AtomicInteger::get).sum();
        assertThat(sums).as("of %d steps", steps.get()).isGreaterThan(steps.get() * 4 / 5);
    }

    @Test
    void aWrongSumIsNoticed() {
        Interval sum = PrintedSum.of("(5.3 K - 1.5 K) / 0.230 kg").orElseThrow();
        assertThat(sum.meets(PrintedSum.of("16.52 K/kg").orElseThrow())).isTrue();
        assertThat(sum.meets(PrintedSum.of("17.52 K/kg").orElseThrow())).isFalse();
        assertThat(PrintedSum.of("low side below atmosphere")).isEmpty();
    }

    private void check(int seed, Topic topic, StepText step) {
        steps.incrementAndGet();
        String numbers = String.join(", ", step.given());
        Matcher printed = RESULT.matcher(step.result());
        Optional<Interval> result = printed.matches()
                ? PrintedSum.of(printed.group(1)).map(PrintedWorkingTest::orRoundedDown)
                : Optional.empty();
        Optional<Interval> sum = value(step, numbers);
        if (result.isPresent() && sum.isPresent()) {
            evaluated.computeIfAbsent(topic, key -> new AtomicInteger()).incrementAndGet();
            Interval found = step.result().endsWith(" out")
                    ? new Interval(-sum.get().high(), -sum.get().low())
                    : sum.get();
            assertThat(found.meets(result.get()))
                    .as("seed %d, %s, %s: %s => %s, not %s", seed, topic, step.name(), numbers, step.result(), found)
                    .isTrue();
        }
    }

    /** A limit is rounded down: it stands for what lies up to a whole digit above it. */
    private static Interval orRoundedDown(Interval printed) {
        return new Interval(printed.low(), printed.high() + (printed.high() - printed.low()) / 2);
    }

    private static Optional<Interval> value(StepText step, String numbers) {
        Matcher lookup = LOOKUP.matcher(numbers);
        if (lookup.matches()) {
            SaturationCurve curve = HandSolver.curve(lookup.group(1));
            BigDecimal printed = new BigDecimal(lookup.group(2));
            double half = printed.ulp().doubleValue() / 2;
            double one = looked(curve, step, printed.doubleValue() - half, lookup.group(3));
            double other = looked(curve, step, printed.doubleValue() + half, lookup.group(3));
            return Optional.of(new Interval(one, other));
        }
        // such as a share of the rest, or a limit: two numbers with words between
        return PrintedSum.of(
                switch (step.formula()) {
                    case "d/K = d/degF / 1.8" -> numbers.replace(" degF", "") + " / 1.8";
                    case "d/degF = 1.8 d/K" -> numbers.replace(" K", "") + " x 1.8";
                    case "t/degC = (t/degF - 32) / 1.8" -> "(" + numbers + " - 32) / 1.8";
                    case "t/degF = 1.8 t/degC + 32" -> numbers + " x 1.8 + 32";
                    default -> numbers;
                });
    }

    /** Bubble or dew temperature in the unit of the result, or the pressure at a temperature in Pa. */
    private static double looked(SaturationCurve curve, StepText step, double value, String unit) {
        boolean us = step.result().endsWith("degF");
        if (unit.startsWith("deg")) {
            Temperature at = unit.equals("degF") ? Temperature.ofFahrenheit(value) : Temperature.ofCelsius(value);
            return (step.formula().contains("dew") ? curve.dewPressure(at) : curve.bubblePressure(at)).pascals();
        }
        Pressure at = unit.equals("psia") ? Pressure.ofPsia(value) : Pressure.ofKilopascals(value);
        Temperature found = step.formula().contains("dew") ? curve.dewTemperature(at) : curve.bubbleTemperature(at);
        return us ? found.fahrenheit() : found.celsius();
    }
}
