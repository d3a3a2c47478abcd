package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.GlobalWarmingPotential.Report;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.ResourceFormatException;

/** Reads the pure substances and their warming potentials. */
final class SubstanceReader {
    private final Map<String, String> citations;

    SubstanceReader(Map<String, String> citations) {
        this.citations = citations;
    }

    void readInto(Map<String, Refrigerant> entries) {
        Map<String, List<GlobalWarmingPotential>> potentials = potentials();
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
            List<GlobalWarmingPotential> known = potentials.remove(row.text("designation"));
            CatalogueReader.add(entries, substance(row, known == null ? List.of() : known), row);
        }
        if (!potentials.isEmpty()) {
            throw new ResourceFormatException(
                    "warming-potentials.csv",
                    0,
                    "names " + potentials.keySet() + ", not in substances.csv; add them there");
        }
    }

    private Map<String, List<GlobalWarmingPotential>> potentials() {
        Map<String, List<GlobalWarmingPotential>> potentials = new LinkedHashMap<>();
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
            List<GlobalWarmingPotential> known = potentials.get(row.text("designation"));
            if (known == null) {
                known = new ArrayList<>();
                potentials.put(row.text("designation"), known);
            }
            GlobalWarmingPotential potential = potential(row);
            for (GlobalWarmingPotential other : known) {
                if (other.report() == potential.report()) {
                    throw row.fault(row.text("designation") + " has " + other.report() + " twice; leave one out");
                }
            }
            known.add(potential);
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
        String basis = CatalogueReader.citation(citations, row, "source")
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

    private Refrigerant substance(Row row, List<GlobalWarmingPotential> potentials) {
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
                potentials,
                List.of());
        String source = CatalogueReader.citation(citations, row, "source")
                .concat("; molar mass: ")
                .concat(CatalogueReader.citation(citations, row, "molar_mass_source"))
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
