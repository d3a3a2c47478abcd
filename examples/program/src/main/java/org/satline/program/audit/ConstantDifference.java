package org.satline.program.audit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.satline.audit.AuditOutcome.Compared;
import org.satline.audit.AuditReport;

/**
 * Answers that all lie the same amount above or below ours: no mistake that has a name, yet hardly a coincidence.
 *
 * @param refrigerant designation
 * @param quantity what was asked
 * @param unit unit of the answers
 * @param difference answer less ours, middle of least and largest
 * @param rows how many rows, those within tolerance included: they must show the difference as well
 */
public record ConstantDifference(String refrigerant, String quantity, String unit, double difference, int rows) {
    private static final int FEWEST_ROWS = 3;

    /** Differences this close together count as one, as a share of them (choice of this program, no source). */
    private static final double LARGEST_SPREAD = 0.1;

    /** Largest chance that differences as scattered as they are large lie so close together (choice of this program, no source). */
    private static final double LARGEST_CHANCE = 1e-3;

    /** What binary arithmetic adds to the spread of differences that differ by one printed digit. */
    private static final double DUST = 1e-6;

    /**
     * Finds those of refrigerants for which no cause was found.
     *
     * @param report an audit
     * @return one for each refrigerant, quantity and unit that has it
     */
    public static List<ConstantDifference> of(AuditReport report) {
        Set<String> explained = ConstantRatio.explained(report);
        Map<String, List<Compared>> groups = new TreeMap<>();
        report.outcomes().stream()
                .filter(Compared.class::isInstance)
                .map(Compared.class::cast)
                .filter(row -> !explained.contains(row.designation()))
                .forEach(row -> groups.computeIfAbsent(ConstantRatio.group(row), key -> new ArrayList<>())
                        .add(row));
        List<ConstantDifference> found = new ArrayList<>();
        groups.values().forEach(rows -> of(rows).ifPresent(found::add));
        return found;
    }

    private static Optional<ConstantDifference> of(List<Compared> rows) {
        long outside = rows.stream().filter(row -> !row.within()).count();
        // the same question asked again is no further evidence
        int states = (int)
                rows.stream().map(row -> row.comparison().ours()).distinct().count();
        if (outside < FEWEST_ROWS || states < FEWEST_ROWS) {
            return Optional.empty();
        }
        DoubleSummaryStatistics differences =
                rows.stream().mapToDouble(row -> row.comparison().difference()).summaryStatistics();
        double middle = (differences.getMin() + differences.getMax()) / 2;
        double digit =
                rows.stream().mapToDouble(ConstantDifference::digit).max().orElse(0);
        double spread = Math.max(digit, differences.getMax() - differences.getMin());
        boolean alike = spread <= Math.max(LARGEST_SPREAD * Math.abs(middle), (1 + DUST) * digit);
        // that all of them fall into one window of this width, were each as likely anywhere between zero and there
        boolean rare = states * Math.pow(spread / Math.abs(middle), states - 1.0) <= LARGEST_CHANCE;
        Compared first = rows.get(0);
        return alike && rare && !ratherARatio(rows, spread / Math.abs(middle))
                ? Optional.of(new ConstantDifference(
                        first.designation(),
                        first.row().quantity(),
                        first.comparison().unit(),
                        middle,
                        rows.size()))
                : Optional.empty();
    }

    /** Where states lie close together, a ratio makes nearly constant differences too: then whichever scatters less is the better word. */
    private static boolean ratherARatio(List<Compared> rows, double scatter) {
        if (!rows.stream().allMatch(ConstantRatio::hasZero)) {
            return false;
        }
        DoubleSummaryStatistics parts = rows.stream()
                .mapToDouble(
                        row -> row.comparison().difference() / row.comparison().ours())
                .summaryStatistics();
        double middle = (parts.getMin() + parts.getMax()) / 2;
        return (parts.getMax() - parts.getMin()) <= scatter * Math.abs(middle);
    }

    private static double digit(Compared row) {
        return new BigDecimal(row.row().answer().strip()).ulp().doubleValue();
    }
}
