package org.satline.cylinder;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.quantity.GaugePressure;

/** The formulas of P200(5) for gases without an entry in the table. */
final class FormulaRules {
    private static final double ATMOSPHERE_PA = 101_325;
    /** The gas constant as P200(5)(b) prints it, bar L/(mol K). */
    private static final double GAS_CONSTANT = 8.31451e-2;

    private FormulaRules() {}

    static RuleOutcome lowPressure(FillRule rule, RuleCase it, FillingRatioTable ratios) {
        if (ratios.names(it.gas())) {
            return hasEntry(rule, it);
        }
        if (!(it.curve().bubblePressurePa(it.curve().bubbleTemperatureRange().low()) <= ATMOSPHERE_PA)) {
            return new RuleOutcome.NotApplicable(rule, it.gas() + " has no normal boiling point", List.of());
        }
        double boiling = it.curve().bubbleTemperatureK(ATMOSPHERE_PA);
        double litreDensity = it.curve().bubbleLiquidDensity(boiling) / 1000;
        double ratio = (0.0032 * boiling - 0.24) * litreDensity;
        double kilograms = ratio * it.waterCapacity();
        Step step = new Step(
                "largest contents by " + rule.name(),
                rule.inequality(),
                String.format(
                        Locale.ROOT,
                        "m <= (0.0032 x %.2f K - 0.24) x %.4f kg/L x %.4f kg",
                        boiling,
                        litreDensity,
                        it.waterCapacity()),
                Figures.mass(kilograms),
                rule.source());
        return it.limit(rule, kilograms, List.of(), List.of(step));
    }

    static RuleOutcome highPressure(FillRule rule, RuleCase it, FillingRatioTable ratios) {
        if (ratios.names(it.gas())) {
            return hasEntry(rule, it);
        }
        Optional<GaugePressure> test = it.stamps().testPressure();
        if (test.isEmpty()) {
            return new RuleOutcome.NotTested(
                    rule, "the test pressure is not given; read it on the collar, marked PH or TP", List.of());
        }
        // the form for a gas of unknown density, which is the stricter of the two for these gases: real gas is denser
        // than ideal gas
        double grams = it.curve().refrigerant().molarMassKilogramsPerMole() * 1000;
        double ratio = test.get().bars() * grams * 1e-3 / (GAS_CONSTANT * 338);
        double kilograms = ratio * it.waterCapacity();
        Step step = new Step(
                "largest contents by " + rule.name(),
                "m / Wc <= TP MM 1e-3 / (R 338)",
                String.format(
                        Locale.ROOT,
                        "m <= %.2f bar x %.3f g/mol x 1e-3 / (8.31451e-2 bar L/(mol K) x 338 K) x %.4f kg",
                        test.get().bars(),
                        grams,
                        it.waterCapacity()),
                Figures.mass(kilograms),
                rule.source());
        return it.limit(rule, kilograms, List.of(), List.of(step));
    }

    private static RuleOutcome hasEntry(FillRule rule, RuleCase it) {
        return new RuleOutcome.NotApplicable(
                rule, "it is for gases without an entry, and the table has one for " + it.gas(), List.of());
    }
}
