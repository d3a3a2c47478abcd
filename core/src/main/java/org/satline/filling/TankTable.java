package org.satline.filling;

import java.util.ArrayList;
import java.util.List;
import org.satline.explanation.Figure;
import org.satline.filling.RuleOutcome.Reason;
import org.satline.quantity.Density;
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
        Figure volume = Figure.of("V", it.stamps().volume());
        for (Entry entry : entries) {
            if (entry.gas().equals(it.gas())) {
                double kilograms =
                        entry.kilogramsPerLitre() * it.stamps().volume().litres();
                return it.limit(
                        rule,
                        kilograms,
                        it.liquidFullCaution(rule, kilograms, LAW_TEMPERATURE_K),
                        List.of(it.volumeStep()),
                        Figure.of("figure", entry.kilogramsPerLitre(), "kg/L"),
                        volume,
                        Figure.of("UN", entry.unNumber()));
            }
        }
        if (!it.hasLiquidAt(LAW_TEMPERATURE_K)) {
            return it.no(rule, Reason.GAS_NOT_NAMED);
        }
        // 4.2.5.2.6: where no figure is given, at most 0.95 of the liquid density at 50 degC, and not liquid-full at 60
        // degC
        double at50 = it.curve().bubbleLiquidDensity(REFERENCE_TEMPERATURE_K);
        double at60 = it.curve().bubbleLiquidDensity(LAW_TEMPERATURE_K);
        double density = Math.min(0.95 * at50, at60 * (1 - 1e-9));
        return it.limit(
                rule,
                "m / V <= 0.95 rho_l(50 degC) and m / V < rho_l(60 degC)",
                density * it.volume(),
                List.of(),
                List.of(it.volumeStep()),
                Figure.of("rho_l(50 degC)", Density.ofKilogramsPerCubicMetre(at50)),
                Figure.of("rho_l(60 degC)", Density.ofKilogramsPerCubicMetre(at60)),
                volume);
    }
}
