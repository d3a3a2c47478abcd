package org.satline.filling;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.filling.RuleOutcome.NotTested;
import org.satline.filling.RuleOutcome.Reason;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;

/** The rules that compare a pressure of the contents with a pressure stamped on the cylinder. */
final class PressureRules {
    /** The 1 bar that P200(5)(c) takes off an absolute vapour pressure. */
    private static final double ONE_BAR_PA = Pressure.ofBars(1).pascals();

    private PressureRules() {}

    static RuleOutcome servicePressure(FillRule rule, RuleCase it, FillingDensityTable densities) {
        if (densities.namesCylinder(it)) {
            return it.no(rule, Reason.CYLINDER_NAMED);
        }
        Optional<GaugePressure> service = it.stamps().servicePressure();
        if (service.isEmpty()) {
            return NotTested.without(rule, Stamp.SERVICE_PRESSURE);
        }
        double t = it.temperatureOf(rule).kelvins();
        double allowed = rule.number() * service.get().pascals();
        return it.hasLiquidAt(t)
                ? test(rule, it, t, it.gauge(it.curve().bubblePressurePa(t)), allowed)
                : settled(rule, it, t, allowed);
    }

    static RuleOutcome testPressure(FillRule rule, RuleCase it) {
        Optional<GaugePressure> test = it.stamps().testPressure();
        if (test.isEmpty()) {
            return NotTested.without(rule, Stamp.TEST_PRESSURE);
        }
        double t = it.temperatureOf(rule).kelvins();
        if (!it.hasLiquidAt(t)) {
            return new NotTested(
                    rule,
                    Reason.NO_LIQUID,
                    Optional.empty(),
                    it.noLiquid(rule, t).figures());
        }
        double found = it.curve().bubblePressurePa(t) - ONE_BAR_PA;
        return test(rule, it, t, found, rule.number() * test.get().pascals());
    }

    static RuleOutcome leastTestPressure(FillRule rule, RuleCase it) {
        Optional<GaugePressure> test = it.stamps().testPressure();
        if (test.isEmpty()) {
            return NotTested.without(rule, Stamp.TEST_PRESSURE);
        }
        double margin = test.get().pascals() - rule.number() * ONE_BAR_PA;
        Figure least = Figure.of("least", GaugePressure.ofBars(rule.number()));
        return outcome(rule, margin, List.of(), Figure.of("TP", test.get()), least);
    }

    /** Largest contents whose settled pressure, at a temperature above the saturation line, stays within a share of the test pressure. */
    static RuleOutcome settledPressure(FillRule rule, RuleCase it) {
        return it.stamps()
                .testPressure()
                .map(test -> settled(rule, it, it.temperatureOf(rule).kelvins(), rule.number() * test.pascals()))
                .orElseGet(() -> NotTested.without(rule, Stamp.TEST_PRESSURE));
    }

    private static RuleOutcome settled(FillRule rule, RuleCase it, double temperatureK, double allowedGaugePa) {
        double allowed = it.absolute(allowedGaugePa);
        // above the end of the saturation line there is one phase, so density and pressure go one to one
        double density = it.model().get().stateAt(temperatureK, allowed).density();
        Figure rho = Figure.of("rho", Density.ofKilogramsPerCubicMetre(density));
        Step dense = new Step(
                "densityAtPressure",
                "rho(T, p)",
                List.of(
                        Figure.of("T", Temperature.ofKelvins(temperatureK)),
                        Figure.of("p", Pressure.ofPascals(allowed))),
                rho,
                it.curve().source());
        return it.limit(
                rule,
                density * it.volume(),
                List.of(),
                List.of(it.volumeStep(), dense),
                rho,
                Figure.of("V", it.stamps().volume()));
    }

    private static RuleOutcome test(FillRule rule, RuleCase it, double temperatureK, double found, double allowed) {
        Figure pressure = Figure.of("p", GaugePressure.ofPascals(found));
        Step bubble = new Step(
                "bubblePressure",
                "p(T)",
                List.of(Figure.of("T", Temperature.ofKelvins(temperatureK))),
                pressure,
                it.curve().source());
        Figure limit = Figure.of("allowed", GaugePressure.ofPascals(allowed));
        return outcome(rule, allowed - found, List.of(bubble), pressure, limit);
    }

    private static RuleOutcome outcome(FillRule rule, double marginPa, List<Step> before, Figure found, Figure limit) {
        PressureDifference margin = PressureDifference.ofPascals(marginPa);
        Step step = new Step(
                "pressureMargin", rule.inequality(), List.of(found, limit), Figure.of("margin", margin), rule.source());
        return new RuleOutcome.PressureTest(
                rule, margin, before.isEmpty() ? List.of(step) : List.of(before.get(0), step));
    }
}
