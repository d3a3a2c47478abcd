package org.satline.audit.cause;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditCase.Expected;
import org.satline.audit.answer.Dimension;
import org.satline.audit.cause.LikelyCause.Kind;
import org.satline.audit.cause.Mistake.Code;

/** The mistakes that show in the pattern of the differences rather than in their amount. */
final class PatternMistakes {
    /** Rows whose cut digits differ from the rounded ones, so few of which may be chance (choice of this library, no source). */
    private static final int FEWEST_CUT = 8;

    /** Rows that must agree in the middle, and run away at an end (choice of this library, no source). */
    private static final int FEWEST_AGREEING = 6;

    private static final int FEWEST_RUNNING = 5;

    /** What a quadratic leaves of differences that a formula of higher order makes, as a share of them (choice of this library). */
    private static final double LEFT_OF_QUADRATIC = 0.05;

    private PatternMistakes() {}

    /** A pattern over all rows of one refrigerant. */
    static Optional<Trial> of(Trial.Rows rows) {
        return digitsCut(rows).or(() -> runsAway(rows));
    }

    private static Optional<Trial> digitsCut(Trial.Rows rows) {
        List<AuditCase> all = all(rows);
        int cut = 0;
        for (AuditCase row : all) {
            double answer = row.comparison().answer();
            double value = cut(row);
            if (Math.abs(answer - value) > row.rounding()) {
                return Optional.empty();
            }
            cut += Math.abs(rounded(row) - value) > row.rounding() ? 1 : 0;
        }
        if (cut < FEWEST_CUT) {
            return Optional.empty();
        }
        Hypothesis hypothesis = new Hypothesis(
                new Mistake(Kind.NUMBER_FORM, Code.DIGITS_CUT, List.of()),
                false,
                row -> Optional.of(new Expected(cut(row), 0)));
        return Optional.of(trial(hypothesis, rows, all.size(), Math.pow(2, -cut)));
    }

    private static BigDecimal ours(AuditCase row, RoundingMode mode) {
        int decimals = new BigDecimal(row.row().answer().strip()).scale();
        return new BigDecimal(row.comparison().ours()).setScale(decimals, mode);
    }

    private static double cut(AuditCase row) {
        return ours(row, RoundingMode.DOWN).doubleValue();
    }

    private static double rounded(AuditCase row) {
        return ours(row, RoundingMode.HALF_EVEN).doubleValue();
    }

    private static List<AuditCase> all(Trial.Rows rows) {
        List<AuditCase> all = new ArrayList<>(rows.left());
        all.addAll(rows.within());
        return all;
    }

    private static Trial trial(Hypothesis hypothesis, Trial.Rows rows, int speaking, double chance) {
        List<AuditCase> explained = (rows.left().isEmpty() ? rows.within() : rows.left())
                .stream()
                        .filter(AuditCase::isOdd)
                        .filter(row -> explains(hypothesis, row))
                        .toList();
        return new Trial(hypothesis, explained, explained.size(), speaking, 0, true, true, chance);
    }

    private static boolean explains(Hypothesis hypothesis, AuditCase row) {
        return hypothesis
                .expected(row)
                .filter(there ->
                        Math.abs(row.comparison().answer() - there.value()) <= there.width() + row.rounding() / 2)
                .isPresent();
    }

    /** One column whose rows agree in the middle, and beyond an edge lie the farther off the farther they are away. */
    private static Optional<Trial> runsAway(Trial.Rows rows) {
        Map<String, List<AuditCase>> columns = new LinkedHashMap<>();
        all(rows).stream()
                .sorted(Comparator.comparingDouble(
                                (AuditCase row) -> row.question().place())
                        .thenComparing(row -> row.row().id()))
                .forEach(row -> columns.computeIfAbsent(row.column(), key -> new ArrayList<>())
                        .add(row));
        if (columns.size() != 1) {
            return Optional.empty();
        }
        List<AuditCase> column = columns.values().iterator().next();
        int first = 0;
        int last = column.size() - 1;
        while (first <= last && !column.get(first).comparison().agrees()) {
            first++;
        }
        while (last >= first && !column.get(last).comparison().agrees()) {
            last--;
        }
        List<AuditCase> low = new ArrayList<>(column.subList(0, first));
        Collections.reverse(low);
        List<AuditCase> high = column.subList(last + 1, column.size());
        boolean middle = last - first + 1 >= FEWEST_AGREEING
                && column.subList(first, last + 1).stream()
                        .allMatch(row -> row.comparison().agrees());
        int running = Math.max(low.size(), high.size());
        if (!middle || running < FEWEST_RUNNING || !grows(low) || !grows(high) || !bendsMore(column)) {
            return Optional.empty();
        }
        Hypothesis hypothesis = new Hypothesis(
                new Mistake(Kind.FORMULA, Code.RUNS_AWAY, List.of()),
                true,
                row -> row.comparison().agrees()
                        ? Optional.empty()
                        : Optional.of(new Expected(row.comparison().answer(), 0)));
        double orders = 1;
        for (int i = 2; i <= running; i++) {
            orders /= i;
        }
        return Optional.of(trial(hypothesis, rows, column.size(), orders));
    }

    private static boolean grows(List<AuditCase> outward) {
        for (int i = 1; i < outward.size(); i++) {
            double here = outward.get(i).comparison().difference();
            double before = outward.get(i - 1).comparison().difference();
            double digits = outward.get(i).rounding() + outward.get(i - 1).rounding();
            if (!(Math.abs(here) > Math.abs(before) - digits && here * before > 0)) {
                return false;
            }
        }
        return true;
    }

    /** Where on its curve a row lies: steady in temperature is not steady in pressure. */
    private static double kelvins(AuditCase row) {
        boolean found = row.question().quantity().dimension() == Dimension.TEMPERATURE;
        return found ? row.ours() : row.question().place();
    }

    /** Whether the relative differences follow no quadratic: a steady drift does, a formula of higher order does not. */
    private static boolean bendsMore(List<AuditCase> column) {
        List<Evidence.Point> points = column.stream()
                .map(row -> {
                    double ours = row.comparison().ours();
                    // signed, so that nothing turns where a scale passes its zero
                    double scale = Math.abs(ours) > 0 ? ours : 1;
                    double difference = row.comparison().difference() / scale;
                    return new Evidence.Point(
                            "", kelvins(row), difference, difference, row.rounding() / Math.abs(scale));
                })
                .toList();
        double all = 0;
        double digits = 0;
        for (Evidence.Point point : points) {
            all += point.difference() * point.difference();
            digits += point.rounding() * point.rounding() / 3;
        }
        double left = Evidence.leftOfQuadratic(points);
        return left > LEFT_OF_QUADRATIC * LEFT_OF_QUADRATIC * all && left > 9 * digits;
    }
}
