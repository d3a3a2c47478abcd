package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.explanation.Step;
import org.satline.safety.Caution;

/** The rules that take a share of the volume, of the water capacity or of a mass rating. */
final class LiquidRules {
    /** A strict inequality is kept by this share: far below any scale, far above round-off. */
    private static final double BELOW = 1 - 1e-9;

    private LiquidRules() {}

    static RuleOutcome liquidFraction(FillRule rule, RuleCase it, boolean strict) {
        double t = it.temperatureOf(rule).kelvins();
        if (!it.hasLiquidAt(t)) {
            return new RuleOutcome.NotApplicable(
                    rule,
                    "at " + Figures.temperature(t) + " there is no liquid " + it.gas()
                            + " to measure: its saturation line ends at "
                            + Figures.temperature(it.end())
                            + "; the limit comes from pressure or from a printed figure",
                    List.of());
        }
        if (!(t >= it.curve().bubbleTemperatureRange().low())) {
            return new RuleOutcome.NotTested(
                    rule,
                    "the saturation line of " + it.gas() + " starts at "
                            + Figures.temperature(
                                    it.curve().bubbleTemperatureRange().low()) + ", above " + Figures.temperature(t),
                    List.of());
        }
        double density = it.curve().bubbleLiquidDensity(t);
        double kilograms = rule.factor() * density * it.volume() * (strict ? BELOW : 1);
        List<Step> steps = new ArrayList<>();
        steps.add(it.volumeStep());
        steps.add(it.liquidDensityStep(t, density));
        steps.add(new Step(
                "largest contents by " + rule.name(),
                rule.inequality(),
                String.format(
                        Locale.ROOT,
                        "m %s %.2f x %s x %s",
                        strict ? "<" : "<=",
                        rule.factor(),
                        Figures.density(density),
                        Figures.volume(it.volume())),
                Figures.mass(kilograms),
                rule.source()));
        return it.limit(rule, kilograms, cautions(rule, it), steps);
    }

    private static List<Caution> cautions(FillRule rule, RuleCase it) {
        if (rule.temperature().isEmpty()
                && it.maximumTemperature().kelvins() < FillQuestion.USUAL_MAXIMUM.kelvins() - 1e-9) {
            return List.of(new Caution(
                    "the warmest temperature was set to "
                            + Figures.temperature(it.maximumTemperature().kelvins())
                            + ", below the usual 130 degF; a cylinder in the sun or in a closed vehicle gets warmer than the air",
                    "common practice, no source"));
        }
        return List.of();
    }

    static RuleOutcome waterFraction(FillRule rule, RuleCase it) {
        if (!it.hasLiquidAt(FillQuestion.USUAL_MAXIMUM.kelvins())) {
            return new RuleOutcome.NotApplicable(
                    rule,
                    "it bounds a liquid, and at " + Figures.temperature(FillQuestion.USUAL_MAXIMUM.kelvins())
                            + " there is no liquid " + it.gas()
                            + "; the limit comes from pressure or from a printed figure",
                    List.of());
        }
        double kilograms = rule.factor() * it.waterCapacity();
        Step step = new Step(
                "largest contents by " + rule.name(),
                rule.inequality(),
                String.format(Locale.ROOT, "m <= %.2f x %.4f kg", rule.factor(), it.waterCapacity()),
                Figures.mass(kilograms),
                rule.source());
        List<Caution> cautions = new ArrayList<>();
        double warm = FillQuestion.USUAL_MAXIMUM.kelvins();
        if (it.hasLiquidAt(warm)
                && it.curve().bubbleLiquidDensity(warm) < CylinderStamps.WATER_AT_60_F.kilogramsPerCubicMetre()) {
            cautions.add(new Caution(
                    "80 % of the water capacity is no 80 % of the volume for " + it.gas()
                            + ", which is lighter than water when warm; take a rule that uses the density of its liquid",
                    "arithmetic on the liquid density, " + it.curve().source()));
        }
        return it.limit(rule, kilograms, cautions, List.of(step));
    }

    static RuleOutcome ratingFraction(FillRule rule, RuleCase it) {
        if (it.stamps().massRating().isEmpty()) {
            return new RuleOutcome.NotApplicable(
                    rule,
                    "it is for motor-vehicle containers with a gross mass rating, and none is stamped",
                    List.of());
        }
        double rating = it.stamps().massRating().get().kilograms();
        double kilograms = rule.factor() * rating;
        Step step = new Step(
                "largest contents by " + rule.name(),
                rule.inequality(),
                String.format(Locale.ROOT, "m <= %.2f x %.4f kg", rule.factor(), rating),
                Figures.mass(kilograms),
                rule.source());
        return it.limit(rule, kilograms, List.of(), List.of(step));
    }
}
