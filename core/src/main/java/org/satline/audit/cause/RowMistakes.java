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
                .filter(each -> each.getValue().size() >= FEWEST_STUCK && isStuck(each.getValue()))
                .max(Comparator.<Map.Entry<Double, List<AuditCase>>>comparingInt(
                                each -> each.getValue().size())
                        .thenComparing(Map.Entry.comparingByKey()))
                .ifPresent(most -> found.add(stuck(column, most.getKey()))));
        return found;
    }

    /** Values that lie close together are printed alike by anyone. */
    private static boolean isStuck(List<AuditCase> alike) {
        double[] ours = alike.stream()
                .mapToDouble(row -> row.comparison().ours())
                .sorted()
                .toArray();
        double digit = 2 * alike.get(0).rounding();
        return ours[ours.length - 1] - ours[0] > MORE_THAN_DIGITS * digit;
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
