package org.satline.program.exercise;

import org.satline.charge.ChargeLevel;
import org.satline.explanation.Step;
import org.satline.program.page.Printed;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Refrigerant;
import org.satline.step.StepAdvice;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** What the key says about a next step. */
final class NextStepWords {
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.SI);

    private NextStepWords() {}

    static String direction(ChargeLevel level) {
        return switch (level) {
            case LOW -> "add";
            case ON_TARGET -> "leave as it is";
            case HIGH -> "take out";
        };
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

    static Step step(StepAdvice advice) {
        String result = advice instanceof StepAdvice.Move move
                ? Printed.figure(
                        "%s %.3f kg (%.2f lb), then wait %d min and read again",
                        move.direction() == StepAdvice.Direction.ADD ? "add" : "take out",
                        move.amount().kilograms(),
                        move.amount().pounds(),
                        move.settlingTime().toMinutes())
                : "leave the charge as it is";
        return new Step(
                "next step, with the doubt of the response weighed in",
                "largest step whose probability of passing the far edge of the band stays within 5 %",
                String.join("; ", advice.reasons().stream().map(WORDING::of).toList()),
                result,
                "Bayesian linear regression on the readings, prior of a typical unit");
    }
}
