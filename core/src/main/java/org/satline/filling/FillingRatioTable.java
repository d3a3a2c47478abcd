package org.satline.filling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.filling.RuleOutcome.Reason;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Temperature;
import org.satline.resource.CsvResource;

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
            return it.no(rule, Reason.GAS_NOT_NAMED);
        }
        Optional<GaugePressure> test = it.stamps().testPressure();
        // a printed 18 bar and a stamp converted from another unit must not part over round-off
        double bar = test.map(pressure -> pressure.bars() + 1e-6).orElse(Double.POSITIVE_INFINITY);
        List<Entry> fitting =
                rows.stream().filter(entry -> entry.testPressureBar() <= bar).toList();
        if (fitting.isEmpty()) {
            return new RuleOutcome.Forbidden(
                    rule,
                    Reason.TEST_PRESSURE_LOW,
                    List.of(
                            Figure.of("gas", it.gas()),
                            Figure.of("least", GaugePressure.ofBars(rows.get(0).testPressureBar())),
                            Figure.of("test", test.orElseThrow())));
        }
        Entry entry = test.isPresent() ? fitting.get(fitting.size() - 1) : rows.get(0);
        double kilograms = entry.ratio() * it.waterCapacity();
        List<Finding> cautions = new ArrayList<>(it.liquidFullCaution(rule, kilograms, LAW_TEMPERATURE_K));
        Figure printed = Figure.of("TP", GaugePressure.ofBars(entry.testPressureBar()));
        if (test.isEmpty()) {
            cautions.add(
                    it.caution(FillingCode.SMALLEST_RATIO_TAKEN, rule.citation(), Figure.of("gas", it.gas()), printed));
        }
        return it.limit(
                rule,
                kilograms,
                cautions,
                List.of(),
                Figure.of("FR", entry.ratio(), "kg/kg"),
                it.capacityFigure(),
                Figure.of("UN", entry.unNumber()),
                printed);
    }
}
