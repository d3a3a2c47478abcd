package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.satline.explanation.Step;
import org.satline.quantity.Temperature;
import org.satline.resource.CsvResource;

/** The filling densities of liquefied petroleum gas by specific gravity, 49 CFR 173.304a(d)(1). Immutable. */
final class LpgTable {
    private static final double LAW_TEMPERATURE_K = Temperature.ofCelsius(55).kelvins();
    private static final Set<String> PETROLEUM_GASES = Set.of("R-290", "R-600", "R-600a", "R-1270");

    private record Band(double lowest, double highest, double percent) {}

    private final List<Band> bands;

    private LpgTable(List<Band> bands) {
        this.bands = List.copyOf(bands);
    }

    static LpgTable standard() {
        List<Band> bands = new ArrayList<>();
        CsvResource table = CsvResource.read(
                LpgTable.class,
                "lpg-filling-densities.csv",
                "lowest_specific_gravity",
                "highest_specific_gravity",
                "filling_density_percent");
        for (CsvResource.Row row : table.rows()) {
            bands.add(new Band(
                    row.number("lowest_specific_gravity"),
                    row.number("highest_specific_gravity"),
                    row.number("filling_density_percent")));
        }
        return new LpgTable(bands);
    }

    RuleOutcome apply(FillRule rule, RuleCase it) {
        boolean petroleum = it.curve().refrigerant().composition().components().stream()
                .allMatch(part -> PETROLEUM_GASES.contains(part.substance().designation()));
        if (!petroleum) {
            return new RuleOutcome.NotApplicable(
                    rule,
                    it.gas() + " is no liquefied petroleum gas (propane, propylene, butanes and their mixtures)",
                    List.of());
        }
        double t = it.temperatureOf(rule).kelvins();
        double water = CylinderStamps.WATER_AT_60_F.kilogramsPerCubicMetre();
        double density = it.curve().bubbleLiquidDensity(t);
        // the bands are printed to three decimals, so the gravity is rounded to three before it is looked up
        double gravity = Math.round(density / water * 1000) / 1000.0;
        for (Band band : bands) {
            if (gravity >= band.lowest() && gravity <= band.highest()) {
                double kilograms = band.percent() / 100 * it.waterCapacity();
                Step specific = new Step(
                        "specific gravity at 60 degF",
                        "SG = rho_l(60 degF) / rho_w",
                        String.format(Locale.ROOT, "SG = %s / %s", Figures.density(density), Figures.density(water)),
                        String.format(Locale.ROOT, "%.3f", gravity),
                        it.curve().source());
                Step step = new Step(
                        "largest contents by " + rule.name(),
                        rule.inequality(),
                        String.format(Locale.ROOT, "m <= %.0f / 100 x %.4f kg", band.percent(), it.waterCapacity()),
                        Figures.mass(kilograms),
                        rule.source());
                return it.limit(
                        rule,
                        kilograms,
                        it.liquidFullCaution(rule, kilograms, LAW_TEMPERATURE_K),
                        List.of(specific, step));
            }
        }
        return new RuleOutcome.NotApplicable(
                rule,
                String.format(
                        Locale.ROOT,
                        "specific gravity %.3f is outside [%.3f, %.3f] of the table",
                        gravity,
                        bands.get(0).lowest(),
                        bands.get(bands.size() - 1).highest()),
                List.of());
    }
}
