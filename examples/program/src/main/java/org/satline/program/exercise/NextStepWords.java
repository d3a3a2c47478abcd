package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.charge.margin.ChargeLevel;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.refrigerant.Refrigerant;
import org.satline.step.StepAdvice;

/** What the key says about a next step. */
final class NextStepWords {
    private NextStepWords() {}

    static String direction(Readout readout, ChargeLevel level) {
        return switch (level) {
            case LOW -> readout.say("exercise.add");
            case ON_TARGET -> readout.say("exercise.leave-as-it-is");
            case HIGH -> readout.say("exercise.take-out");
        };
    }

    static Answer directionAnswer(Readout readout, ChargeLevel level) {
        return Answer.Words.oneOf(
                direction(readout, level),
                Stream.of(ChargeLevel.values())
                        .map(each -> direction(readout, each))
                        .toList());
    }

    static String where(Readout readout, ChargeLevel level, Refrigerant refrigerant) {
        return switch (level) {
            case LOW ->
                readout.say(
                        "exercise.from-a-clean-source-cylinder",
                        (refrigerant.isBlend() ? readout.say("exercise.as-liquid-because-it-is") : ""));
            case ON_TARGET -> readout.say("exercise.nothing-moves");
            case HIGH -> readout.say("exercise.from-the-high-side-liquid");
        };
    }

    /** Whether the library would go the same way. */
    static boolean agrees(StepAdvice advice, ChargeLevel level) {
        if (advice instanceof StepAdvice.Move move) {
            return level == (move.direction() == StepAdvice.Direction.ADD ? ChargeLevel.LOW : ChargeLevel.HIGH);
        }
        return advice instanceof StepAdvice.Done && level == ChargeLevel.ON_TARGET;
    }

    /** Rounded down, so that the figure printed is never more than the cylinder allows. */
    static Step step(Readout readout, StepAdvice advice, Optional<Mass> cylinderAllows) {
        List<Figure> given = new ArrayList<>();
        cylinderAllows.ifPresent(most -> given.add(Figure.of("cylinderAllows", most)));
        advice.reasons().forEach(reason -> given.addAll(reason.figures()));
        String result = readout.say("exercise.leave-the-charge-as-it");
        if (advice instanceof StepAdvice.Move move) {
            given.add(Figure.of("wait", (double) move.settlingTime().toMinutes(), "min"));
            result = (move.direction() == StepAdvice.Direction.ADD
                            ? readout.say("exercise.add") + " "
                            : readout.say("exercise.take-out") + " ")
                    + readout.words().numbers().finer().down(move.amount());
        }
        return new Step(
                "nextStep",
                readout.say(
                        "exercise.largest-step",
                        cylinderAllows.isPresent() ? readout.say("exercise.and-no-more-than-the") : ""),
                given,
                Figure.of("step", result),
                readout.say("exercise.bayesian-regression"));
    }
}
