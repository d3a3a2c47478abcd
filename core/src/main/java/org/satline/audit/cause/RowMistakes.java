package org.satline.audit.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditCase.Expected;
import org.satline.audit.answer.AuditCase.Neighbours;
import org.satline.audit.cause.LikelyCause.Kind;
import org.satline.audit.cause.Mistake.Code;
import org.satline.explanation.Figure;

/** The mistakes that show only beside the other rows: answers one row off, and a number that stands everywhere. */
final class RowMistakes {
    private static final int FEWEST_STUCK = 3;

    /** Numbers that are printed alike differ by one digit at most, and by little more where there is a drift in them. */
    private static final double MORE_THAN_DIGITS = 3;

    /** Answers that differ so little lie beside one another (choice of this library, no source). */
    private static final double BESIDE_DIGITS = 5;

    /** Of other answers outside, so many may lie beside the number, as a share of those that are it (choice of this library, no source). */
    private static final double FEW_BESIDE = 0.25;

    private RowMistakes() {}

    /**
     * Makes them.
     *
     * @param rows rows of one refrigerant
     */
    static List<Hypothesis> of(List<AuditCase> rows) {
        Map<String, Map<Double, List<AuditCase>>> numbers = new HashMap<>();
        for (AuditCase row : rows) {
            numbers.computeIfAbsent(row.column(), key -> new HashMap<>())
                    .computeIfAbsent(row.comparison().answer(), key -> new ArrayList<>())
                    .add(row);
        }
        List<Hypothesis> found = new ArrayList<>();
        found.add(shifted(Code.ROW_BEFORE, Neighbours::before));
        found.add(shifted(Code.ROW_AFTER, Neighbours::after));
        numbers.forEach((column, same) -> same.entrySet().stream()
                .filter(each -> each.getValue().size() >= FEWEST_STUCK && isStuck(each.getValue(), same))
                .max(Comparator.<Map.Entry<Double, List<AuditCase>>>comparingInt(
                                each -> each.getValue().size())
                        .thenComparing(Map.Entry.comparingByKey()))
                .ifPresent(most -> found.add(stuck(column, most.getKey()))));
        return found;
    }

    /**
     * Values that lie close together are printed alike by anyone, and so are answers that a drift keeps nearly level: a number that is
     * stuck differs from all others.
     */
    private static boolean isStuck(List<AuditCase> alike, Map<Double, List<AuditCase>> column) {
        double[] ours = alike.stream()
                .mapToDouble(row -> row.comparison().ours())
                .sorted()
                .toArray();
        double digit = 2 * alike.get(0).rounding();
        double number = alike.get(0).comparison().answer();
        int beside = column.entrySet().stream()
                        .filter(each -> Math.abs(each.getKey() - number) <= BESIDE_DIGITS * digit)
                        .mapToInt(each -> each.getValue().size())
                        .sum()
                - alike.size();
        return ours[ours.length - 1] - ours[0] > MORE_THAN_DIGITS * digit && beside < FEW_BESIDE * alike.size();
    }

    private static Hypothesis shifted(Code code, Function<Neighbours, Optional<Expected>> which) {
        return new Hypothesis(
                new Mistake(Kind.PLACE_IN_TABLE, code, List.of()), false, row -> which.apply(row.neighbours()));
    }

    /** Rows that differ by less than their tolerances show nothing of it: the number itself is matched, to its digits. */
    private static Hypothesis stuck(String column, double number) {
        return new Hypothesis(
                new Mistake(Kind.PLACE_IN_TABLE, Code.STUCK, List.of(Figure.of("number", Numbers.plain(number)))),
                true,
                row -> row.column().equals(column)
                        ? Optional.of(new Expected(number, row.rounding()))
                        : Optional.empty());
    }
}
