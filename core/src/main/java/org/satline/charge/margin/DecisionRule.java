package org.satline.charge.margin;

import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * When a probability is enough for a level, in the words of JCGM 106:2012. Immutable, thread-safe.
 *
 * <p>Low or high is called where the probability that the charge is on target or on the other side is at most the producer's risk (a sound
 * charge is touched). On target is called where the probability that it is not is at most the consumer's risk (a wrong charge is left).
 * Between the two the answer is undecided. With 5 % each, the guard band is 1.645 standard uncertainties on either side of each edge.
 *
 * @param producersRisk largest accepted probability of touching a sound charge; in (0, 0.5)
 * @param consumersRisk largest accepted probability of leaving a wrong charge; in (0, 0.5)
 */
public record DecisionRule(double producersRisk, double consumersRisk) {
    /** Leaves 1E-15 of the first interval. */
    private static final int HALVINGS = 50;

    /** {@inheritDoc} */
    public DecisionRule {
        check(producersRisk, "producer's risk");
        check(consumersRisk, "consumer's risk");
    }

    /**
     * Returns the rule with both risks at 5 %.
     *
     * @return the rule
     */
    public static DecisionRule usual() {
        return new DecisionRule(0.05, 0.05);
    }

    /**
     * Applies the rule.
     *
     * @param deviation measured less target with its uncertainty
     * @return the level, empty where it is undecided
     */
    public Optional<ChargeLevel> decide(Deviation deviation) {
        for (ChargeLevel level : new ChargeLevel[] {ChargeLevel.ON_TARGET, ChargeLevel.LOW, ChargeLevel.HIGH}) {
            if (deviation.probability(level) >= wanted(level)) {
                return Optional.of(level);
            }
        }
        return Optional.empty();
    }

    /**
     * The largest standard uncertainty with which a deviation of this size is decided, by this very rule.
     *
     * @param deviation measured less target
     * @return u, K; 0 on the very edge of the band, where no instrument decides
     */
    double neededUncertaintyK(Deviation deviation) {
        double beyond =
                Math.abs(deviation.value().kelvins()) - deviation.tolerance().kelvins();
        double risk = beyond > 0 ? producersRisk : consumersRisk;
        // the nearer edge alone would allow this much; inside the band the farther one takes its share of the risk
        double undecided =
                1.001 * Math.abs(beyond) / new NormalDistribution(null, 0, 1).inverseCumulativeProbability(1 - risk);
        double decided = 0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (decided + undecided) / 2;
            if (middle > 0 && decide(deviation.withStandardUncertainty(middle)).isPresent()) {
                decided = middle;
            } else {
                undecided = middle;
            }
        }
        return decided;
    }

    /**
     * Returns the least probability that makes a level of it.
     *
     * @param level the level
     * @return in (0.5, 1)
     */
    public double wanted(ChargeLevel level) {
        return 1 - (level == ChargeLevel.ON_TARGET ? consumersRisk : producersRisk);
    }

    private static void check(double risk, String what) {
        if (!(risk > 0 && risk < 0.5)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s %s is outside (0, 0.5); give it as a fraction", what, risk));
        }
    }
}
