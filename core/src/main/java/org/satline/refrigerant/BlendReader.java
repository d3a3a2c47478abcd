package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.CatalogueReader.Citations;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.ResourceFormatException;

/** Reads the blends and their components. Thread-safe once the lists are read. */
final class BlendReader {
    private static final String[] AZEOTROPIC_COLUMNS = {"azeotropic_from_degC", "azeotropic_to_degC"};

    private final Citations citations;
    private final Map<String, CatalogueEntry> substances = new HashMap<>();

    BlendReader(Citations citations) {
        this.citations = citations;
    }

    void readInto(Map<String, CatalogueEntry> entries) {
        substances.putAll(entries);
        Map<String, List<Row>> components = new LinkedHashMap<>();
        for (Row row : CsvResource.read(
                        BlendReader.class,
                        "blend-components.csv",
                        "blend",
                        "component",
                        "mass_percent",
                        "plus_percent",
                        "minus_percent")
                .rows()) {
            List<Row> parts = components.get(row.text("blend"));
            if (parts == null) {
                parts = new ArrayList<>();
                components.put(row.text("blend"), parts);
            }
            parts.add(row);
        }
        for (Row row : CsvResource.read(
                        BlendReader.class,
                        "blends.csv",
                        "designation",
                        "safety_group",
                        "bubble_point_degC",
                        "dew_point_degC",
                        "azeotropic_from_degC",
                        "azeotropic_to_degC",
                        "molar_mass_g_per_mol",
                        "composition_confirmation",
                        "source",
                        "note")
                .rows()) {
            List<Row> parts = components.remove(row.text("designation"));
            if (parts == null) {
                throw row.fault(row.text("designation") + " has no rows in blend-components.csv; add them there");
            }
            CatalogueReader.add(entries, CatalogueEntry.ofBlend(row.text("designation"), this, row, parts), row);
        }
        if (!components.isEmpty()) {
            throw new ResourceFormatException(
                    "blend-components.csv", 0, "names " + components.keySet() + ", not in blends.csv; add them there");
        }
    }

    /** Makes the blend of a row and the rows of its components. */
    Refrigerant blend(Row row, List<Row> parts) {
        List<Temperature> azeotropic = new ArrayList<>();
        for (String end : AZEOTROPIC_COLUMNS) {
            if (!row.isEmpty(end)) {
                azeotropic.add(Temperature.ofCelsius(row.number(end)));
            }
        }
        PublishedFacts published = new PublishedFacts(
                Optional.empty(),
                CatalogueReader.celsius(row, "bubble_point_degC"),
                CatalogueReader.celsius(row, "dew_point_degC"),
                azeotropic,
                Optional.empty(),
                Optional.empty(),
                row.optionalNumber("molar_mass_g_per_mol"),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of(),
                tolerances(parts));
        return Refrigerant.listedBlend(
                row.text("designation"),
                name(parts),
                CatalogueReader.group(row),
                composition(parts),
                published,
                citations
                        .of(row, "source")
                        .concat("; composition: ")
                        .concat(row.text("composition_confirmation").replace('_', ' ')),
                row.cell("note"));
    }

    private static String name(List<Row> parts) {
        StringBuilder names = new StringBuilder();
        StringBuilder percents = new StringBuilder();
        for (Row part : parts) {
            String percent = part.cell("mass_percent");
            names.append(names.length() == 0 ? "" : "/").append(part.text("component"));
            percents.append(percents.length() == 0 ? "" : "/")
                    .append(percent.endsWith(".0") ? percent.substring(0, percent.length() - 2) : percent);
        }
        if (!parts.get(0).isEmpty("mass_percent")) {
            names.append(" (").append(percents).append(" % by mass)");
        }
        return names.toString();
    }

    private @Nullable Composition composition(List<Row> parts) {
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        int open = 0;
        for (Row part : parts) {
            CatalogueEntry substance = substances.get(part.text("component"));
            if (substance == null) {
                throw part.fault(part.text("component") + " is not in substances.csv; add it there");
            }
            if (part.isEmpty("mass_percent")) {
                open++;
            } else if (fractions.put(substance.refrigerant(), part.percent("mass_percent")) != null) {
                throw part.fault(part.text("component") + " stands twice; leave one out");
            }
        }
        if (open > 0 && open < parts.size()) {
            throw parts.get(0).fault("only some mass_percent are given; give all or none");
        }
        try {
            return open > 0 ? null : Composition.ofMassFractions(fractions);
        } catch (IllegalArgumentException e) {
            ResourceFormatException broken = parts.get(0).fault(String.valueOf(e.getMessage()));
            broken.initCause(e);
            throw broken;
        }
    }

    private static List<MassTolerance> tolerances(List<Row> parts) {
        List<MassTolerance> tolerances = new ArrayList<>();
        for (Row part : parts) {
            if (!part.isEmpty("plus_percent") || !part.isEmpty("minus_percent")) {
                tolerances.add(new MassTolerance(part.percent("minus_percent"), part.percent("plus_percent")));
            }
        }
        if (!tolerances.isEmpty() && tolerances.size() < parts.size()) {
            throw parts.get(0).fault("only some tolerances are given; give all or none");
        }
        return tolerances;
    }
}
