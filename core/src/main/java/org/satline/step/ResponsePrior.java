package org.satline.step;

import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Normal belief about a response before any step: mean and standard deviation, K/kg. Immutable, thread-safe.
 *
 * @param mean mean, K/kg; above 0
 * @param deviation standard deviation, K/kg; above 0
 */
record ResponsePrior(double mean, double deviation) {
    /**
     * Standard deviation of the charge error that a reading is put down to, share of the full charge; small out of caution: a first step
     * comes out smaller. Our choice, no source.
     */
    private static final double USUAL_CHARGE_ERROR = 0.1;

    private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);
    private static final int NODES = 80;
    private static final double LEAST_SHARE = 0.1;
    private static final double MOST_SHARE = 4;

    /**
     * Sharpens the belief by the first reading that follows the charge: a response that would need an unheard-of charge error to explain
     * it, or that could not have left zero on the way from the reading before, is not the true one. Bayes' rule over a grid of responses,
     * then the normal distribution of the same mean and variance.
     *
     * @param first first reading with a signal
     * @param atZero reading before it, at zero, if there is one
     */
    ResponsePrior given(StepReading first, Optional<StepReading> atZero, double fullChargeKg) {
        double sum = 0;
        double weighted = 0;
        double squared = 0;
        for (int i = 0; i < NODES; i++) {
            double response = mean * (LEAST_SHARE + (MOST_SHARE - LEAST_SHARE) * i / (NODES - 1));
            double weight = weight(response, first, fullChargeKg)
                    * atZero.map(zero -> leavingZero(response, zero, first)).orElse(1.0);
            sum += weight;
            weighted += weight * response;
            squared += weight * response * response;
        }
        if (!(sum > 0)) {
            return this; // no response explains such readings: the other checks speak of them
        }
        double centre = weighted / sum;
        return new ResponsePrior(centre, Math.sqrt(Math.max(squared / sum - centre * centre, 1e-6 * centre * centre)));
    }

    private double weight(double response, StepReading first, double fullChargeKg) {
        double believed = (response - mean) / deviation;
        double chargeError = (first.deviationK() / response - first.netMassKg()) / fullChargeKg / USUAL_CHARGE_ERROR;
        return Math.exp(-(believed * believed + chargeError * chargeError) / 2) / response;
    }

    /**
     * Probability that the step between the readings moves at least as far as they show: part of it may have been spent at zero, none can
     * be missing.
     */
    private static double leavingZero(double response, StepReading zero, StepReading first) {
        double moved = response * Math.abs(first.netMassKg() - zero.netMassKg());
        double shown = Math.abs(first.deviationK() - zero.deviationK());
        double noise = Math.hypot(first.repeatabilityK(), zero.repeatabilityK());
        return STANDARD.cumulativeProbability((moved - shown) / noise);
    }
}
