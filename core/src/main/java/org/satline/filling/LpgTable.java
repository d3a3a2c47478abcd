package org.satline.filling;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.filling.RuleOutcome.Reason;
import org.satline.quantity.Density;
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
            return it.no(rule, Reason.NO_PETROLEUM_GAS);
        }
        double t = it.temperatureOf(rule).kelvins();
        Density water = CylinderStamps.WATER_AT_60_F;
        Density liquid = Density.ofKilogramsPerCubicMetre(it.curve().bubbleLiquidDensity(t));
        // the bands are printed to three decimals, so the gravity is rounded to three before it is looked up
        double gravity = Math.round(liquid.kilogramsPerCubicMetre() / water.kilogramsPerCubicMetre() * 1000) / 1000.0;
        Figure found = Figure.of("SG", gravity, "1");
        for (Band band : bands) {
            if (gravity >= band.lowest() && gravity <= band.highest()) {
                double kilograms = band.percent() / 100 * it.waterCapacity();
                Step specific = new Step(
                        "specificGravity",
                        "SG = rho_l(60 degF) / rho_w",
                        List.of(Figure.of("rho_l", liquid), Figure.of("rho_w", water)),
                        found,
                        it.curve().source());
                return it.limit(
                        rule,
                        kilograms,
                        it.liquidFullCaution(rule, kilograms, LAW_TEMPERATURE_K),
                        List.of(specific),
                        Figure.of("FD", band.percent(), "%"),
                        it.capacityFigure());
            }
        }
        return it.no(rule, Reason.GRAVITY_OUTSIDE, found);
    }
}
