package org.satline.charge;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.measurement.Reading;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.resource.PrintedGrid;

/**
 * Target temperature split of a cooling coil that has its airflow, from dry bulb (70 to 84 degF) and wet bulb (50 to 76 degF) of the
 * return air. Immutable, thread-safe.
 *
 * <p>Source: California Energy Code, Reference Appendix RA3.2 (2008), target temperature split table, from memory.
 */
public final class TargetTemperatureSplit {
    private static final String SOURCE = "California Energy Code, Reference Appendix RA3.2 (2008), from memory";
    private static final PrintedGrid GRID =
            PrintedGrid.read(TargetTemperatureSplit.class, "target-temperature-split.csv", 50, 76, 1);

    private TargetTemperatureSplit() {}

    /**
     * A target split with its uncertainty.
     *
     * @param value target of return minus supply dry bulb
     * @param budget uncertainty that it takes over from the readings, K
     * @param step how it was found
     */
    public record Target(TemperatureDifference value, UncertaintyBudget budget, Step step) {
        /** {@inheritDoc} */
        public Target {
            Parts.required("value budget step", value, budget, step);
        }
    }

    /**
     * Target split, interpolated linearly between the printed cells.
     *
     * @param returnDryBulb dry bulb of the return air
     * @param returnWetBulb wet bulb of the return air
     * @return the target; empty outside the table
     */
    public static Optional<Target> target(Reading<Temperature> returnDryBulb, Reading<Temperature> returnWetBulb) {
        double dryBulb = returnDryBulb.value().fahrenheit();
        double wetBulb = returnWetBulb.value().fahrenheit();
        if (!(GRID.at(dryBulb, wetBulb) instanceof PrintedGrid.Value found)) {
            return Optional.empty();
        }
        Step step = new Step(
                "targetTemperatureSplit",
                "table(DB, WB)",
                List.of(
                        Figure.of("DB", returnDryBulb.value()),
                        Figure.of("WB", returnWetBulb.value()),
                        Figure.of("cells", GRID.cells(dryBulb, wetBulb))),
                Figure.of("target", TemperatureDifference.ofFahrenheitDegrees(found.value())),
                SOURCE);
        return Optional.of(new Target(
                TemperatureDifference.ofFahrenheitDegrees(found.value()),
                returnDryBulb
                        .budget()
                        .scaled(found.rowSlope())
                        .plus(returnWetBulb.budget().scaled(found.columnSlope())),
                step));
    }
}
