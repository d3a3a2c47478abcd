package org.satline.audit.cause;

import java.util.ArrayList;
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

    private RowMistakes() {}

    /**
     * Makes them.
     *
     * @param rows rows of one refrigerant
     */
    static List<Hypothesis> of(List<AuditCase> rows) {
        Map<String, Map<Double, Integer>> numbers = new HashMap<>();
        for (AuditCase row : rows) {
            numbers.computeIfAbsent(row.column(), key -> new HashMap<>())
                    .merge(row.comparison().answer(), 1, Integer::sum);
        }
        List<Hypothesis> found = new ArrayList<>();
        found.add(shifted(Code.ROW_BEFORE, Neighbours::before));
        found.add(shifted(Code.ROW_AFTER, Neighbours::after));
        numbers.forEach((column, counts) -> counts.entrySet().stream()
                .max(Map.Entry.<Double, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .filter(most -> most.getValue() >= FEWEST_STUCK)
                .ifPresent(most -> found.add(stuck(column, most.getKey()))));
        return found;
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
