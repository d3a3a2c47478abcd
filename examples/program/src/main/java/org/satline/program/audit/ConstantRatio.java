package org.satline.program.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.satline.audit.AuditOutcome.Compared;
import org.satline.audit.AuditReport;
import org.satline.audit.LikelyCause;

/**
 * Answers outside that are all the same multiple of ours: no mistake that has a name, yet hardly a coincidence.
 *
 * @param refrigerant designation
 * @param quantity what was asked
 * @param unit unit of the answers
 * @param ratio answer over ours, middle of least and largest
 * @param rows how many rows
 */
public record ConstantRatio(String refrigerant, String quantity, String unit, double ratio, int rows) {
    private static final int FEWEST_ROWS = 3;

    /** Ratios this close together count as one (choice of this program, no source). */
    private static final double LARGEST_SPREAD = 1e-3;

    /** Quantities that count from a true zero in every unit but a gauge one, so that a ratio means something. */
    private static final List<String> WITH_ZERO =
            List.of("pressure", "density", "heat_capacity", "speed_of_sound", "glide");

    private static final Pattern GAUGE = Pattern.compile("gauge|vacuum|psig|(bar|Pa)g");

    /**
     * Finds those of refrigerants for which no cause was found.
     *
     * @param report an audit
     * @return one for each refrigerant, quantity and unit that has it
     */
    public static List<ConstantRatio> of(AuditReport report) {
        Set<String> explained = explained(report);
        Map<String, List<Compared>> groups = new TreeMap<>();
        report.outcomes().stream()
                .filter(Compared.class::isInstance)
                .map(Compared.class::cast)
                .filter(row -> !row.within() && !explained.contains(row.designation()) && hasZero(row))
                .forEach(row -> groups.computeIfAbsent(group(row), key -> new ArrayList<>())
                        .add(row));
        List<ConstantRatio> found = new ArrayList<>();
        for (List<Compared> rows : groups.values()) {
            double[] ratios = rows.stream()
                    .mapToDouble(
                            row -> row.comparison().answer() / row.comparison().ours())
                    .sorted()
                    .toArray();
            double least = ratios[0];
            double most = ratios[ratios.length - 1];
            if (ratios.length >= FEWEST_ROWS && most - least <= LARGEST_SPREAD * Math.abs(least)) {
                Compared first = rows.get(0);
                found.add(new ConstantRatio(
                        first.designation(),
                        first.row().quantity(),
                        first.comparison().unit(),
                        (least + most) / 2,
                        ratios.length));
            }
        }
        return found;
    }

    /** Designations of refrigerants for which a cause was found. */
    static Set<String> explained(AuditReport report) {
        return report.summary().causes().stream().map(LikelyCause::refrigerant).collect(Collectors.toSet());
    }

    static boolean hasZero(Compared row) {
        return WITH_ZERO.stream().anyMatch(row.row().quantity().strip()::endsWith)
                && !GAUGE.matcher(row.comparison().unit()).find();
    }

    /** Rows that may be held against one another. */
    static String group(Compared row) {
        return row.designation()
                + '\n'
                + row.row().quantity()
                + '\n'
                + row.comparison().unit();
    }
}
