package org.satline.step;

import java.util.List;
import org.satline.quantity.Mass;

/**
 * Whether readings after steps are such as a wrong charge gives. Shares and factors are our choice, no source.
 *
 * @param readings all settled readings in order
 * @param teaching the last of them that carried a signal without a break
 * @param fullCharge full charge of the system
 */
record StepAnswers(List<StepReading> readings, List<StepReading> teaching, Mass fullCharge) {
    /** A response below this share of the expected one, beyond doubt, is none: while little was moved, and after more. */
    private static final double NO_RESPONSE = 0.15;

    private static final double NO_RESPONSE_TO_MUCH = 0.3;
    /** That much of the full charge is much. */
    private static final double MUCH = 0.2;
    /** After this share of the full charge moved one way the charge is not what is wrong: more than 40 % off is rare. */
    private static final double MOST = 0.5;
    /** A response above this multiple of the expected one, beyond doubt, is not that of a charge. */
    private static final double TOO_STRONG = 6;
    /** One-sided 95 %. */
    private static final double ONE_SIDED = 1.645;
    /** A reading farther from what all of them say, in its own standard deviations, does not belong to them. */
    private static final double APART = 2;

    boolean tooMuchMoved() {
        return Math.abs(now().netMassKg()) > MOST * fullCharge.kilograms();
    }

    boolean none(double expectedPerKg) {
        double moved = Math.abs(now().netMassKg() - teaching.get(0).netMassKg());
        double share = moved < MUCH * fullCharge.kilograms() ? NO_RESPONSE : NO_RESPONSE_TO_MUCH;
        Line line = line();
        return line.slope + ONE_SIDED * line.doubt < share * expectedPerKg;
    }

    boolean contradictory(double expectedPerKg, LearnedResponse learned) {
        Line line = line();
        return line.slope - ONE_SIDED * line.doubt > TOO_STRONG * expectedPerKg
                || Math.abs(now().deviationK() - learned.deviationK()) > APART * now().repeatabilityK();
    }

    private StepReading now() {
        return readings.get(readings.size() - 1);
    }

    /** Straight line through the readings by weighted least squares; without any spread in mass its slope is open. */
    private Line line() {
        double weights = 0;
        double mass = 0;
        double deviation = 0;
        for (StepReading each : teaching) {
            double weight = weight(each);
            weights += weight;
            mass += weight * each.netMassKg();
            deviation += weight * each.deviationK();
        }
        double spread = 0;
        double together = 0;
        for (StepReading each : teaching) {
            double off = each.netMassKg() - mass / weights;
            spread += weight(each) * off * off;
            together += weight(each) * off * (each.deviationK() - deviation / weights);
        }
        return spread > 0 ? new Line(together / spread, 1 / Math.sqrt(spread)) : new Line(0, Double.POSITIVE_INFINITY);
    }

    private static double weight(StepReading reading) {
        return 1 / (reading.repeatabilityK() * reading.repeatabilityK());
    }

    /** Slope of the answer and its standard deviation, K/kg. */
    private record Line(double slope, double doubt) {}
}
