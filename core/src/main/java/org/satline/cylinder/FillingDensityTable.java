package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.explanation.Step;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.SafetyGroup;
import org.satline.resource.CsvResource;
import org.satline.safety.Caution;

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
        if (unnamed
                && it.curve()
                        .refrigerant()
                        .safetyGroup()
                        .map(FillingDensityTable::isFlammable)
                        .orElse(true)) {
            return new RuleOutcome.NotApplicable(
                    rule,
                    "the table does not name " + it.gas()
                            + ", and its last row is for non-flammable refrigerant gas; not-liquid-full-131F "
                            + "stands in its place",
                    List.of());
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
                    it.gas() + " is allowed in the cylinders " + listed(rows)
                            + " or the same type of higher service pressure, not in "
                            + mark.map(CylinderSpecification::toString).orElse("this one"),
                    List.of());
        }
        // the richest row that names the cylinder; the poorest one where the cylinder is not known
        Entry entry = covering.get(0);
        for (Entry other : covering) {
            double a = entry.percent().orElse(0);
            double b = other.percent().orElse(0);
            if (known ? b > a : b < a) {
                entry = other;
            }
        }
        if (entry.percent().isEmpty()) {
            return new RuleOutcome.NotApplicable(
                    rule,
                    (unnamed ? it.gas() + " falls under the last row, which" : "its row")
                            + " gives no percentage but asks that liquid "
                            + "does not fill the cylinder at 131 degF; not-liquid-full-131F stands in its place",
                    List.of());
        }
        return limit(rule, it, entry.percent().getAsDouble(), known);
    }

    private static RuleOutcome limit(FillRule rule, RuleCase it, double percent, boolean known) {
        double kilograms = percent / 100 * it.waterCapacity();
        Step step = new Step(
                "largest contents by " + rule.name(),
                rule.inequality(),
                String.format(Locale.ROOT, "m <= %s / 100 x %.4f kg", Figures.plain(percent), it.waterCapacity()),
                Figures.mass(kilograms),
                rule.source());
        List<Caution> cautions = new ArrayList<>(it.liquidFullCaution(rule, kilograms, LAW_TEMPERATURE_K));
        if (!known) {
            cautions.add(new Caution(
                    "the cylinder's DOT specification is not given; the smallest figure of the table for " + it.gas()
                            + " was taken, and whether this cylinder is allowed for it was not tested",
                    rule.citation()));
        }
        return it.limit(rule, kilograms, cautions, List.of(step));
    }

    private static boolean isFlammable(SafetyGroup group) {
        return Flammability.isFlammable(group);
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
