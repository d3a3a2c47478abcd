package org.satline.charge.margin;

import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;

/**
 * Measured less target of the quantity that shows the charge, with its uncertainty and tolerance. Immutable, thread-safe.
 *
 * @param criterion superheat or subcooling
 * @param measured the measured quantity
 * @param target its target
 * @param tolerance half-width of the band around the target, above 0
 * @param budget uncertainty of measured less target, K
 */
public record Deviation(
        Criterion criterion,
        TemperatureDifference measured,
        TemperatureDifference target,
        TemperatureDifference tolerance,
        UncertaintyBudget budget) {

    /** {@inheritDoc} */
    public Deviation {
        Parts.required("tolerance", tolerance);
        Parts.required("criterion measured target budget", criterion, measured, target, budget);
        if (!(tolerance.kelvins() > 0)) {
            throw new IllegalArgumentException(
                    "tolerance " + tolerance + " is not above 0 K; give the half-width of the band");
        }
    }

    /**
     * Returns measured less target.
     *
     * @return signed difference
     */
    public TemperatureDifference value() {
        return measured.minus(target);
    }

    /**
     * Returns the combined standard uncertainty of the difference.
     *
     * @return u, K
     */
    public double standardUncertaintyK() {
        return budget.combined();
    }

    /**
     * Returns the level by the measured value alone, as the published check reads it (simple acceptance, JCGM 106:2012, 8.2).
     *
     * @return low, on target or high
     */
    public ChargeLevel level() {
        double towardsMore = value().kelvins() * criterion.directionWithCharge();
        // a reading printed on the edge of the band is inside it, whatever the last digit of a unit conversion does
        double edge = tolerance.kelvins() + 1e-9;
        if (towardsMore > edge) {
            return ChargeLevel.HIGH;
        }
        return towardsMore < -edge ? ChargeLevel.LOW : ChargeLevel.ON_TARGET;
    }

    /**
     * Returns the probability of a level, from the normal distribution of measured less target (JCGM 106:2012, 7).
     *
     * @param level the level
     * @return probability in [0, 1]; the three add up to 1
     */
    public double probability(ChargeLevel level) {
        double towardsMore = value().kelvins() * criterion.directionWithCharge();
        double u = standardUncertaintyK();
        if (!(u > 0)) {
            return level == level() ? 1 : 0;
        }
        NormalDistribution truth = new NormalDistribution(null, towardsMore, u);
        double low = truth.cumulativeProbability(-tolerance.kelvins());
        double notHigh = truth.cumulativeProbability(tolerance.kelvins());
        return switch (level) {
            case LOW -> low;
            case ON_TARGET -> Math.max(0, notHigh - low);
            case HIGH -> 1 - notHigh;
        };
    }

    /** The same reading with another uncertainty, K, above 0. */
    Deviation withStandardUncertainty(double kelvins) {
        return new Deviation(criterion, measured, target, tolerance, UncertaintyBudget.of("all", kelvins));
    }

    /**
     * Returns the likeliest of the three levels.
     *
     * @return the level; on target where two are alike
     */
    public ChargeLevel likeliest() {
        ChargeLevel best = ChargeLevel.ON_TARGET;
        for (ChargeLevel level : ChargeLevel.values()) {
            if (probability(level) > probability(best)) {
                best = level;
            }
        }
        return best;
    }

    /**
     * Returns the three probabilities, unrounded.
     *
     * @return low, on target, high
     */
    public List<Figure> probabilities() {
        return List.of(
                Figure.of("low", probability(ChargeLevel.LOW), "1"),
                Figure.of("onTarget", probability(ChargeLevel.ON_TARGET), "1"),
                Figure.of("high", probability(ChargeLevel.HIGH), "1"));
    }

    /**
     * Returns the derivation.
     *
     * @param source where target and tolerance stand
     * @return the difference with its parts
     */
    public Step step(String source) {
        return new Step(
                criterion == Criterion.SUPERHEAT ? "superheatLessTarget" : "subcoolingLessTarget",
                "d = measured - target",
                List.of(
                        Figure.of("measured", measured),
                        Figure.of("target", target),
                        Figure.of("tolerance", tolerance),
                        Figure.of("u", TemperatureDifference.ofKelvins(standardUncertaintyK()))),
                Figure.of("d", value()),
                source + "; probabilities by JCGM 106:2012");
    }
}
