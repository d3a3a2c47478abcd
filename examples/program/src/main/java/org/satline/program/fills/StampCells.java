package org.satline.program.fills;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.program.file.CsvRow;
import org.satline.program.file.Shown;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;

/** Reads the stamps of a cylinder from a row. */
final class StampCells {
    private StampCells() {}

    static CylinderStamps read(CsvRow row) {
        CylinderStamps.Builder stamps =
                CylinderStamps.builder().tare(mass(row, "tare_kg")).waterCapacity(mass(row, "water_capacity_kg"));
        row.text("specification").map(CylinderSpecification::parse).ifPresent(stamps::specification);
        row.number("service_pressure_Pa_gauge").map(GaugePressure::ofPascals).ifPresent(stamps::servicePressure);
        row.number("test_pressure_Pa_gauge").map(GaugePressure::ofPascals).ifPresent(stamps::testPressure);
        row.text("flammable_mark").map(cell -> flag("flammable_mark", cell)).ifPresent(stamps::flammableMark);
        row.text("refillable").map(cell -> flag("refillable", cell)).ifPresent(stamps::refillable);
        if (row.text("retest_due").isPresent()) {
            stamps.retestDue(date(row, "retest_due"));
        }
        return stamps.build();
    }

    static LocalDate date(CsvRow row, String column) {
        String cell = row.required(column);
        try {
            return LocalDate.parse(cell);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    column + " " + Shown.quoted(cell) + " is no date; write year, month and day like 2026-07-14", e);
        }
    }

    private static Mass mass(CsvRow row, String column) {
        row.required(column);
        double kilograms = row.number(column).orElseThrow();
        if (!(kilograms > 0)) {
            throw new IllegalArgumentException(column + " " + kilograms + " kg is not above 0; read the collar again");
        }
        return Mass.ofKilograms(kilograms);
    }

    private static boolean flag(String column, String cell) {
        return switch (cell.toLowerCase(Locale.ROOT)) {
            case "true" -> true;
            case "false" -> false;
            default ->
                throw new IllegalArgumentException(
                        column + " " + Shown.quoted(cell) + " is not known; allowed: true, false");
        };
    }
}
