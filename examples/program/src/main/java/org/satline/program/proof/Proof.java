package org.satline.program.proof;

import java.util.SplittableRandom;

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
        SplittableRandom seeds = new SplittableRandom(seed);
        StepScores simulated = new StepScores();
        EstimateScore estimates = new EstimateScore();
        VerdictScore first =
                judged("simulated systems", VisitMaker.simulated(seed), visits, seeds, simulated, estimates);
        StepScores mapped = new StepScores();
        VerdictScore third = judged(
                "machines of another build", VisitMaker.mapped(seed), visits, seeds, mapped, new EstimateScore());
        return first.text()
                + "\n"
                + third.text()
                + "\nCharge error by the estimate with typical constants and exact readings, charge off by at most 30 %; published: within 10 %\n"
                + estimates.text()
                + "\nSteps to target on the simulated systems, charge off by at most 30 %: " + simulated.text()
                + "\nSteps to target on a second plant of another shape, with lag, drift and bias: "
                + StepScores.ofSaturatingPlants(seed, visits).text()
                + "\nSteps to target on the machines of another build, charge off by at most 30 %: " + mapped.text()
                + "\nModels' visits, not measured ones: org.satline.simulation and org.satline.program.mapped say what they leave out.\n";
    }

    private static VerdictScore judged(
            String machines,
            VisitMaker maker,
            int visits,
            SplittableRandom seeds,
            StepScores steps,
            EstimateScore estimates) {
        VerdictScore verdicts = new VerdictScore(machines);
        for (int i = 0; i < visits; i++) {
            Visit visit = maker.next();
            verdicts.add(visit);
            long noiseSeed = seeds.nextLong();
            if (StepScores.takes(visit)) {
                steps.add(() -> new SimulatedPlant(visit, noiseSeed));
                estimates.add(new SimulatedPlant(visit, noiseSeed));
            }
        }
        return verdicts;
    }
}
