package org.satline.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.audit.AuditCase.Expected;
import org.satline.audit.LikelyCause.Kind;
import org.satline.audit.Mistake.Code;
import org.satline.explanation.Figure;

/** The mistakes that show only beside the other rows: answers one row off, and a number that stands everywhere. */
final class RowMistakes {
    private static final int FEWEST_STUCK = 3;

    private RowMistakes() {}

    /**
     * Makes them.
     *
     * @param rows rows of one refrigerant in the order of their file
     */
    static List<Hypothesis> of(List<AuditCase> rows) {
        Map<AuditCase, AuditCase> before = new IdentityHashMap<>();
        Map<AuditCase, AuditCase> after = new IdentityHashMap<>();
        Map<String, AuditCase> last = new HashMap<>();
        Map<String, Map<Double, Integer>> numbers = new HashMap<>();
        for (AuditCase row : rows) {
            AuditCase previous = last.put(column(row), row);
            if (previous != null) {
                before.put(row, previous);
                after.put(previous, row);
            }
            numbers.computeIfAbsent(column(row), key -> new HashMap<>())
                    .merge(row.comparison().answer(), 1, Integer::sum);
        }
        List<Hypothesis> found = new ArrayList<>();
        found.add(shifted(Code.ROW_BEFORE, before));
        found.add(shifted(Code.ROW_AFTER, after));
        numbers.forEach((column, counts) -> counts.entrySet().stream()
                .max(Map.Entry.<Double, Integer>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey()))
                .filter(most -> most.getValue() >= FEWEST_STUCK)
                .ifPresent(most -> found.add(stuck(column, most.getKey()))));
        return found;
    }

    private static String column(AuditCase row) {
        return row.question().quantity().label() + " " + row.comparison().unit();
    }

    private static Hypothesis shifted(Code code, Map<AuditCase, AuditCase> neighbours) {
        return new Hypothesis(
                new Mistake(Kind.PLACE_IN_TABLE, code, List.of()),
                false,
                row -> Optional.ofNullable(neighbours.get(row)).map(AuditCase::plain));
    }

    /** Rows that differ by less than their tolerances show nothing of it: the number itself is matched, to its digits. */
    private static Hypothesis stuck(String column, double number) {
        return new Hypothesis(
                new Mistake(Kind.PLACE_IN_TABLE, Code.STUCK, List.of(Figure.of("number", Numbers.plain(number)))),
                true,
                row -> column(row).equals(column)
                        ? Optional.of(new Expected(number, row.rounding()))
                        : Optional.empty());
    }
}
