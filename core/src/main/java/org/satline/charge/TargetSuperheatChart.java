package org.satline.charge;

import java.util.List;
import java.util.Locale;
import org.satline.explanation.Step;
import org.satline.measurement.TemperatureReading;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.TemperatureDifference;
import org.satline.resource.OnDemand;

/**
 * Target superheat of an air conditioner with a fixed orifice, from the wet bulb of the return air and the dry bulb of the air entering
 * the condenser. Immutable, thread-safe. Wet bulb 50 to 76 degF, dry bulb 55 to 115 degF; nothing outside, nothing across a dash.
 *
 * <p>Source: superheat charging table in whole degrees printed in air-conditioner installation manuals; it agrees within 1 degF with the
 * table of the California Energy Code, Reference Appendix RA3.2 (2008).
 */
public final class TargetSuperheatChart {
    private static final String SOURCE = "superheat charging table printed in air-conditioner installation manuals";
    private static final OnDemand<PublishedGrid> GRID = new OnDemand<>() {
        @Override
        protected PublishedGrid read() {
            return PublishedGrid.read("target-superheat.csv", 55, 115, 5);
        }
    };

    private TargetSuperheatChart() {}

    /**
     * Target superheat for the air temperatures, interpolated linearly between printed cells.
     *
     * @param returnWetBulb wet bulb of the return air
     * @param condenserAir dry bulb of the air entering the condenser
     * @return the target with the uncertainty that it takes over from the two readings, or why there is none
     */
    public static ChargeTarget target(TemperatureReading returnWetBulb, TemperatureReading condenserAir) {
        double wetBulb = returnWetBulb.value().fahrenheit();
        double dryBulb = condenserAir.value().fahrenheit();
        PublishedGrid.Lookup lookup = GRID.get().at(wetBulb, dryBulb);
        if (lookup instanceof PublishedGrid.Value found) {
            TemperatureDifference target = TemperatureDifference.ofFahrenheitDegrees(found.value());
            // The slopes are in degF per degF and so hold for kelvins as well.
            UncertaintyBudget budget = returnWetBulb
                    .budget()
                    .scaled(found.rowSlope())
                    .plus(condenserAir.budget().scaled(found.columnSlope()));
            return new ChargeTarget.Found(
                    Criterion.SUPERHEAT,
                    target,
                    budget,
                    ChargeTarget.Basis.PUBLISHED_CHART,
                    List.of(step(wetBulb, dryBulb, found)));
        }
        String at =
                String.format(Locale.ROOT, "return wet bulb %.1f degF and condenser air %.1f degF", wetBulb, dryBulb);
        if (lookup instanceof PublishedGrid.Dash) {
            return new ChargeTarget.Missing(
                    at + " reach a dash of the target-superheat chart (a target below 5 degF)",
                    "do not charge by superheat in this weather; weigh the charge in, or come back when the air is milder or more humid",
                    List.of());
        }
        return new ChargeTarget.Missing(
                String.format(
                        Locale.ROOT,
                        "%s lie outside the target-superheat chart (wet bulb [%.0f, %.0f] degF, condenser air [%.0f, %.0f] degF)",
                        at,
                        GRID.get().firstRow(),
                        GRID.get().lastRow(),
                        GRID.get().firstColumn(),
                        GRID.get().lastColumn()),
                "weigh the charge in, or use the maker's charging data for this weather",
                List.of());
    }

    /**
     * The rule of thumb for the same target, {@code (3 WB - 80 - DB) / 2} in degF. Common practice, no source: for orientation where
     * the chart has no value, marked as such; against the chart it is off by -3 to +6.5 degF.
     *
     * @param returnWetBulb wet bulb of the return air
     * @param condenserAir dry bulb of the air entering the condenser
     * @return the target, or why there is none (below 5 degF)
     */
    public static ChargeTarget ruleOfThumb(TemperatureReading returnWetBulb, TemperatureReading condenserAir) {
        double wetBulb = returnWetBulb.value().fahrenheit();
        double dryBulb = condenserAir.value().fahrenheit();
        double target = (3 * wetBulb - 80 - dryBulb) / 2;
        Step step = new Step(
                "target superheat",
                "(3 WB - 80 - DB) / 2, in degF",
                String.format(Locale.ROOT, "(3 * %.1f - 80 - %.1f) / 2", wetBulb, dryBulb),
                String.format(Locale.ROOT, "%.1f degF", target),
                "common practice, no source");
        if (!(target >= 5)) {
            return new ChargeTarget.Missing(
                    String.format(
                            Locale.ROOT,
                            "the rule of thumb gives a target superheat of %.1f degF, below 5 degF",
                            target),
                    "do not charge by superheat in this weather; weigh the charge in",
                    List.of(step));
        }
        return new ChargeTarget.Found(
                Criterion.SUPERHEAT,
                TemperatureDifference.ofFahrenheitDegrees(target),
                returnWetBulb
                        .budget()
                        .scaled(1.5)
                        .plus(condenserAir.budget().scaled(-0.5))
                        // 1.2 degF mean absolute difference from the chart; a normal error of that mean size has u =
                        // 1.2 / 0.8
                        .plus(UncertaintyBudget.of("rule of thumb", 1.5 / 1.8)),
                ChargeTarget.Basis.RULE_OF_THUMB,
                List.of(step));
    }

    private static Step step(double wetBulb, double dryBulb, PublishedGrid.Value found) {
        return new Step(
                "target superheat",
                "chart value at (return wet bulb, condenser air dry bulb), linear between printed cells",
                String.format(Locale.ROOT, "(%.2f, %.2f) degF; cells %s degF", wetBulb, dryBulb, found.cells()),
                String.format(Locale.ROOT, "%.2f degF (%.2f K)", found.value(), found.value() / 1.8),
                SOURCE);
    }
}
