package org.satline.filling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.filling.RuleOutcome.NotApplicable;
import org.satline.filling.RuleOutcome.Reason;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Density;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** One cylinder, one refrigerant, one warmest temperature: what a rule looks at. The model is made only when asked for. */
record RuleCase(FillQuestion question, SaturationCurve curve, Supplier<FluidModel> model) {
    private static final String WATER_SOURCE = "water at 60 degF, 62.37 lb/ft3";
    private static final double LOW_PRESSURE_ABOVE_K = Temperature.ofCelsius(65).kelvins();
    private static final double COMPRESSED_BELOW_K = Temperature.ofCelsius(-50).kelvins();
    /** The rules state gauge pressures against the standard atmosphere. */
    private static final double ATMOSPHERE_PA = Atmosphere.standard().pressure().pascals();

    CylinderStamps stamps() {
        return question.stamps();
    }

    double volume() {
        return stamps().volume().cubicMetres();
    }

    double waterCapacity() {
        return stamps().waterCapacity().kilograms();
    }

    Figure capacityFigure() {
        return Figure.of("Wc", stamps().waterCapacity());
    }

    String gas() {
        return curve.refrigerant().designation();
    }

    double gauge(double absolutePa) {
        return absolutePa - ATMOSPHERE_PA;
    }

    double absolute(double gaugePa) {
        return gaugePa + ATMOSPHERE_PA;
    }

    Temperature temperatureOf(FillRule rule) {
        Temperature warmest = question.maximumTemperature();
        return rule.temperature()
                .filter(own -> !(rule.orWarmer() && warmest.compareTo(own) > 0))
                .orElse(warmest);
    }

    /** Where the bubble line ends, K. */
    double end() {
        return curve.bubbleTemperatureRange().high();
    }

    boolean hasLiquidAt(double temperatureK) {
        return temperatureK <= end();
    }

    /** Why a rule passes this gas or receptacle by; empty where it applies. */
    Optional<NotApplicable> outOfScope(FillRule rule) {
        boolean tank = stamps().specification()
                .filter(CylinderSpecification::isPortableTank)
                .isPresent();
        double end = end();
        return switch (rule.scope()) {
            case ANY -> Optional.empty();
            case TANK -> unless(tank, rule, Reason.FOR_TANKS);
            case RECEPTACLE -> unless(!tank, rule, Reason.NOT_FOR_TANKS);
            case LOW -> unless(end > LOW_PRESSURE_ABOVE_K, rule, Reason.FOR_LOW_PRESSURE);
            case HIGH ->
                unless(end <= LOW_PRESSURE_ABOVE_K && end >= COMPRESSED_BELOW_K, rule, Reason.FOR_HIGH_PRESSURE);
            case COMPRESSED -> unless(end < COMPRESSED_BELOW_K, rule, Reason.FOR_COMPRESSED);
        };
    }

    private Optional<NotApplicable> unless(boolean applies, FillRule rule, Reason reason) {
        return applies ? Optional.empty() : Optional.of(no(rule, reason));
    }

    NotApplicable no(FillRule rule, Reason reason, Figure... more) {
        List<Figure> figures =
                new ArrayList<>(List.of(Figure.of("gas", gas()), Figure.of("end", Temperature.ofKelvins(end()))));
        figures.addAll(List.of(more));
        return new NotApplicable(rule, reason, figures);
    }

    NotApplicable noLiquid(FillRule rule, double temperatureK) {
        return no(rule, Reason.NO_LIQUID, Figure.of("temperature", Temperature.ofKelvins(temperatureK)));
    }

    RuleOutcome limit(FillRule rule, double kilograms, List<Finding> cautions, List<Step> before, Figure... given) {
        return limit(rule, rule.inequality(), kilograms, cautions, before, given);
    }

    RuleOutcome limit(
            FillRule rule,
            String formula,
            double kilograms,
            List<Finding> cautions,
            List<Step> before,
            Figure... given) {
        Mass most = Mass.ofKilograms(kilograms);
        List<Step> steps = new ArrayList<>(before);
        steps.add(new Step("largestContents", formula, List.of(given), Figure.of("m", most), rule.source()));
        return new RuleOutcome.MassLimit(rule, most, cautions, steps);
    }

    Finding caution(FillingCode code, String basis, Figure... figures) {
        return Finding.of(Severity.CAUTION, code, Subject.cylinder(question.name()), figures)
                .citing(basis);
    }

    Step volumeStep() {
        return new Step(
                "cylinderVolume",
                "V = Wc / rho_w",
                List.of(capacityFigure(), Figure.of("rho_w", CylinderStamps.WATER_AT_60_F)),
                Figure.of("V", stamps().volume()),
                WATER_SOURCE);
    }

    Step liquidDensityStep(double temperatureK, double density) {
        return new Step(
                "liquidDensity",
                "rho_l(T)",
                List.of(Figure.of("T", Temperature.ofKelvins(temperatureK))),
                Figure.of("rho_l", Density.ofKilogramsPerCubicMetre(density)),
                curve.source());
    }

    /** A caution where contents that a table allows fill the cylinder with liquid below the temperature named by the rule. */
    List<Finding> liquidFullCaution(FillRule rule, double kilograms, double ruleTemperatureK) {
        if (!hasLiquidAt(ruleTemperatureK)) {
            return List.of();
        }
        Temperature named = Temperature.ofKelvins(ruleTemperatureK);
        return VesselPoint.liquidFull(curve, kilograms / volume()) instanceof VesselPoint.At full && full.isBy(named)
                ? List.of(caution(
                        FillingCode.TABLE_FILLS_WITH_LIQUID,
                        rule.citation() + "; " + curve.source(),
                        Figure.of("rule", rule.name()),
                        Figure.of("gas", gas()),
                        Figure.of("fullAt", full.temperature()),
                        Figure.of("temperature", named)))
                : List.of();
    }
}
