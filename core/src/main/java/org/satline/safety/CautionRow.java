package org.satline.safety;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.satline.refrigerant.SafetyGroup;
import org.satline.resource.CsvResource;

/**
 * One row of the data file: a caution and the conditions under which it is given. An empty set is no condition.
 *
 * @param groups safety groups
 * @param unknownGroup whether the row is only for refrigerants without a group on record
 * @param tasks tasks
 * @param substances designations, any of which must be in the refrigerant
 * @param elements symbols, any of which must be in a formula; an unknown formula has them all
 * @param only designations, one of which the refrigerant itself must have
 * @param except designations, none of which the refrigerant itself may have
 * @param asksForPressure whether the row is given only where a pressure is stated
 * @param fromKilopascals lowest gauge pressure, kPa, included
 * @param toKilopascals highest gauge pressure, kPa, excluded
 * @param caution what is said
 */
record CautionRow(
        Set<SafetyGroup> groups,
        boolean unknownGroup,
        Set<Task> tasks,
        List<String> substances,
        Set<String> elements,
        List<String> only,
        List<String> except,
        boolean asksForPressure,
        double fromKilopascals,
        double toKilopascals,
        Caution caution) {
    private static final String UNKNOWN = "unknown";

    static List<CautionRow> readAll() {
        List<CautionRow> rows = new ArrayList<>();
        for (CsvResource.Row row : CsvResource.read(
                        CautionRow.class,
                        "cautions.csv",
                        "safety_groups",
                        "tasks",
                        "components",
                        "elements",
                        "refrigerants",
                        "not_refrigerants",
                        "from_kPa_gauge",
                        "to_kPa_gauge",
                        "id",
                        "basis")
                .rows()) {
            boolean unknown = UNKNOWN.equals(row.cell("safety_groups"));
            rows.add(new CautionRow(
                    unknown ? Set.of() : names(SafetyGroup.class, row, "safety_groups"),
                    unknown,
                    names(Task.class, row, "tasks"),
                    words(row.cell("components")),
                    Set.copyOf(words(row.cell("elements"))),
                    words(row.cell("refrigerants")),
                    words(row.cell("not_refrigerants")),
                    !(row.isEmpty("from_kPa_gauge") && row.isEmpty("to_kPa_gauge")),
                    row.optionalNumber("from_kPa_gauge").orElse(Double.NEGATIVE_INFINITY),
                    row.optionalNumber("to_kPa_gauge").orElse(Double.POSITIVE_INFINITY),
                    new Caution(row.text("id"), row.text("basis"))));
        }
        return List.copyOf(rows);
    }

    boolean isFor(Handled handled) {
        return isFor(handled.group())
                && (substances.isEmpty() || handled.substances().stream().anyMatch(substances::contains))
                && (elements.isEmpty() || handled.containsAnyOf(elements))
                && (only.isEmpty() || only.contains(handled.designation()))
                && !except.contains(handled.designation());
    }

    /** A refrigerant without a group gets the rows of all groups. */
    private boolean isFor(Optional<SafetyGroup> group) {
        if (unknownGroup) {
            return group.isEmpty();
        }
        return groups.isEmpty() || group.isEmpty() || groups.contains(group.get());
    }

    boolean isFor(Task task) {
        return tasks.isEmpty() || tasks.contains(task);
    }

    boolean holdsAt(double kilopascals) {
        return kilopascals >= fromKilopascals && kilopascals < toKilopascals;
    }

    private static <E extends Enum<E>> Set<E> names(Class<E> type, CsvResource.Row row, String column) {
        EnumSet<E> names = EnumSet.noneOf(type);
        for (String word : words(row.cell(column))) {
            try {
                names.add(Enum.valueOf(type, word));
            } catch (IllegalArgumentException e) {
                throw row.fault(column + " \"" + word + "\" is not known; expected some of " + EnumSet.allOf(type));
            }
        }
        return names;
    }

    private static List<String> words(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split(" ", -1));
    }
}
