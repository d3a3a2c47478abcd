package org.satline.program.proof;

import java.util.SplittableRandom;
import org.satline.saturation.SaturationCurve;

/** Simulated visits, judged and advised: what the verdict and the advice are worth where the truth is known. */
public final class Proof {
    private Proof() {}

    /**
     * Scores visits.
     *
     * @param visits how many, in [1, 100000]
     * @param seed of the random numbers; the same seed gives the same page
     * @return a page of text: confusion matrix, reliability, and ways to charge compared
     */
    public static String page(int visits, long seed) {
        if (!(visits >= 1 && visits <= 100_000)) {
            throw new IllegalArgumentException("visits " + visits + " is outside [1, 100000]; 2000 are usual");
        }
        VisitMaker maker = VisitMaker.simulated(seed);
        VerdictScore verdicts = new VerdictScore();
        StepScores simulated = new StepScores();
        EstimateScore estimates = new EstimateScore();
        SplittableRandom seeds = new SplittableRandom(seed);
        for (int i = 0; i < visits; i++) {
            Visit visit = maker.next();
            verdicts.add(visit);
            long noiseSeed = seeds.nextLong();
            if (StepScores.takes(visit)) {
                simulated.add(() -> new SimulatedPlant(visit, noiseSeed));
                estimates.add(new SimulatedPlant(visit, noiseSeed));
            }
        }
        return verdicts.text()
                + "\nCharge error by the estimate with typical constants and exact readings, charge off by at most 30 %; published: within 10 %\n"
                + estimates.text()
                + "\nSteps to target on the simulated systems, charge off by at most 30 %: " + simulated.text()
                + "\nSteps to target on a second plant of another shape, with lag, drift and bias: "
                + StepScores.ofSaturatingPlants(seed, visits).text()
                + "\nA model's visits, not measured ones: org.satline.simulation says what it leaves out.\n";
    }
}
