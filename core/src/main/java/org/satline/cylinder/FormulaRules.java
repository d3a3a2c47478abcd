package org.satline.cylinder;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;

/** The formulas of P200(5) for gases without an entry in the table. */
final class FormulaRules {
    private static final double ATMOSPHERE_PA = Atmosphere.standard().pressure().pascals();
    private static final double ONE_BAR_PA = 1e5;

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
        double gasDensity = it.model()
                .get()
                .stateAt(it.temperatureOf(rule).kelvins(), ONE_BAR_PA)
                .density();
        double ratio = 8.5e-4 * gasDensity * test.get().bars();
        double kilograms = ratio * it.waterCapacity();
        Step step = new Step(
                "largest contents by " + rule.name(),
                rule.inequality(),
                String.format(
                        Locale.ROOT,
                        "m <= 8.5e-4 x %.4f g/L x %.2f bar x %.4f kg",
                        gasDensity,
                        test.get().bars(),
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
