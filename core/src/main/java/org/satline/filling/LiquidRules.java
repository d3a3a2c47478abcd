package org.satline.filling;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.filling.RuleOutcome.Reason;
import org.satline.quantity.Density;
import org.satline.quantity.Temperature;

/** The rules that take a share of the volume, of the water capacity or of a mass rating. */
final class LiquidRules {
    /** A strict inequality is kept by this share: far below any scale, far above round-off. */
    private static final double BELOW = 1 - 1e-9;

    private LiquidRules() {}

    static RuleOutcome liquidFraction(FillRule rule, RuleCase it) {
        double t = it.temperatureOf(rule).kelvins();
        if (!it.hasLiquidAt(t)) {
            return it.noLiquid(rule, t);
        }
        double start = it.curve().bubbleTemperatureRange().low();
        if (!(t >= start)) {
            return new RuleOutcome.NotTested(
                    rule,
                    Reason.BELOW_LINE,
                    Optional.empty(),
                    List.of(
                            Figure.of("gas", it.gas()),
                            Figure.of("start", Temperature.ofKelvins(start)),
                            Figure.of("temperature", Temperature.ofKelvins(t))));
        }
        double density = it.curve().bubbleLiquidDensity(t);
        double share = rule.method() == FillRule.Method.LIQUID_FRACTION_BELOW ? BELOW : 1;
        return it.limit(
                rule,
                rule.number() * density * it.volume() * share,
                cautions(rule, it),
                List.of(it.volumeStep(), it.liquidDensityStep(t, density)),
                Figure.of("share", rule.number(), "1"),
                Figure.of("rho_l", Density.ofKilogramsPerCubicMetre(density)),
                Figure.of("V", it.stamps().volume()));
    }

    private static List<Finding> cautions(FillRule rule, RuleCase it) {
        Temperature warmest = it.question().maximumTemperature();
        Temperature usual = FillQuestion.USUAL_MAXIMUM;
        return rule.temperature().isEmpty() && warmest.kelvins() < usual.kelvins() - 1e-9
                ? List.of(it.caution(
                        FillingCode.WARMEST_BELOW_USUAL,
                        Finding.PRACTICE,
                        Figure.of("warmest", warmest),
                        Figure.of("usual", usual)))
                : List.of();
    }

    static RuleOutcome waterFraction(FillRule rule, RuleCase it) {
        double warm = FillQuestion.USUAL_MAXIMUM.kelvins();
        if (!it.hasLiquidAt(warm)) {
            return it.noLiquid(rule, warm);
        }
        boolean light = it.curve().bubbleLiquidDensity(warm) < CylinderStamps.WATER_AT_60_F.kilogramsPerCubicMetre();
        List<Finding> cautions = light
                ? List.of(it.caution(
                        FillingCode.LIGHTER_THAN_WATER,
                        it.curve().source(),
                        Figure.of("gas", it.gas()),
                        Figure.of("rule", rule.name())))
                : List.of();
        return it.limit(
                rule,
                rule.number() * it.waterCapacity(),
                cautions,
                List.of(),
                Figure.of("share", rule.number(), "1"),
                it.capacityFigure());
    }

    static RuleOutcome ratingFraction(FillRule rule, RuleCase it) {
        return it.stamps()
                .massRating()
                .map(rating -> it.limit(
                        rule,
                        rule.number() * rating.kilograms(),
                        List.of(),
                        List.of(),
                        Figure.of("share", rule.number(), "1"),
                        Figure.of("rating", rating)))
                .orElseGet(() -> it.no(rule, Reason.NO_RATING));
    }
}
