package org.satline.examples.proof;

import java.util.ArrayList;
import java.util.List;
import org.satline.saturation.SaturationCurve;
import org.satline.simulation.NoSteadyStateException;

/** Simulated visits, judged and advised: what the verdict and the advice are worth where the truth is known. */
public final class Proof {
    private static final double FARTHEST = 0.3;

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
        VisitMaker maker = new VisitMaker(seed);
        VerdictScore verdicts = new VerdictScore();
        List<StepScore> follows = ways();
        List<StepScore> pinned = ways();
        for (int i = 0; i < visits; i++) {
            Visit visit = maker.next();
            SaturationCurve curve = maker.curve(visit.system().design().refrigerant());
            verdicts.add(visit, curve);
            if (!visit.faulty() && Math.abs(visit.chargeError()) <= FARTHEST && offTarget(visit)) {
                boolean signal = StepScore.judged(visit, visit.chargeError()) > 0.5;
                for (StepScore way : signal ? follows : pinned) {
                    way.add(visit, seed * 1_000_003 + i);
                }
            }
        }
        StringBuilder text = new StringBuilder(verdicts.text());
        text.append("\nSteps to target, charge off by at most 30 %, superheat or subcooling follows it\n\n");
        text.append(StepScore.head());
        follows.forEach(way -> text.append(way.text()));
        text.append("\nThe same where it stands at zero in the beginning\n\n").append(StepScore.head());
        pinned.forEach(way -> text.append(way.text()));
        text.append("\nA model's visits, not measured ones: org.satline.simulation says what it leaves out.\n");
        return text.toString();
    }

    private static boolean offTarget(Visit visit) {
        try {
            return Math.abs(StepScore.deviation(visit, visit.chargeError())) > StepScore.tolerance(visit);
        } catch (NoSteadyStateException e) {
            return false;
        }
    }

    private static List<StepScore> ways() {
        List<StepScore> ways = new ArrayList<>();
        ways.add(new StepScore("advice on the next step", StepScore::advised));
        ways.add(new StepScore("equal shots of 5 % of the charge", StepScore::equalShots));
        ways.add(new StepScore("one correction by the charge estimate", StepScore::oneCorrection));
        return ways;
    }
}
