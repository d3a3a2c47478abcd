package org.satline.program.proof;

import java.util.List;
import org.satline.quantity.Mass;
import org.satline.step.StepAdvice;
import org.satline.step.StepAdvisor;
import org.satline.step.StepLimits;
import org.satline.step.StepReading;

/** A way to bring a charge to its target. */
enum Way {
    ADVICE("advice on the next step") {
        @Override
        double next(Plant plant, List<StepReading> readings) {
            StepAdvisor advisor = StepAdvisor.typical(plant.fullCharge(), plant.metering(), plant.toleranceK());
            StepAdvice advice = advisor.next(readings, StepLimits.usual(AMPLE, AMPLE, SMALLEST));
            if (!(advice instanceof StepAdvice.Move move)) {
                return 0;
            }
            double kg = move.amount().kilograms();
            return move.direction() == StepAdvice.Direction.ADD ? kg : -kg;
        }
    },
    EQUAL_SHOTS("equal shots of 5 % of the charge") {
        @Override
        double next(Plant plant, List<StepReading> readings) {
            double deviation = readings.get(readings.size() - 1).deviationK();
            return Math.abs(deviation) <= plant.toleranceK()
                    ? 0
                    : -Math.signum(deviation) * 0.05 * plant.fullCharge().kilograms();
        }
    },
    ONE_CORRECTION("one correction by the charge estimate") {
        @Override
        double next(Plant plant, List<StepReading> readings) {
            return readings.size() > 1
                    ? 0
                    : -plant.estimatedError() * plant.fullCharge().kilograms();
        }
    };

    private static final Mass AMPLE = Mass.ofKilograms(50);
    private static final Mass SMALLEST = Mass.ofKilograms(0.02);

    private final String label;

    Way(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }

    /** Next signed step, kg; 0 to stop. */
    abstract double next(Plant plant, List<StepReading> readings);
}
