package org.satline.charge;

import java.util.List;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.resource.PrintedGrid;

/**
 * Target superheat of an air conditioner with a fixed orifice, from the wet bulb of the return air and the dry bulb of the air entering
 * the condenser. Immutable, thread-safe. Wet bulb 50 to 76 degF, dry bulb 55 to 115 degF; nothing outside, nothing across a dash.
 *
 * <p>Source: superheat charging table in whole degrees printed in air-conditioner installation manuals; it agrees within 1 degF with the
 * table of the California Energy Code, Reference Appendix RA3.2 (2008).
 */
final class TargetSuperheatChart {
    private static final String SOURCE = "superheat charging table printed in air-conditioner installation manuals";
    private static final PrintedGrid GRID =
            PrintedGrid.read(TargetSuperheatChart.class, "target-superheat.csv", 55, 115, 5);

    private TargetSuperheatChart() {}

    /**
     * Target superheat for the air temperatures, interpolated linearly between printed cells.
     *
     * @param returnWetBulb wet bulb of the return air
     * @param condenserAir dry bulb of the air entering the condenser
     * @return the target with the uncertainty that it takes over from the two readings, or why there is none
     */
    public static ChargeTarget target(Reading<Temperature> returnWetBulb, Reading<Temperature> condenserAir) {
        double wetBulb = returnWetBulb.value().fahrenheit();
        double dryBulb = condenserAir.value().fahrenheit();
        PrintedGrid.Lookup lookup = at(wetBulb, dryBulb);
        if (lookup instanceof PrintedGrid.Value found) {
            TemperatureDifference target = TemperatureDifference.ofFahrenheitDegrees(found.value());
            // The slopes are in degF per degF and so hold for kelvins as well.
            UncertaintyBudget budget = returnWetBulb
                    .budget()
                    .scaled(found.rowSlope())
                    .plus(condenserAir.budget().scaled(found.columnSlope()));
            return new ChargeTarget.Found(target, budget, List.of(step(returnWetBulb, condenserAir, found)));
        }
        return new ChargeTarget.Missing(List.of(Finding.of(
                        Severity.FORBIDS,
                        lookup instanceof PrintedGrid.Dash
                                ? ChargeCode.TARGET_AT_DASH
                                : ChargeCode.TARGET_OUTSIDE_CHART,
                        Subject.reading(Place.RETURN_WET_BULB.path()),
                        Figure.of("wetBulb", returnWetBulb.value()),
                        Figure.of("outdoorAir", condenserAir.value()),
                        Figure.of("lowWetBulb", Temperature.ofFahrenheit(GRID.firstRow())),
                        Figure.of("highWetBulb", Temperature.ofFahrenheit(GRID.lastRow())),
                        Figure.of("lowOutdoorAir", Temperature.ofFahrenheit(GRID.firstColumn())),
                        Figure.of("highOutdoorAir", Temperature.ofFahrenheit(GRID.lastColumn())))
                .citing(SOURCE)));
    }

    /** What the chart says at a wet bulb and a dry bulb, degF. */
    static PrintedGrid.Lookup at(double wetBulbF, double dryBulbF) {
        return GRID.at(wetBulbF, dryBulbF);
    }

    private static Step step(
            Reading<Temperature> returnWetBulb, Reading<Temperature> condenserAir, PrintedGrid.Value found) {
        return new Step(
                "targetSuperheat",
                "chart(WB, DB)",
                List.of(
                        Figure.of("WB", returnWetBulb.value()),
                        Figure.of("DB", condenserAir.value()),
                        Figure.of(
                                "cells",
                                GRID.cells(
                                        returnWetBulb.value().fahrenheit(),
                                        condenserAir.value().fahrenheit()))),
                Figure.of("target", TemperatureDifference.ofFahrenheitDegrees(found.value())),
                SOURCE);
    }
}
