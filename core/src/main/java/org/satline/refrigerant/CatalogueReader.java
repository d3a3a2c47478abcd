package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.GlobalWarmingPotential.Report;
import org.satline.resource.CsvResource;

/** Reads substances and blends from their resources. */
final class CatalogueReader {
    private CatalogueReader() {}

    static List<Refrigerant> read() {
        Map<String, Refrigerant> substances = new LinkedHashMap<>();
        CsvResource table = CsvResource.read(
                CatalogueReader.class,
                "substances.csv",
                "designation",
                "name",
                "formula",
                "cas",
                "molar_mass_g_per_mol",
                "normal_boiling_point_degC",
                "critical_temperature_degC",
                "critical_pressure_kPa",
                "safety_group",
                "odp",
                "gwp_ar4",
                "gwp_ar5",
                "gwp_ar6",
                "lfl_kg_per_m3",
                "source",
                "from_memory",
                "note");
        for (CsvResource.Row row : table.rows()) {
            Refrigerant substance = substance(row);
            if (substances.put(substance.designation(), substance) != null) {
                throw row.fault(substance.designation() + " stands twice; leave one out");
            }
        }
        List<Refrigerant> all = new ArrayList<>(substances.values());
        for (CsvResource.Row row : CsvResource.read(
                        CatalogueReader.class,
                        "blends.csv",
                        "designation",
                        "components",
                        "mass_percent",
                        "tolerances_mass_percent",
                        "safety_group",
                        "bubble_point_degC",
                        "dew_point_degC",
                        "azeotropic_temperature",
                        "molar_mass_published_g_per_mol",
                        "composition_confirmed",
                        "source",
                        "note")
                .rows()) {
            all.add(blend(row, substances));
        }
        return all;
    }

    private static Refrigerant substance(CsvResource.Row row) {
        List<GlobalWarmingPotential> gwp = new ArrayList<>();
        addGwp(row, "gwp_ar4", Report.AR4, gwp);
        addGwp(row, "gwp_ar5", Report.AR5, gwp);
        addGwp(row, "gwp_ar6", Report.AR6, gwp);
        PublishedFacts published = new PublishedFacts(
                celsius(row, "normal_boiling_point_degC"),
                Optional.empty(),
                Optional.empty(),
                celsius(row, "critical_temperature_degC"),
                row.isEmpty("critical_pressure_kPa")
                        ? Optional.empty()
                        : Optional.of(Pressure.ofKilopascals(row.number("critical_pressure_kPa"))),
                OptionalDouble.empty(),
                row.optionalNumber("odp"),
                row.isEmpty("lfl_kg_per_m3")
                        ? Optional.empty()
                        : Optional.of(Density.ofKilogramsPerCubicMetre(row.number("lfl_kg_per_m3"))),
                gwp,
                List.of());
        String memory = row.cell("from_memory");
        return Refrigerant.substance(
                row.text("designation"),
                row.text("name"),
                row.isEmpty("cas") ? Optional.empty() : Optional.of(row.cell("cas")),
                group(row),
                row.number("molar_mass_g_per_mol") / 1000,
                published,
                row.text("source") + (memory.isEmpty() ? "" : " (from memory: " + memory + ")"),
                row.cell("note"));
    }

    private static void addGwp(CsvResource.Row row, String column, Report report, List<GlobalWarmingPotential> gwp) {
        if (!row.isEmpty(column)) {
            gwp.add(new GlobalWarmingPotential(
                    row.number(column), report, "IPCC " + report + ", see source of the entry"));
        }
    }

    private static Refrigerant blend(CsvResource.Row row, Map<String, Refrigerant> substances) {
        String[] names = row.text("components").split("/", -1);
        Composition composition = null;
        List<MassTolerance> tolerances = List.of();
        if (!row.isEmpty("mass_percent")) {
            composition = Composition.ofMassFractions(fractions(row, names, substances));
            tolerances = tolerances(row, names.length);
        }
        PublishedFacts published = new PublishedFacts(
                Optional.empty(),
                celsius(row, "bubble_point_degC"),
                celsius(row, "dew_point_degC"),
                Optional.empty(),
                Optional.empty(),
                row.optionalNumber("molar_mass_published_g_per_mol"),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of(),
                tolerances);
        String name = composition == null ? String.join("/", names) : composition.toString();
        return Refrigerant.listedBlend(
                row.text("designation"),
                name,
                group(row),
                composition,
                published,
                row.text("source") + "; composition confirmed: " + row.text("composition_confirmed"),
                row.cell("note"));
    }

    private static Map<Refrigerant, Double> fractions(
            CsvResource.Row row, String[] names, Map<String, Refrigerant> substances) {
        String[] percents = row.text("mass_percent").split("/", -1);
        if (percents.length != names.length) {
            throw row.fault(percents.length + " percentages for " + names.length + " components");
        }
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        for (int i = 0; i < names.length; i++) {
            Refrigerant substance = substances.get(names[i]);
            if (substance == null) {
                throw row.fault("component " + names[i] + " is not among the substances; add it there");
            }
            fractions.put(substance, Double.parseDouble(percents[i]) / 100);
        }
        return fractions;
    }

    /** Cells of the form {@code -1.5 +0.5} separated by slashes. */
    private static List<MassTolerance> tolerances(CsvResource.Row row, int size) {
        if (row.isEmpty("tolerances_mass_percent")) {
            return List.of();
        }
        List<MassTolerance> tolerances = new ArrayList<>();
        for (String cell : row.cell("tolerances_mass_percent").split("/", -1)) {
            int plus = cell.indexOf(" +");
            if (plus < 0 || cell.charAt(0) != '-') {
                throw row.fault("tolerance \"" + cell + "\" is not of the form -below +above");
            }
            tolerances.add(new MassTolerance(
                    Double.parseDouble(cell.substring(1, plus)) / 100,
                    Double.parseDouble(cell.substring(plus + 2)) / 100));
        }
        if (tolerances.size() != size) {
            throw row.fault(tolerances.size() + " tolerances for " + size + " components");
        }
        return tolerances;
    }

    private static Optional<SafetyGroup> group(CsvResource.Row row) {
        return row.isEmpty("safety_group")
                ? Optional.empty()
                : Optional.of(SafetyGroup.valueOf(row.cell("safety_group")));
    }

    private static Optional<Temperature> celsius(CsvResource.Row row, String column) {
        return row.isEmpty(column) ? Optional.empty() : Optional.of(Temperature.ofCelsius(row.number(column)));
    }
}
