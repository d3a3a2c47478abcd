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

    static String direction(ChargeLevel level) {
        return switch (level) {
            case LOW -> "add";
            case ON_TARGET -> "leave as it is";
            case HIGH -> "take out";
        };
    }

    static Answer directionAnswer(ChargeLevel level) {
        return Answer.Words.oneOf(
                direction(level),
                Stream.of(ChargeLevel.values()).map(NextStepWords::direction).toList());
    }

    static String where(ChargeLevel level, Refrigerant refrigerant) {
        return switch (level) {
            case LOW ->
                "from a clean source cylinder of the same refrigerant"
                        + (refrigerant.isBlend() ? ", as liquid because it is a blend," : "")
                        + " into the suction side, metered so that it flashes on the way; never from a cylinder of mixed recovered refrigerant";
            case ON_TARGET -> "nothing moves";
            case HIGH ->
                "from the high-side liquid port into a recovery cylinder with room left, on a scale; never back into the source cylinder";
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
    static Step step(StepAdvice advice, Optional<Mass> cylinderAllows) {
        List<Figure> given = new ArrayList<>();
        cylinderAllows.ifPresent(most -> given.add(Figure.of("cylinderAllows", most)));
        advice.reasons().forEach(reason -> given.addAll(reason.figures()));
        String result = "leave the charge as it is";
        if (advice instanceof StepAdvice.Move move) {
            given.add(Figure.of("wait", (double) move.settlingTime().toMinutes(), "min"));
            result = (move.direction() == StepAdvice.Direction.ADD ? "add " : "take out ")
                    + Bench.WORDS.numbers().finer().down(move.amount());
        }
        return new Step(
                "nextStep",
                "largest step whose probability of passing the far edge of the band stays within 5 %"
                        + (cylinderAllows.isPresent() ? ", and no more than the cylinder allows" : ""),
                given,
                Figure.of("step", result),
                "Bayesian linear regression on the readings, prior of a typical unit");
    }
}
