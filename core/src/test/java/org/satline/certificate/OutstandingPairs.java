package org.satline.certificate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.satline.saturation.MeasuredPoint;
import org.satline.saturation.MeasuredSet;
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
                "Pairs with a measured set that the model misses by more than %.0f %% rms in bubble pressure, with"
                        + " all their sets: paper, points, rms and mean of computed over"
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
        double[] scatters = MeasuredSet.all().stream()
                .filter(s -> !s.entered())
                .mapToDouble(MeasuredSet::scatter)
                .toArray();
        lines.add("### How well the stated uncertainty covers");
        lines.add("");
        lines.add(String.format(
                Locale.ROOT,
                "Each paper is held out in turn with all its sets, and its points compared with the share of the"
                        + " pair that all other papers give together with the"
                        + " measurement's own: the scatter of the set held out (middle of all sets %.2f %%, at most"
                        + " %.2f %%) and a bias of %.2f times that, by restricted maximum"
                        + " likelihood from the pairs that several papers measured. Covered: within the standard"
                        + " uncertainty (k = 1) and twice that (k = 2), with the 95 %% interval of"
                        + " the latter, papers drawn anew.",
                100 * new Median().evaluate(scatters),
                100 * Arrays.stream(scatters).max().orElseThrow(),
                PairUncertaintyFit.biasOverScatter()));
        lines.add("");
        lines.add("| class | points | papers | k = 1 | k = 2 | interval |");
        lines.add("|---|---|---|---|---|---|");
        for (PairUncertaintyFit.Coverage c : PairUncertaintyFit.crossValidation()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "| %s | %d | %d | %.0f %% | %.0f %% | %.0f to %.0f %% |",
                    c.name(),
                    c.points(),
                    c.sources(),
                    100 * c.once(),
                    100 * c.twice(),
                    100 * c.low(),
                    100 * c.high()));
        }
        return lines;
    }
}
