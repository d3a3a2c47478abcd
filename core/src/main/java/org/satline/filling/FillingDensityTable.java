package org.satline.filling;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.filling.RuleOutcome.Reason;
import org.satline.quantity.Temperature;
import org.satline.resource.CsvResource;

/** The filling-density table of 49 CFR 173.304a(a)(2): by gas and by the cylinders named for it. Immutable. */
final class FillingDensityTable {
    private static final String OTHERS = "any other";
    private static final double LAW_TEMPERATURE_K = Temperature.ofCelsius(55).kelvins();

    private record Entry(String gas, OptionalDouble percent, List<CylinderSpecification> cylinders) {}

    private final List<Entry> entries;

    private FillingDensityTable(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    static FillingDensityTable standard() {
        List<Entry> entries = new ArrayList<>();
        CsvResource table = CsvResource.read(
                FillingDensityTable.class,
                "filling-densities.csv",
                "refrigerant",
                "gas",
                "filling_density_percent",
                "cylinders");
        for (CsvResource.Row row : table.rows()) {
            List<CylinderSpecification> cylinders = new ArrayList<>();
            for (String mark : row.text("cylinders").split(" ", -1)) {
                CylinderSpecification specification = CylinderSpecification.parse(mark);
                if (specification.type().isEmpty()) {
                    throw row.fault("cylinders \"" + mark + "\" is no specification; give marks such as 4BA240");
                }
                cylinders.add(specification);
            }
            entries.add(new Entry(
                    row.text("refrigerant"), row.optionalNumber("filling_density_percent"), List.copyOf(cylinders)));
        }
        return new FillingDensityTable(entries);
    }

    private List<Entry> entriesOf(String gas) {
        return entries.stream().filter(entry -> entry.gas().equals(gas)).toList();
    }

    private static boolean covers(Entry entry, CylinderStamps stamps) {
        return stamps.specification().isPresent()
                && entry.cylinders().stream()
                        .anyMatch(listed -> stamps.specification().get().isCoveredBy(listed, stamps.servicePressure()));
    }

    /** Whether an entry of this very gas names the cylinder. */
    boolean namesCylinder(RuleCase it) {
        return entriesOf(it.gas()).stream().anyMatch(entry -> covers(entry, it.stamps()));
    }

    RuleOutcome apply(FillRule rule, RuleCase it) {
        List<Entry> named = entriesOf(it.gas());
        boolean unnamed = named.isEmpty();
        List<Entry> rows = unnamed ? entriesOf(OTHERS) : named;
        if (unnamed && StampCheck.mayBurn(it.curve())) {
            return it.no(rule, Reason.FLAMMABLE_NOT_NAMED);
        }
        Optional<CylinderSpecification> mark = it.stamps().specification();
        boolean known =
                mark.filter(specification -> !specification.type().isEmpty()).isPresent();
        List<Entry> covering = known
                ? rows.stream().filter(entry -> covers(entry, it.stamps())).toList()
                : rows;
        if (covering.isEmpty()) {
            return new RuleOutcome.Forbidden(
                    rule,
                    Reason.CYLINDER_NOT_NAMED,
                    List.of(
                            Figure.of("gas", it.gas()),
                            Figure.of("listed", listed(rows)),
                            Figure.of(
                                    "mark",
                                    mark.map(CylinderSpecification::text).orElse(""))));
        }
        // the richest row that names the cylinder; the poorest one where the cylinder is not known
        Comparator<Entry> byPercent =
                Comparator.comparingDouble(entry -> entry.percent().orElse(0));
        Entry entry = known ? Collections.max(covering, byPercent) : Collections.min(covering, byPercent);
        return entry.percent().isEmpty()
                ? it.no(rule, Reason.NO_PERCENTAGE)
                : limit(rule, it, entry.percent().getAsDouble(), known);
    }

    private static RuleOutcome limit(FillRule rule, RuleCase it, double percent, boolean known) {
        double kilograms = percent / 100 * it.waterCapacity();
        List<Finding> cautions = new ArrayList<>(it.liquidFullCaution(rule, kilograms, LAW_TEMPERATURE_K));
        if (!known) {
            cautions.add(it.caution(FillingCode.SMALLEST_DENSITY_TAKEN, rule.citation(), Figure.of("gas", it.gas())));
        }
        return it.limit(rule, kilograms, cautions, List.of(), Figure.of("FD", percent, "%"), it.capacityFigure());
    }

    private static String listed(List<Entry> rows) {
        return rows.stream()
                .flatMap(entry -> entry.cylinders().stream())
                .map(CylinderSpecification::text)
                .distinct()
                .reduce((a, b) -> a + " " + b)
                .orElse("");
    }
}
