package org.satline.charge;

import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * When a probability is enough for a level, in the words of JCGM 106:2012. Immutable, thread-safe.
 *
 * <p>Low or high is called where the probability that the charge is on target or on the other side is at most the producer's risk (a sound
 * charge is touched). On target is called where the probability that it is not is at most the consumer's risk (a wrong charge is left). Between
 * the two the answer is undecided. With 5 % each, the guard band is 1.645 standard uncertainties on either side of each edge.
 *
 * @param producersRisk largest accepted probability of touching a sound charge; in (0, 0.5)
 * @param consumersRisk largest accepted probability of leaving a wrong charge; in (0, 0.5)
 */
public record DecisionRule(double producersRisk, double consumersRisk) {
    /**
     * Checks the risks.
     *
     * @param producersRisk largest accepted probability of touching a sound charge; in (0, 0.5)
     * @param consumersRisk largest accepted probability of leaving a wrong charge; in (0, 0.5)
     */
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
        if (deviation.probability(ChargeLevel.ON_TARGET) >= 1 - consumersRisk) {
            return Optional.of(ChargeLevel.ON_TARGET);
        }
        for (ChargeLevel side : new ChargeLevel[] {ChargeLevel.LOW, ChargeLevel.HIGH}) {
            if (deviation.probability(side) >= 1 - producersRisk) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }

    /**
     * The standard uncertainty with which a deviation of this size would just be decided.
     *
     * @param deviation measured less target
     * @return u, K; 0 on the very edge of the band, where no instrument decides
     */
    double neededUncertaintyK(Deviation deviation) {
        double beyond =
                Math.abs(deviation.value().kelvins()) - deviation.tolerance().kelvins();
        double risk = beyond > 0 ? producersRisk : consumersRisk;
        return Math.abs(beyond) / new NormalDistribution(null, 0, 1).inverseCumulativeProbability(1 - risk);
    }

    private static void check(double risk, String what) {
        if (!(risk > 0 && risk < 0.5)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s %s is outside (0, 0.5); give it as a fraction", what, risk));
        }
    }
}
