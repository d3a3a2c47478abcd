package org.satline.certificate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.satline.saturation.MeasuredPoint;
import org.satline.saturation.PairUncertaintyFit;

/**
 * The pairs that stand out in the comparison with measured equilibria, set by set, and how well the stated uncertainty covers: all made
 * from the data.
 */
final class OutstandingPairs {
    private static final double NOTABLE = 0.02;

    private OutstandingPairs() {}

    static List<String> discussion() {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("### Pairs that stand out");
        lines.add("");
        lines.add(String.format(
                Locale.ROOT,
                "Pairs with a measured set that the model misses by more than %.0f %% rms in bubble pressure, with all their sets: paper, points, rms and mean of computed over"
                        + " measured. Points that entered a fit of this project are left out.",
                100 * NOTABLE));
        lines.add("");
        Map<String, Map<String, List<MeasuredPoint>>> byPair = MeasuredPoint.all().stream()
                .filter(p -> !p.entered())
                .collect(Collectors.groupingBy(
                        p -> p.pairName() + " (" + p.status().word() + ")",
                        TreeMap::new,
                        Collectors.groupingBy(MeasuredPoint::source, TreeMap::new, Collectors.toList())));
        byPair.forEach((pair, sets) -> {
            if (sets.values().stream().anyMatch(s -> rms(s) > NOTABLE)) {
                lines.add("- **" + pair + "**: "
                        + sets.entrySet().stream()
                                .map(e -> String.format(
                                        Locale.ROOT,
                                        "%s, %d points, %.2f %%, %+.2f %%",
                                        e.getKey(),
                                        e.getValue().size(),
                                        100 * rms(e.getValue()),
                                        100
                                                * e.getValue().stream()
                                                        .mapToDouble(MeasuredPoint::error)
                                                        .average()
                                                        .orElseThrow()))
                                .collect(Collectors.joining("; ")));
            }
        });
        return lines;
    }

    private static double rms(List<MeasuredPoint> points) {
        return Math.sqrt(points.stream()
                .mapToDouble(p -> p.error() * p.error())
                .average()
                .orElseThrow());
    }

    static List<String> coverage() {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("### How well the stated uncertainty covers");
        lines.add("");
        lines.add(String.format(
                Locale.ROOT,
                "Each measured set is held out in turn and its points compared with the share of the pair that all other sets give, %.1f %% of measurement scatter apart. Covered:"
                        + " within the standard uncertainty (k = 1) and twice that (k = 2), with the 95 %% interval of the latter, sets drawn anew.",
                100 * PairUncertaintyFit.SCATTER));
        lines.add("");
        lines.add("| class | points | sets | k = 1 | k = 2 | interval |");
        lines.add("|---|---|---|---|---|---|");
        for (PairUncertaintyFit.Coverage c : PairUncertaintyFit.crossValidation()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "| %s | %d | %d | %.0f %% | %.0f %% | %.0f to %.0f %% |",
                    c.name(),
                    c.points(),
                    c.sets(),
                    100 * c.once(),
                    100 * c.twice(),
                    100 * c.low(),
                    100 * c.high()));
        }
        return lines;
    }
}
