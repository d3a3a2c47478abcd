package org.satline.measurement;

import java.util.List;
import java.util.Locale;
import org.satline.quantity.Parts;

/**
 * Decides from a series of readings whether a quantity has settled: over the last window, the slope of the straight line fitted to
 * the readings and their spread about it must both be small. Immutable, thread-safe.
 *
 * <p>Basis: the moving-window steady-state detectors of rule-based fault detection, Rossi and Braun 1997, HVAC&amp;R Research 3(1):19-37
 * (slope and variance in a window), and Kim, Yoon, Domanski and Payne 2008, International Journal of Refrigeration 31:790-799 (moving
 * window); both from memory. The default figures of {@link #forLineTemperatures()} are ours: half of the 3 degF tolerance band
 * may not be crossed in a quarter of an hour.
 *
 * @param windowSeconds length of the window, s; above 0
 * @param largestSlopePerMinute largest settled slope, units per minute; above 0
 * @param largestSpread largest settled standard deviation about the line, units; above 0
 * @param fewestReadings readings needed in the window; at least 3
 */
public record SettlingTest(
        double windowSeconds, double largestSlopePerMinute, double largestSpread, int fewestReadings) {
    /** {@inheritDoc} */
    public SettlingTest {
        if (!(windowSeconds > 0 && largestSlopePerMinute > 0 && largestSpread > 0 && windowSeconds < 1e9)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "settling window %s s, slope %s per minute and spread %s must all be above 0",
                    windowSeconds,
                    largestSlopePerMinute,
                    largestSpread));
        }
        if (fewestReadings < 3) {
            throw new IllegalArgumentException(
                    "a slope and a spread need 3 readings or more in the window, got " + fewestReadings);
        }
    }

    /**
     * One reading of a series.
     *
     * @param seconds time since any fixed instant, s
     * @param value the reading
     */
    public record Sample(double seconds, double value) {
        /** {@inheritDoc} */
        public Sample {
            if (!(Double.isFinite(seconds) && Double.isFinite(value))) {
                throw new IllegalArgumentException("reading " + value + " at " + seconds + " s is not finite");
            }
        }
    }

    /** What the test found. */
    public sealed interface Outcome {}

    /**
     * The quantity has settled.
     *
     * @param mean mean of the window, units
     * @param slopePerMinute fitted slope, units per minute
     * @param spread standard deviation about the line, units
     */
    public record Settled(double mean, double slopePerMinute, double spread) implements Outcome {
        /** {@inheritDoc} */
        public Settled {
            Parts.numbers("mean slopePerMinute spread", mean, slopePerMinute, spread);
        }
    }

    /**
     * The quantity still moves.
     *
     * @param slopePerMinute fitted slope, units per minute
     * @param spread standard deviation about the line, units
     */
    public record Moving(double slopePerMinute, double spread) implements Outcome {
        /** {@inheritDoc} */
        public Moving {
            Parts.numbers("slopePerMinute spread", slopePerMinute, spread);
        }
    }

    /**
     * The series stands still, but not at the value that was read.
     *
     * @param difference its mean less the value that was read, units
     * @param limit the largest difference that the instruments allow, units
     */
    public record Contradicted(double difference, double limit) implements Outcome {
        /** {@inheritDoc} */
        public Contradicted {
            Parts.numbers("difference limit", difference, limit);
        }
    }

    /**
     * The series does not fill the window.
     *
     * @param windowSeconds the window, s
     * @param readings readings in it
     * @param fewest how many are needed
     */
    public record TooShort(double windowSeconds, int readings, int fewest) implements Outcome {
        /** {@inheritDoc} */
        public TooShort {
            Parts.numbers("windowSeconds", windowSeconds);
        }
    }

    /**
     * The test for superheat or subcooling in kelvins: 5 minutes, 0.06 K per minute, 0.3 K, five readings.
     *
     * @return the test
     */
    public static SettlingTest forLineTemperatures() {
        return new SettlingTest(300, 0.06, 0.3, 5);
    }

    /**
     * Applies the test to the end of a series.
     *
     * @param series readings in the order of time
     * @return what was found
     * @throws IllegalArgumentException if the times do not rise
     */
    public Outcome apply(List<Sample> series) {
        for (int i = 1; i < series.size(); i++) {
            if (!(series.get(i).seconds() > series.get(i - 1).seconds())) {
                throw new IllegalArgumentException("reading " + (i + 1) + " of the series, at "
                        + series.get(i).seconds() + " s, is not later than the one before it");
            }
        }
        if (series.isEmpty() || spanSeconds(series) < windowSeconds) {
            return new TooShort(windowSeconds, series.size(), fewestReadings);
        }
        double from = series.get(series.size() - 1).seconds() - windowSeconds;
        List<Sample> window =
                series.stream().filter(sample -> sample.seconds() >= from).toList();
        if (window.size() < fewestReadings) {
            return new TooShort(windowSeconds, window.size(), fewestReadings);
        }
        return judge(window);
    }

    private Outcome judge(List<Sample> window) {
        double n = window.size();
        double meanTime = window.stream().mapToDouble(Sample::seconds).average().orElseThrow();
        double mean = window.stream().mapToDouble(Sample::value).average().orElseThrow();
        double timeSquares = 0;
        double products = 0;
        for (Sample sample : window) {
            timeSquares += (sample.seconds() - meanTime) * (sample.seconds() - meanTime);
            products += (sample.seconds() - meanTime) * (sample.value() - mean);
        }
        double slope = products / timeSquares;
        double squares = 0;
        for (Sample sample : window) {
            double rest = sample.value() - mean - slope * (sample.seconds() - meanTime);
            squares += rest * rest;
        }
        double spread = Math.sqrt(squares / (n - 2));
        double perMinute = slope * 60;
        return Math.abs(perMinute) <= largestSlopePerMinute && spread <= largestSpread
                ? new Settled(mean, perMinute, spread)
                : new Moving(perMinute, spread);
    }

    private static double spanSeconds(List<Sample> series) {
        return series.get(series.size() - 1).seconds() - series.get(0).seconds();
    }
}
