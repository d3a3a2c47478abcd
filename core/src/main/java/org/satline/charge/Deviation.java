package org.satline.charge;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.apache.commons.math3.distribution.NormalDistribution;
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
    /** A probability that is as close to the wanted one as this may be printed alike. */
    private static final int MOST_DIGITS = 4;

    /** Of 100 times a probability in binary. */
    private static final double DUST = 1e-9;

    /** {@inheritDoc} */
    public Deviation {
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
     * The three probabilities in words, with as many digits as it takes to see on which side of what the rule wants they lie.
     */
    String probabilities(DecisionRule rule) {
        int digits = 0;
        while (digits < MOST_DIGITS && !seen(rule, digits)) {
            digits++;
        }
        String percent = "%." + digits + "f %%";
        return String.format(
                Locale.ROOT,
                "low " + percent + ", on target " + percent + ", high " + percent,
                100 * probability(ChargeLevel.LOW),
                100 * probability(ChargeLevel.ON_TARGET),
                100 * probability(ChargeLevel.HIGH));
    }

    private boolean seen(DecisionRule rule, int digits) {
        for (ChargeLevel level : ChargeLevel.values()) {
            double wanted = rule.wanted(level);
            double printed = new BigDecimal(100 * probability(level))
                    .setScale(digits, RoundingMode.HALF_UP)
                    .doubleValue();
            // printed / 100 would bring rounding of its own
            if (probability(level) >= wanted != printed >= 100 * wanted - DUST) {
                return false;
            }
        }
        return true;
    }

    Step step() {
        return new Step(
                criterion.label() + " less target",
                "d = measured - target; within +/- tolerance it is on target",
                String.format(
                        Locale.ROOT,
                        "%.2f K - %.2f K; tolerance %.2f K (%.1f degF)",
                        measured.kelvins(),
                        target.kelvins(),
                        tolerance.kelvins(),
                        tolerance.fahrenheitDegrees()),
                String.format(
                        Locale.ROOT,
                        "%+.2f K, u = %.2f K; probability low %.2f, on target %.2f, high %.2f",
                        value().kelvins(),
                        standardUncertaintyK(),
                        probability(ChargeLevel.LOW),
                        probability(ChargeLevel.ON_TARGET),
                        probability(ChargeLevel.HIGH)),
                PublishedLimits.SOURCE + "; probabilities by JCGM 106:2012");
    }
}
