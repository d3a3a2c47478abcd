package org.satline.charge;

import java.util.Random;

/**
 * A system that shares no equation with the prior of the advice: subcooling saturates exponentially above a threshold charge, superheat bends like
 * a hyperbolic tangent and stops at zero; the answer lags, drifts with the weather and reads with noise and a fixed bias.
 */
final class SaturatingPlant {
    final MeteringDevice metering;
    final double targetK;
    final double toleranceK;
    final double ratedSubcoolingK;
    final double fullChargeKg;
    final double repeatabilityK;

    private final Random random;
    private final double thresholdFraction;
    private final double width;
    private final double reach;
    private final double slope;
    private final double biasK;
    private final double settledShare;

    double chargeErrorFraction;
    double movedKg;
    private double weatherK;
    private double shownK;

    SaturatingPlant(Random random) {
        this.random = random;
        metering = random.nextBoolean() ? MeteringDevice.EXPANSION_VALVE : MeteringDevice.FIXED_ORIFICE;
        boolean valve = metering == MeteringDevice.EXPANSION_VALVE;
        ratedSubcoolingK = between(4, 8);
        targetK = valve ? ratedSubcoolingK : between(4, 14);
        toleranceK = (valve ? 3 : 5) / 1.8;
        fullChargeKg = between(1.5, 6);
        repeatabilityK = between(0.1, 0.3);
        thresholdFraction = -between(0.12, 0.28);
        width = between(0.3, 1);
        reach = between(12, 20);
        slope = between(22, 60);
        biasK = 0.4 * random.nextGaussian();
        settledShare = 1 - Math.exp(-15 / between(3, 6)); // 15 min of waiting, time constant of 3 to 6 min
        chargeErrorFraction = between(-0.3, 0.3);
        shownK = steadyK();
    }

    /** Superheat or subcooling that the system runs to, K. */
    double steadyK() {
        double x = chargeErrorFraction;
        if (metering == MeteringDevice.FIXED_ORIFICE) {
            return Math.max(0, targetK - reach * Math.tanh(slope * x / reach) + weatherK + biasK);
        }
        double full = ratedSubcoolingK / (1 - Math.exp(thresholdFraction / width));
        double above = Math.max(0, x - thresholdFraction);
        return Math.max(0, full * (1 - Math.exp(-above / width)) + (above > 0 ? weatherK + biasK : 0));
    }

    void move(double kg) {
        chargeErrorFraction += kg / fullChargeKg;
        movedKg += kg;
        weatherK += 0.15 * random.nextGaussian();
        shownK += settledShare * (steadyK() - shownK);
    }

    double readK() {
        return shownK + repeatabilityK * random.nextGaussian();
    }

    /** Deviation towards more charge, without noise. */
    double deviationK() {
        return metering.judgedBy().directionWithCharge() * (shownK - targetK);
    }

    boolean hasSignal() {
        return shownK > Math.max(0.5, 2 * repeatabilityK);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
