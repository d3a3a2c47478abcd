package org.satline.program.proof;

import java.util.Random;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.belief.ChargeEstimate.Constants;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.step.StepReading;

/**
 * A system that shares no equation with the simulated ones: subcooling saturates exponentially above a threshold
 * charge,
 * superheat bends like a hyperbolic tangent and stops at zero; the answer lags, drifts with the weather and reads
 * with noise and a fixed
 * bias. All its numbers are our choice, no source.
 */
final class SaturatingPlant implements Plant {
    private final Random random;
    private final MeteringDevice metering;
    private final double targetK;
    private final double ratedSubcoolingK;
    private final double fullChargeKg;
    private final double repeatabilityK;
    private final double thresholdFraction;
    private final double width;
    private final double reach;
    private final double slope;
    private final double biasK;
    private final double settledShare;

    private double chargeError;
    private double movedKg;
    private double weatherK;
    private double shownK;

    SaturatingPlant(Random random) {
        this.random = random;
        metering = random.nextBoolean() ? MeteringDevice.EXPANSION_VALVE : MeteringDevice.FIXED_ORIFICE;
        boolean valve = metering == MeteringDevice.EXPANSION_VALVE;
        ratedSubcoolingK = between(4, 8);
        targetK = valve ? ratedSubcoolingK : between(4, 14);
        fullChargeKg = between(1.5, 6);
        repeatabilityK = between(0.1, 0.3);
        thresholdFraction = -between(0.12, 0.28);
        width = between(0.3, 1);
        reach = between(12, 20);
        slope = between(22, 60);
        biasK = 0.4 * random.nextGaussian();
        settledShare = 1 - Math.exp(-15 / between(3, 6)); // 15 min of waiting, time constant of 3 to 6 min
        chargeError = between(-0.3, 0.3);
        shownK = steadyK();
    }

    /** Superheat or subcooling that the system runs to, K. */
    private double steadyK() {
        if (metering == MeteringDevice.FIXED_ORIFICE) {
            return Math.max(0, targetK - reach * Math.tanh(slope * chargeError / reach) + weatherK + biasK);
        }
        double full = ratedSubcoolingK / (1 - Math.exp(thresholdFraction / width));
        double above = Math.max(0, chargeError - thresholdFraction);
        return Math.max(0, full * (1 - Math.exp(-above / width)) + (above > 0 ? weatherK + biasK : 0));
    }

    @Override
    public MeteringDevice metering() {
        return metering;
    }

    @Override
    public Mass fullCharge() {
        return Mass.ofKilograms(fullChargeKg);
    }

    @Override
    public Constants constants() {
        return Constants.typical(ratedSubcoolingK);
    }

    @Override
    public double toleranceK() {
        return ChargeQuestion.publishedTolerance(metering.judgedBy()).kelvins();
    }

    @Override
    public double chargeError() {
        return chargeError;
    }

    @Override
    public double deviationK() {
        return metering.judgedBy().directionWithCharge() * (shownK - targetK);
    }

    @Override
    public boolean follows() {
        return shownK > Math.max(0.5, 2 * repeatabilityK);
    }

    @Override
    public void move(double kg) {
        chargeError += kg / fullChargeKg;
        movedKg += kg;
        weatherK += 0.15 * random.nextGaussian();
        shownK += settledShare * (steadyK() - shownK);
    }

    @Override
    public StepReading read() {
        double shown = shownK + repeatabilityK * random.nextGaussian();
        return StepReading.of(movedKg, metering.judgedBy(), shown, targetK, repeatabilityK);
    }

    /** Only the judged quantity is known here, so the estimate takes the whole effect from it. */
    @Override
    public double estimatedError() {
        double kelvins = constants().kelvinsPerFraction()
                * (metering == MeteringDevice.FIXED_ORIFICE
                        ? 1 / (2 * constants().ratio())
                        : 1);
        return deviationK() / kelvins;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
