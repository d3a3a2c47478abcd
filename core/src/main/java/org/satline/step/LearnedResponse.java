package org.satline.step;

import java.util.List;
import java.util.Locale;

/**
 * What is known, after the steps so far, about how a system answers to charge: where it stands and how far one kilogram moves it.
 * All deviations count towards more charge (subcooling less target, or target less superheat). Immutable, thread-safe.
 *
 * <p>Bayesian linear regression of deviation on net mass, JCGM 101-style normal prior on the slope, flat on the level. Old readings
 * lose weight with their distance in mass, because the answer is not a straight line over a wide range.
 *
 * @param deviationK deviation now, K
 * @param deviationVariance its variance, K2
 * @param kelvinsPerKilogram response b, K/kg; above 0
 * @param responseVariance variance of b, (K/kg)2
 * @param covariance covariance of deviation and response, K2/kg
 * @param informativeReadings number of readings that carried a signal
 */
record LearnedResponse(
        double deviationK,
        double deviationVariance,
        double kelvinsPerKilogram,
        double responseVariance,
        double covariance,
        int informativeReadings) {
    /** Share of a step's effect that may differ because the answer is curved; our choice, no source. */
    private static final double CURVATURE = 0.25;
    /** Share of the tolerance that a step is meant to leave; our choice, no source. */
    private static final double SHORT_OF_TARGET = 0.25;
    /** Least response that is believed, as a share of the prior mean. */
    private static final double LEAST_SHARE = 0.15;

    /** {@inheritDoc} */
    public LearnedResponse {
        if (!(Double.isFinite(deviationK)
                && deviationVariance >= 0
                && kelvinsPerKilogram > 0
                && responseVariance >= 0
                && Double.isFinite(covariance))) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "response %s K/kg at deviation %s K is not usable; both must be finite and the response above 0",
                    kelvinsPerKilogram,
                    deviationK));
        }
    }

    /**
     * Learns from the readings that carried a signal, the last one being the present.
     *
     * @param readings settled readings in order, at least one
     * @param prior response before any step, K/kg
     * @param priorDeviation its standard deviation, K/kg
     * @return what is known now
     */
    static LearnedResponse from(List<StepReading> readings, double prior, double priorDeviation) {
        StepReading now = readings.get(readings.size() - 1);
        // Unknowns: level at the present mass, response. Information matrix of the normal equations.
        double waa = 0;
        double wab = 0;
        double wbb = 1 / (priorDeviation * priorDeviation);
        double ra = 0;
        double rb = prior / (priorDeviation * priorDeviation);
        for (StepReading each : readings) {
            double mass = each.netMassKg() - now.netMassKg();
            double bend = CURVATURE * prior * mass;
            double weight = 1 / (each.repeatabilityK() * each.repeatabilityK() + bend * bend);
            waa += weight;
            wab += weight * mass;
            wbb += weight * mass * mass;
            ra += weight * each.deviationK();
            rb += weight * mass * each.deviationK();
        }
        double determinant = waa * wbb - wab * wab;
        double level = (wbb * ra - wab * rb) / determinant;
        double slope = (waa * rb - wab * ra) / determinant;
        return new LearnedResponse(
                level,
                wbb / determinant,
                Math.max(slope, LEAST_SHARE * prior),
                waa / determinant,
                -wab / determinant,
                readings.size());
    }

    /**
     * Probability that a step carries the next reading past the far edge of the band.
     *
     * @param massKg signed step, kg; adding is positive
     * @param toleranceK half-width of the band, K
     * @param repeatabilityK standard deviation of a settled reading, K
     * @return probability in [0, 1]
     */
    double passing(double massKg, double toleranceK, double repeatabilityK) {
        double spread = spreadK(massKg, repeatabilityK);
        double room = toleranceK - Math.signum(massKg) * (deviationK + kelvinsPerKilogram * massKg);
        return new org.apache.commons.math3.distribution.NormalDistribution(null, 0, 1)
                .cumulativeProbability(-room / spread);
    }

    private double spreadK(double massKg, double repeatabilityK) {
        double bend = CURVATURE * kelvinsPerKilogram * massKg;
        double variance = deviationVariance
                + 2 * massKg * covariance
                + massKg * massKg * responseVariance
                + bend * bend
                + repeatabilityK * repeatabilityK;
        return Math.sqrt(Math.max(variance, 1e-12));
    }

    /**
     * The largest step towards the target that passes the far edge with no more than the given probability, and that is not meant to come
     * nearer to the target than a quarter of the tolerance: falling short costs one more step, going too far another cylinder.
     *
     * @param toleranceK half-width of the band, K
     * @param repeatabilityK standard deviation of a settled reading, K
     * @param risk accepted probability
     * @return signed step, kg; 0 where even the smallest step is too risky
     */
    double largestStepKg(double toleranceK, double repeatabilityK, double risk) {
        double wanted = Math.max(0, Math.abs(deviationK) - SHORT_OF_TARGET * toleranceK);
        double whole = -Math.signum(deviationK) * wanted / kelvinsPerKilogram;
        if (passing(whole, toleranceK, repeatabilityK) <= risk) {
            return whole;
        }
        double safe = 0;
        double risky = whole;
        for (int i = 0; i < 60; i++) { // halving: 60 rounds reach the last bit
            double middle = (safe + risky) / 2;
            if (passing(middle, toleranceK, repeatabilityK) <= risk) {
                safe = middle;
            } else {
                risky = middle;
            }
        }
        return safe;
    }
}
