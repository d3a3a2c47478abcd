package org.satline.equation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.ResourceFormatException;

/**
 * Reads the folder of one equation strictly: {@code equation.csv} (constants and source), {@code ideal-terms.csv} and
 * {@code residual-terms.csv}. Whatever is missing, unknown, doubled or absurd is an error that names file and line.
 */
final class PureEquationReader {
    static final String CONSTANTS = "equation.csv";
    static final String IDEAL_TERMS = "ideal-terms.csv";
    static final String RESIDUAL_TERMS = "residual-terms.csv";

    static final String CHECK_VALUES = "check-values.csv";

    private static final List<String> REQUIRED = List.of(
            "designation",
            "chemical_name",
            "cas",
            "molar_mass_kg_per_mol",
            "gas_constant_J_per_molK",
            "reducing_temperature_K",
            "reducing_density_mol_per_m3",
            "critical_temperature_K",
            "critical_pressure_Pa",
            "critical_density_mol_per_m3",
            "triple_temperature_K",
            "lowest_temperature_K",
            "highest_temperature_K",
            "highest_pressure_Pa",
            "acentric_factor",
            "authors",
            "title",
            "publication");
    private static final List<String> OPTIONAL = List.of("doi", "uncertainty", "note");
    private static final String[] IDEAL_COLUMNS = {"form", "n", "t", "theta"};
    private static final String[] RESIDUAL_COLUMNS = {"form", "n"};

    // far outside every substance: what lies beyond is a slip of the unit or of a digit
    private static final double LEAST = 1e-3;
    private static final double HIGHEST_TEMPERATURE = 1e4;
    private static final double HIGHEST_PRESSURE = 1e11;
    private static final double HIGHEST_DENSITY = 1e6;
    private static final double HIGHEST_MOLAR_MASS = 2;
    private static final double LOWEST_GAS_CONSTANT = 8.30;
    private static final double HIGHEST_GAS_CONSTANT = 8.33;

    private PureEquationReader() {}

    /** Folder that holds a substance: {@code R-1234ze(E)} is in {@code pure/r1234ze-e/}. */
    static String folder(String designation) {
        String name = designation.toLowerCase(Locale.ROOT).replaceFirst("-", "");
        return "pure/" + name.replace('(', '-').replace(")", "") + "/";
    }

    static String designationIn(String folder) {
        return designationIn(folder, EquationFiles.ofJar());
    }

    static String designationIn(String folder, EquationFiles files) {
        return constantsFile(folder, files).text("designation");
    }

    private static KeyedValues constantsFile(String folder, EquationFiles files) {
        return new KeyedValues(files.table(folder + CONSTANTS, "key", "value"), REQUIRED, OPTIONAL);
    }

    static PureEquation read(String designation) {
        return read(designation, folder(designation), EquationFiles.ofJar());
    }

    static PureEquation read(String designation, String folder, EquationFiles files) {
        KeyedValues values = constantsFile(folder, files);
        if (!values.text("designation").equals(designation)) {
            throw values.fault("designation", "is " + values.text("designation") + ", expected " + designation);
        }
        EquationSource source = new EquationSource(
                values.text("authors"),
                values.text("title"),
                values.text("publication"),
                values.optionalText("doi"),
                values.optionalText("uncertainty"),
                values.optionalText("note"));
        CsvResource residual = files.table(folder + RESIDUAL_TERMS, RESIDUAL_COLUMNS, TermRows.COLUMNS);
        if (residual.rows().isEmpty()) {
            throw new ResourceFormatException(residual.name(), 0, "has no terms");
        }
        return new PureEquation(
                constants(designation, values),
                source,
                idealGas(files.table(folder + IDEAL_TERMS, IDEAL_COLUMNS)),
                TermRows.read(residual.rows()));
    }

    private static PureConstants constants(String designation, KeyedValues values) {
        PureConstants constants = new PureConstants(
                designation,
                values.text("chemical_name"),
                values.number("molar_mass_kg_per_mol", LEAST, HIGHEST_MOLAR_MASS),
                values.number("gas_constant_J_per_molK", LOWEST_GAS_CONSTANT, HIGHEST_GAS_CONSTANT),
                temperature(values, "reducing_temperature_K"),
                density(values, "reducing_density_mol_per_m3"),
                temperature(values, "critical_temperature_K"),
                values.number("critical_pressure_Pa", LEAST, HIGHEST_PRESSURE),
                density(values, "critical_density_mol_per_m3"),
                temperature(values, "triple_temperature_K"),
                temperature(values, "lowest_temperature_K"),
                temperature(values, "highest_temperature_K"),
                values.number("highest_pressure_Pa", LEAST, HIGHEST_PRESSURE),
                values.number("acentric_factor", -1, 2));
        if (!(constants.saturationStart() < constants.criticalTemperature())) {
            throw values.fault(
                    "critical_temperature_K", "does not lie above the triple point and the lowest temperature");
        }
        if (!(constants.minTemperature() < constants.maxTemperature())) {
            throw values.fault("highest_temperature_K", "does not lie above the lowest temperature");
        }
        return constants;
    }

    private static double temperature(KeyedValues values, String key) {
        return values.number(key, LEAST, HIGHEST_TEMPERATURE);
    }

    private static double density(KeyedValues values, String key) {
        return values.number(key, LEAST, HIGHEST_DENSITY);
    }

    private static IdealGas idealGas(CsvResource table) {
        String[] single = {"constant", "linear", "logarithm"};
        double[] singles = new double[single.length];
        boolean[] found = new boolean[single.length];
        List<Row> powers = new ArrayList<>();
        List<Row> vibrations = new ArrayList<>();
        for (Row row : table.rows()) {
            String form = row.text("form");
            refuse(row, "t", !form.equals("power"));
            refuse(row, "theta", !form.equals("planck-einstein"));
            switch (form) {
                case "power" -> powers.add(row);
                case "planck-einstein" -> vibrations.add(row);
                default -> {
                    int i = List.of(single).indexOf(form);
                    if (i < 0) {
                        throw row.fault("form \"" + form
                                + "\" is not known; the forms are constant, linear, logarithm, power, planck-einstein");
                    }
                    if (found[i]) {
                        throw row.fault(form + " stands twice; leave one out");
                    }
                    found[i] = true;
                    singles[i] = row.number("n");
                }
            }
        }
        for (int i = 0; i < single.length; i++) {
            if (!found[i]) {
                throw new ResourceFormatException(table.name(), 0, single[i] + " is missing; add it");
            }
        }
        return new IdealGas(
                singles[0],
                singles[1],
                singles[2],
                column(powers, "n"),
                column(powers, "t"),
                column(vibrations, "n"),
                column(vibrations, "theta"));
    }

    private static void refuse(Row row, String column, boolean foreign) {
        if (foreign && !row.isEmpty(column)) {
            throw row.fault(column + " stands in a row of the form " + row.cell("form") + ", which has none");
        }
    }

    private static double[] column(List<Row> rows, String name) {
        return rows.stream().mapToDouble(row -> row.number(name)).toArray();
    }
}
