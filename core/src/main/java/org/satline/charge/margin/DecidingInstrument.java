package org.satline.charge.margin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.satline.quantity.Parts;

/**
 * Which better instrument would turn an undecided answer into a level. Immutable, thread-safe.
 *
 * @param origins the errors to make smaller, largest first; one where one is enough
 * @param largestShare standard uncertainty that they may have left, as a share of today's; in [0, 1)
 */
public record DecidingInstrument(List<String> origins, double largestShare) {
    /** An instrument twenty times as good is not to be had: our choice. */
    private static final double LEAST_SHARE = 0.05;

    /** {@inheritDoc} */
    public DecidingInstrument {
        origins = Parts.list("origins", origins);
        if (!(largestShare >= 0 && largestShare < 1)) {
            throw new IllegalArgumentException("share " + largestShare + " is outside [0, 1)");
        }
    }

    /**
     * Finds what would decide.
     *
     * @param deviation measured less target, undecided by the rule
     * @param rule when a probability is enough
     * @return the instruments
     */
    public static DecidingInstrument of(Deviation deviation, DecisionRule rule) {
        Parts.required("deviation rule", deviation, rule);
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
        return new DecidingInstrument(origins, share);
    }

    /**
     * Tells whether such an instrument is to be had at a bearable price.
     *
     * @return false where the reading lies on the edge of the tolerance
     */
    public boolean attainable() {
        return largestShare >= LEAST_SHARE;
    }

    private static double square(double x) {
        return x * x;
    }
}
