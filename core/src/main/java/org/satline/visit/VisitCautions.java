package org.satline.visit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.satline.charge.Diagnosis;
import org.satline.quantity.GaugePressure;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;
import org.satline.safety.Cautions;
import org.satline.safety.Task;

/** Cautions for the safety group of the refrigerant, for what is done on the visit, and for the highest pressure met there. */
final class VisitCautions {
    private VisitCautions() {}

    static List<Caution> of(VisitInput input, Diagnosis diagnosis, List<PressureReadout> pressures) {
        Refrigerant refrigerant = input.system().refrigerant();
        Optional<GaugePressure> highest =
                pressures.stream().map(PressureReadout::gauge).max(Comparator.naturalOrder());
        List<Caution> cautions = new ArrayList<>();
        for (Task task : tasks(input, diagnosis)) {
            cautions.addAll(highest.map(pressure -> Cautions.forHandling(refrigerant, task, pressure))
                    .orElseGet(() -> Cautions.forHandling(refrigerant, task)));
        }
        return cautions.stream().distinct().toList();
    }

    private static Set<Task> tasks(VisitInput input, Diagnosis diagnosis) {
        Set<Task> tasks = EnumSet.of(Task.READING);
        input.cylinder().ifPresent(cylinder -> {
            tasks.add(Task.HOSE_PURGE);
            tasks.addAll(
                    cylinder.receives() ? EnumSet.of(Task.RECOVERY, Task.CYLINDER_FILLING) : EnumSet.of(Task.CHARGING));
        });
        if (diagnosis instanceof Diagnosis.Decided decided) {
            switch (decided.level()) {
                case LOW -> tasks.addAll(EnumSet.of(Task.LEAK_SEARCH, Task.CHARGING));
                case HIGH -> tasks.addAll(EnumSet.of(Task.RECOVERY, Task.CYLINDER_FILLING));
                case ON_TARGET -> {
                    // Nothing is moved, nothing to add.
                }
            }
        }
        return tasks;
    }
}
