package org.satline.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.quantity.GaugePressure;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.SafetyGroup;
import org.satline.resource.OnDemand;

/**
 * Finds the cautions for a refrigerant, a task and a pressure. Stateless, thread-safe.
 *
 * <p>Every answer ends with flames near an escape, eye and hand protection, ventilation, and the precedence of local codes and licensed
 * practice. A refrigerant without a safety group on record gets the cautions of all groups, and the first one says so. What heat turns a
 * vapour into depends on its elements, the ban on release on the refrigerant.
 */
public final class Cautions {
    private Cautions() {}

    /** Read when first asked for. */
    private static final OnDemand<List<CautionRow>> ROWS = new OnDemand<>() {
        @Override
        protected List<CautionRow> read() {
            return CautionRow.readAll();
        }
    };

    /**
     * Returns the cautions for handling a refrigerant.
     *
     * @param refrigerant what is handled
     * @param task what is done
     * @return cautions, those special to the refrigerant first
     */
    public static List<Caution> forHandling(Refrigerant refrigerant, Task task) {
        return matching(Handled.of(refrigerant), task, Optional.empty());
    }

    /**
     * Returns the cautions for handling a refrigerant at a pressure.
     *
     * @param refrigerant what is handled
     * @param task what is done
     * @param pressure gauge pressure of the part that is touched; the highest one where there are several
     * @return cautions, those special to the refrigerant first
     */
    public static List<Caution> forHandling(Refrigerant refrigerant, Task task, GaugePressure pressure) {
        return matching(Handled.of(refrigerant), task, Optional.of(pressure));
    }

    /**
     * Returns the cautions for handling a refrigerant of which only the safety group is known; those special to a substance are not among
     * them.
     *
     * @param group safety group
     * @param task what is done
     * @return cautions, those special to the group first
     */
    public static List<Caution> forHandling(SafetyGroup group, Task task) {
        return matching(Handled.of(group), task, Optional.empty());
    }

    /**
     * Returns the cautions that the pressure alone gives rise to.
     *
     * @param pressure gauge pressure of the part that is touched
     * @return cautions; never empty
     */
    public static List<Caution> forPressure(GaugePressure pressure) {
        Objects.requireNonNull(pressure, "pressure");
        return ROWS.get().stream()
                .filter(row -> row.asksForPressure() && row.holdsAt(pressure.kilopascals()))
                .map(CautionRow::caution)
                .toList();
    }

    private static List<Caution> matching(Handled handled, Task task, Optional<GaugePressure> pressure) {
        Objects.requireNonNull(task, "task");
        List<Caution> found = new ArrayList<>();
        for (CautionRow row : ROWS.get()) {
            boolean pressureHolds =
                    pressure.map(p -> row.holdsAt(p.kilopascals())).orElse(!row.asksForPressure());
            if (pressureHolds && row.isFor(handled) && row.isFor(task)) {
                found.add(row.caution());
            }
        }
        return List.copyOf(found);
    }
}
