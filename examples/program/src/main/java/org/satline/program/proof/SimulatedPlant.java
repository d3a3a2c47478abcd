package org.satline.program.proof;

import java.util.Random;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.belief.ChargeEstimate;
import org.satline.charge.belief.ChargeEstimate.Constants;
import org.satline.charge.margin.Margins;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.simulation.ImposedFault;
import org.satline.step.StepReading;

/** The simulated system of a visit; every reading is of the steady state, with noise. */
final class SimulatedPlant implements Plant {
    /** As a digital instrument repeats: 0.1 to 0.3 K; our choice, no source. */
    private static final double LEAST_REPEATABILITY_K = 0.1;

    private static final double REPEATABILITY_RANGE_K = 0.2;

    private final Visit visit;
    private final Random noise;
    private final double repeatabilityK;
    private double chargeError;
    private double movedKg;

    SimulatedPlant(Visit visit, long noiseSeed) {
        this.visit = visit;
        noise = new Random(noiseSeed);
        repeatabilityK = LEAST_REPEATABILITY_K + REPEATABILITY_RANGE_K * noise.nextDouble();
        chargeError = visit.chargeError();
    }

    @Override
    public MeteringDevice metering() {
        return visit.metering();
    }

    @Override
    public Mass fullCharge() {
        return visit.system().ratedCharge();
    }

    @Override
    public Constants constants() {
        return Constants.typical(visit.system().ratedSubcoolingK());
    }

    @Override
    public double toleranceK() {
        return ChargeQuestion.publishedTolerance(visit.metering().judgedBy()).kelvins();
    }

    @Override
    public double chargeError() {
        return chargeError;
    }

    @Override
    public double deviationK() {
        return visit.metering().judgedBy().directionWithCharge() * (judgedK() - visit.target());
    }

    @Override
    public boolean follows() {
        return judgedK() > 0.5;
    }

    @Override
    public void move(double kg) {
        movedKg += kg;
        chargeError += kg / fullCharge().kilograms();
    }

    @Override
    public StepReading read() {
        double shown = judgedK() + repeatabilityK * noise.nextGaussian();
        return StepReading.of(movedKg, visit.metering().judgedBy(), shown, visit.target(), repeatabilityK);
    }

    /** From exact superheat and subcooling, against what the right charge shows in the same weather. */
    @Override
    public double estimatedError() {
        Margins now = margins(chargeError, visit.fault());
        Margins right = margins(0, ImposedFault.none());
        return ChargeEstimate.of(
                        now.superheat().orElseThrow(),
                        right.superheat().orElseThrow().value().kelvins(),
                        now.subcooling().orElseThrow(),
                        right.subcooling().orElseThrow().value().kelvins(),
                        constants())
                .fraction();
    }

    private double judgedK() {
        return margins(chargeError, visit.fault())
                .get(visit.metering().judgedBy())
                .orElseThrow()
                .value()
                .kelvins();
    }

    private Margins margins(double error, ImposedFault fault) {
        return Instruments.exact(visit.curve(), visit.system().settled(error, visit.air(), fault));
    }
}
