package org.satline.fuzz;

import java.util.Locale;
import org.satline.filling.CylinderSpecification;

/** Marks of cylinders from any text: short, shown as they stand, and a portable tank by its own word alone. */
public final class StampTarget {
    private StampTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Target.refusesAtMost(() -> {
            CylinderSpecification mark = CylinderSpecification.parse(Target.text(bytes));
            String upper = mark.text().toUpperCase(Locale.ROOT);
            Target.require(
                    !mark.isPortableTank() || upper.contains("T50") || upper.contains("TANK"), "a tank by no word");
            mark.markedPressure().ifPresent(pressure -> Target.require(pressure.pascals() >= 0, "below zero"));
        });
    }
}
