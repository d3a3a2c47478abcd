package org.satline.cylinder;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.PressureDifference;

/** The rules that compare a pressure of the contents with a pressure stamped on the cylinder. */
final class PressureRules {
    /** The 1 bar that P200(5)(c) takes off an absolute vapour pressure. */
    private static final double ONE_BAR_PA = 1e5;

    private PressureRules() {}

    static RuleOutcome servicePressure(FillRule rule, RuleCase it, FillingDensityTable densities) {
        if (densities.namesCylinder(it)) {
            return new RuleOutcome.NotApplicable(
                    rule,
                    "the table of 49 CFR 173.304a(a)(2) names this cylinder for " + it.gas()
                            + ", which then follows the table",
                    List.of());
        }
        Optional<GaugePressure> service = it.stamps().servicePressure();
        if (service.isEmpty()) {
            return new RuleOutcome.NotTested(
                    rule,
                    "the service pressure is not given; read the specification mark, such as DOT-4BA400",
                    List.of());
        }
        double t = it.temperatureOf(rule).kelvins();
        if (!it.hasLiquidAt(t)) {
            return SettledPressure.limit(
                    rule, it, t, rule.factor() * service.get().pascals(), "service pressure");
        }
        double allowed = rule.factor() * service.get().pascals();
        double found = it.gauge(it.curve().bubblePressurePa(t));
        return test(rule, it, t, found, allowed, "gauge");
    }

    static RuleOutcome testPressure(FillRule rule, RuleCase it) {
        Optional<GaugePressure> test = it.stamps().testPressure();
        if (test.isEmpty()) {
            return new RuleOutcome.NotTested(
                    rule, "the test pressure is not given; read it on the collar, marked PH or TP", List.of());
        }
        double t = it.temperatureOf(rule).kelvins();
        if (!it.hasLiquidAt(t)) {
            return new RuleOutcome.NotTested(
                    rule,
                    "the saturation line of " + it.gas() + " ends at " + Figures.temperature(it.end()) + ", below "
                            + Figures.temperature(t),
                    List.of());
        }
        double found = it.curve().bubblePressurePa(t) - ONE_BAR_PA;
        return test(rule, it, t, found, rule.factor() * test.get().pascals(), "absolute less 1 bar");
    }

    static RuleOutcome leastTestPressure(FillRule rule, RuleCase it) {
        Optional<GaugePressure> test = it.stamps().testPressure();
        if (test.isEmpty()) {
            return new RuleOutcome.NotTested(
                    rule, "the test pressure is not given; read it on the collar, marked PH or TP", List.of());
        }
        double margin = test.get().pascals() - rule.factor() * ONE_BAR_PA;
        Step step = new Step(
                rule.name(),
                rule.inequality(),
                String.format(Locale.ROOT, "%.2f bar >= %.0f bar", test.get().bars(), rule.factor()),
                margin >= 0 ? "kept" : "broken",
                rule.source());
        return new RuleOutcome.PressureTest(rule, PressureDifference.ofPascals(margin), List.of(step));
    }

    private static RuleOutcome test(
            FillRule rule, RuleCase it, double temperatureK, double found, double allowed, String kind) {
        double margin = allowed - found;
        Step pressure = new Step(
                "pressure of " + it.gas() + " at its bubble point",
                "p(T), " + kind,
                "p(" + Figures.temperature(temperatureK) + ")",
                Figures.pressure(found),
                it.curve().source());
        Step step = new Step(
                rule.name(),
                rule.inequality(),
                Figures.pressure(found) + " <= " + Figures.pressure(allowed),
                (margin >= 0 ? "kept, margin " : "broken by ") + Figures.pressure(Math.abs(margin)),
                rule.source());
        return new RuleOutcome.PressureTest(rule, PressureDifference.ofPascals(margin), List.of(pressure, step));
    }
}
