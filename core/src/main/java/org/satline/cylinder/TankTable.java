package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.explanation.Step;
import org.satline.quantity.Temperature;
import org.satline.resource.CsvResource;

/** The filling limits of portable tanks, instruction T50 (ADR 2025, 4.2.5.2.6). Immutable. */
final class TankTable {
    private static final double LAW_TEMPERATURE_K = Temperature.ofCelsius(60).kelvins();
    private static final double REFERENCE_TEMPERATURE_K =
            Temperature.ofCelsius(50).kelvins();

    private record Entry(String unNumber, String gas, double kilogramsPerLitre) {}

    private final List<Entry> entries;

    private TankTable(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    static TankTable standard() {
        List<Entry> entries = new ArrayList<>();
        CsvResource table = CsvResource.read(
                TankTable.class,
                "tank-ratios.csv",
                "un_number",
                "refrigerant",
                "gas",
                "filling_kg_per_litre",
                "small_bar",
                "bare_bar",
                "sunshield_bar",
                "insulated_bar");
        for (CsvResource.Row row : table.rows()) {
            entries.add(new Entry(row.text("un_number"), row.text("refrigerant"), row.number("filling_kg_per_litre")));
        }
        return new TankTable(entries);
    }

    RuleOutcome apply(FillRule rule, RuleCase it) {
        for (Entry entry : entries) {
            if (entry.gas().equals(it.gas())) {
                double kilograms = entry.kilogramsPerLitre() * it.volume() * 1000;
                Step step = new Step(
                        "largest contents by " + rule.name(),
                        rule.inequality(),
                        String.format(
                                Locale.ROOT,
                                "m <= %s kg/L x %s (UN %s)",
                                Figures.plain(entry.kilogramsPerLitre()),
                                Figures.volume(it.volume()),
                                entry.unNumber()),
                        Figures.mass(kilograms),
                        rule.source());
                return it.limit(
                        rule,
                        kilograms,
                        it.liquidFullCaution(rule, kilograms, LAW_TEMPERATURE_K),
                        List.of(it.volumeStep(), step));
            }
        }
        if (!it.hasLiquidAt(LAW_TEMPERATURE_K)) {
            return new RuleOutcome.NotApplicable(
                    rule, "the table has no figure for " + it.gas() + ", which has no liquid at 60 degC", List.of());
        }
        // 4.2.5.2.6: where no figure is given, at most 0.95 of the liquid density at 50 degC, and not liquid-full at 60
        // degC
        double at50 = it.curve().bubbleLiquidDensity(REFERENCE_TEMPERATURE_K);
        double at60 = it.curve().bubbleLiquidDensity(LAW_TEMPERATURE_K);
        double density = Math.min(0.95 * at50, at60 * (1 - 1e-9));
        double kilograms = density * it.volume();
        Step step = new Step(
                "largest contents by " + rule.name() + ", no figure printed",
                "m / V <= 0.95 rho_l(50 degC) and m / V < rho_l(60 degC)",
                "min(0.95 x " + Figures.density(at50) + ", " + Figures.density(at60) + ") x "
                        + Figures.volume(it.volume()),
                Figures.mass(kilograms),
                rule.source());
        return it.limit(rule, kilograms, List.of(), List.of(it.volumeStep(), step));
    }
}
