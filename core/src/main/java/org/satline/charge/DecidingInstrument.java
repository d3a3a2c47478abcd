package org.satline.charge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * Which better instrument would turn an undecided answer into a level. Immutable, thread-safe.
 *
 * @param origins the errors to make smaller, largest first; one where one is enough
 * @param largestShare standard uncertainty that they may have left, as a share of today's; in [0, 1)
 * @param text in words
 */
public record DecidingInstrument(List<String> origins, double largestShare, String text) {
    /** An instrument twenty times as good is not to be had: our choice. */
    private static final double LEAST_SHARE = 0.05;

    /** {@inheritDoc} */
    public DecidingInstrument {
        origins = List.copyOf(origins);
        Objects.requireNonNull(text, "text");
        if (!(largestShare >= 0 && largestShare < 1)) {
            throw new IllegalArgumentException("share " + largestShare + " is outside [0, 1)");
        }
    }

    static DecidingInstrument of(Deviation deviation, DecisionRule rule) {
        double needed = rule.neededUncertaintyK(deviation);
        List<Map.Entry<String, Double>> bySize =
                new ArrayList<>(deviation.budget().contributions().entrySet());
        bySize.sort(Comparator.comparingDouble((Map.Entry<String, Double> e) -> -Math.abs(e.getValue())));
        List<String> origins = new ArrayList<>();
        double whole = square(deviation.standardUncertaintyK());
        double taken = 0;
        double share = 0;
        for (Map.Entry<String, Double> each : bySize) {
            origins.add(each.getKey());
            taken += square(each.getValue());
            double rest = Math.max(0, whole - taken);
            share = taken > 0 ? Math.sqrt(Math.max(0, square(needed) - rest) / taken) : 0;
            // where instruments of one kind would have to be far too good, the next kind has to help
            if (share >= LEAST_SHARE) {
                break;
            }
        }
        share = Math.min(share, Math.nextDown(1.0));
        String names = String.join(" and ", origins);
        // rounded down, so that an instrument as good as the printed figure does decide
        String text = share < LEAST_SHARE
                ? "the reading lies on the edge of the tolerance, where no instrument decides it at a bearable price; largest doubt: "
                        + names
                : String.format(
                        Locale.ROOT,
                        "an instrument with at most %.0f %% of today's error of %s would decide it",
                        Math.floor(100 * share),
                        names);
        return new DecidingInstrument(origins, share, text);
    }

    private static double square(double x) {
        return x * x;
    }
}
