package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.CatalogueReader.Citations;
import org.satline.refrigerant.GlobalWarmingPotential.Report;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;

/** Reads the pure substances; their warming potentials when one is first asked for. Thread-safe. */
final class SubstanceReader {
    private final Citations citations;
    private final Set<String> designations = new HashSet<>();
    private @Nullable Map<String, List<Row>> potentials;

    SubstanceReader(Citations citations) {
        this.citations = citations;
    }

    void readInto(Map<String, CatalogueEntry> entries) {
        for (Row row : CsvResource.read(
                        SubstanceReader.class,
                        "substances.csv",
                        "designation",
                        "name",
                        "other_names",
                        "formula",
                        "cas",
                        "molar_mass_kg_per_mol",
                        "molar_mass_source",
                        "normal_boiling_point_degC",
                        "critical_temperature_degC",
                        "critical_pressure_kPa",
                        "safety_group",
                        "odp",
                        "lfl_kg_per_m3",
                        "source",
                        "from_memory",
                        "note")
                .rows()) {
            String designation = row.text("designation");
            designations.add(designation);
            CatalogueReader.add(entries, CatalogueEntry.ofSubstance(designation, this, row), row);
        }
    }

    private List<GlobalWarmingPotential> potentials(String designation) {
        List<GlobalWarmingPotential> known = new ArrayList<>();
        for (Row row : potentialRows(designation)) {
            GlobalWarmingPotential potential = potential(row);
            for (GlobalWarmingPotential other : known) {
                if (other.report() == potential.report()) {
                    throw row.fault(designation + " has " + other.report() + " twice; leave one out");
                }
            }
            known.add(potential);
        }
        return known;
    }

    private synchronized List<Row> potentialRows(String designation) {
        Map<String, List<Row>> all = potentials;
        if (all == null) {
            all = readPotentials();
            potentials = all;
        }
        List<Row> rows = all.get(designation);
        return rows == null ? List.of() : rows;
    }

    private Map<String, List<Row>> readPotentials() {
        Map<String, List<Row>> potentials = new HashMap<>();
        for (Row row : CsvResource.read(
                        SubstanceReader.class,
                        "warming-potentials.csv",
                        "designation",
                        "report",
                        "relation",
                        "gwp100",
                        "source",
                        "from_memory",
                        "note")
                .rows()) {
            String designation = row.text("designation");
            List<Row> rows = potentials.get(designation);
            if (rows == null) {
                if (!designations.contains(designation)) {
                    throw row.fault(designation + " is not in substances.csv; add it there");
                }
                rows = new ArrayList<>();
                potentials.put(designation, rows);
            }
            rows.add(row);
        }
        return potentials;
    }

    private GlobalWarmingPotential potential(Row row) {
        boolean below = row.text("relation").equals("below");
        if (!below && !row.text("relation").equals("equal")) {
            throw row.fault("relation \"" + row.text("relation") + "\" is not equal or below; correct it");
        }
        String memory = row.text("from_memory");
        if (!memory.equals("yes") && !memory.equals("no")) {
            throw row.fault("from_memory \"" + memory + "\" is not yes or no; correct it");
        }
        String basis = citations
                .of(row, "source")
                .concat(memory.equals("yes") ? ", from memory" : "")
                .concat(row.isEmpty("note") ? "" : "; ".concat(row.cell("note")));
        return new GlobalWarmingPotential(row.number("gwp100"), report(row), basis, below);
    }

    private static Report report(Row row) {
        for (Report report : Report.values()) {
            if (report.name().equals(row.text("report"))) {
                return report;
            }
        }
        throw row.fault("report \"" + row.text("report") + "\" is not AR4, AR5 or AR6; correct it");
    }

    /** Makes the substance of a row. */
    Refrigerant substance(Row row) {
        PublishedFacts published = new PublishedFacts(
                CatalogueReader.celsius(row, "normal_boiling_point_degC"),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                CatalogueReader.celsius(row, "critical_temperature_degC"),
                row.isEmpty("critical_pressure_kPa")
                        ? Optional.empty()
                        : Optional.of(Pressure.ofKilopascals(row.number("critical_pressure_kPa"))),
                OptionalDouble.empty(),
                row.optionalNumber("odp"),
                row.isEmpty("lfl_kg_per_m3")
                        ? Optional.empty()
                        : Optional.of(Density.ofKilogramsPerCubicMetre(row.number("lfl_kg_per_m3"))),
                potentials(row.text("designation")),
                List.of());
        String source = citations
                .of(row, "source")
                .concat("; molar mass: ")
                .concat(citations.of(row, "molar_mass_source"))
                .concat(row.isEmpty("from_memory") ? "" : "; from memory: ".concat(row.cell("from_memory")));
        return Refrigerant.substance(
                new Refrigerant.Naming(
                        row.text("designation"),
                        row.text("name"),
                        row.isEmpty("other_names")
                                ? List.of()
                                : List.of(row.cell("other_names").split(";", -1)),
                        row.isEmpty("formula") ? Optional.empty() : Optional.of(row.cell("formula")),
                        row.isEmpty("cas") ? Optional.empty() : Optional.of(row.cell("cas"))),
                CatalogueReader.group(row),
                row.number("molar_mass_kg_per_mol"),
                published,
                source,
                row.cell("note"));
    }
}
