package org.satline.cylinder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Temperature;
import org.satline.resource.CsvResource;
import org.satline.safety.Caution;

/** The filling ratios of packing instruction P200 by gas and test pressure (ADR 2025, 4.1.4.1, table 2). Immutable. */
final class FillingRatioTable {
    private static final double LAW_TEMPERATURE_K = Temperature.ofCelsius(60).kelvins();

    /** One printed row; the test pressure is gauge. */
    record Entry(String unNumber, String gas, double ratio, double testPressureBar, int retestYears) {}

    private final List<Entry> entries;

    private FillingRatioTable(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    static FillingRatioTable standard() {
        List<Entry> entries = new ArrayList<>();
        CsvResource table = CsvResource.read(
                FillingRatioTable.class,
                "filling-ratios.csv",
                "un_number",
                "refrigerant",
                "gas",
                "filling_ratio",
                "test_pressure_bar",
                "retest_years");
        for (CsvResource.Row row : table.rows()) {
            entries.add(new Entry(
                    row.text("un_number"),
                    row.text("refrigerant"),
                    row.number("filling_ratio"),
                    row.number("test_pressure_bar"),
                    (int) row.number("retest_years")));
        }
        return new FillingRatioTable(entries);
    }

    /** The rows of a gas, by rising test pressure. */
    List<Entry> entriesOf(String gas) {
        return entries.stream()
                .filter(entry -> entry.gas().equals(gas))
                .sorted(Comparator.comparingDouble(Entry::testPressureBar))
                .toList();
    }

    boolean names(String gas) {
        return entries.stream().anyMatch(entry -> entry.gas().equals(gas));
    }

    RuleOutcome apply(FillRule rule, RuleCase it) {
        List<Entry> rows = entriesOf(it.gas());
        if (rows.isEmpty()) {
            return new RuleOutcome.NotApplicable(
                    rule,
                    "the table has no figure for " + it.gas() + "; the formulas of P200(5) stand in its place",
                    List.of());
        }
        Optional<GaugePressure> test = it.stamps().testPressure();
        // a printed 18 bar and a stamp converted from another unit must not part over round-off
        double bar = test.map(pressure -> pressure.bars() + 1e-6).orElse(Double.POSITIVE_INFINITY);
        List<Entry> fitting =
                rows.stream().filter(entry -> entry.testPressureBar() <= bar).toList();
        if (fitting.isEmpty()) {
            return new RuleOutcome.Forbidden(
                    rule,
                    String.format(
                            Locale.ROOT,
                            "%s asks for a test pressure of %.0f bar or more, the cylinder was tested at %.1f bar",
                            it.gas(),
                            rows.get(0).testPressureBar(),
                            bar),
                    List.of());
        }
        Entry entry = test.isPresent() ? fitting.get(fitting.size() - 1) : rows.get(0);
        double kilograms = entry.ratio() * it.waterCapacity();
        Step step = new Step(
                "largest contents by " + rule.name(),
                rule.inequality(),
                String.format(
                        Locale.ROOT,
                        "m <= %s x %.4f kg (UN %s, test pressure %s bar)",
                        Figures.plain(entry.ratio()),
                        it.waterCapacity(),
                        entry.unNumber(),
                        Figures.plain(entry.testPressureBar())),
                Figures.mass(kilograms),
                rule.source());
        List<Caution> cautions = new ArrayList<>(it.liquidFullCaution(rule, kilograms, LAW_TEMPERATURE_K));
        if (test.isEmpty()) {
            cautions.add(new Caution(
                    "the test pressure is not given; the smallest filling ratio for " + it.gas()
                            + " was taken, which asks for " + Figures.plain(entry.testPressureBar()) + " bar",
                    rule.citation()));
        }
        return it.limit(rule, kilograms, cautions, List.of(step));
    }
}
