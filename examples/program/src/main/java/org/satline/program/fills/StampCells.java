package org.satline.program.fills;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.Stamp;
import org.satline.program.file.CsvRow;
import org.satline.program.file.Shown;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;

/** Reads the stamps of a cylinder from a row. */
final class StampCells {
    private StampCells() {}

    static CylinderStamps read(CsvRow row) {
        Map<Stamp, Object> stamps = new EnumMap<>(Stamp.class);
        stamps.put(Stamp.TARE, mass(row, "tare_kg"));
        stamps.put(Stamp.WATER_CAPACITY, mass(row, "water_capacity_kg"));
        row.text("specification")
                .map(CylinderSpecification::parse)
                .ifPresent(mark -> stamps.put(Stamp.SPECIFICATION, mark));
        row.number("service_pressure_Pa_gauge")
                .ifPresent(pascals -> stamps.put(Stamp.SERVICE_PRESSURE, GaugePressure.ofPascals(pascals)));
        row.number("test_pressure_Pa_gauge")
                .ifPresent(pascals -> stamps.put(Stamp.TEST_PRESSURE, GaugePressure.ofPascals(pascals)));
        row.text("flammable_mark").ifPresent(cell -> stamps.put(Stamp.FLAMMABLE_MARK, flag("flammable_mark", cell)));
        row.text("refillable").ifPresent(cell -> stamps.put(Stamp.REFILLABLE, flag("refillable", cell)));
        if (row.text("retest_due").isPresent()) {
            stamps.put(Stamp.RETEST_DUE, date(row, "retest_due"));
        }
        return new CylinderStamps(stamps);
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
