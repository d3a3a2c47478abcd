package org.satline.program.exercise;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.satline.charge.margin.ChargeLevel;
import org.satline.program.exercise.RunningSystems.Running;
import org.satline.program.page.Printed;
import org.satline.quantity.Mass;
import org.satline.quantity.TemperatureDifference;

/** The rule of three of a next step: what one step did, what is left to do, and what the cylinder allows of it. */
final class StepSum {
    private final Exercise.Draft draft;
    private final Readout readout;
    private final double netKg;
    private final Given<TemperatureDifference> first;
    private final Given<TemperatureDifference> second;
    private final Given<TemperatureDifference> target;
    private Optional<Mass> cylinderAllows = Optional.empty();

    StepSum(
            Exercise.Draft draft,
            Readout readout,
            double netKg,
            Given<TemperatureDifference> first,
            Given<TemperatureDifference> second,
            Given<TemperatureDifference> target) {
        this.draft = draft;
        this.readout = readout;
        this.netKg = netKg;
        this.first = first;
        this.second = second;
        this.target = target;
    }

    /** Writes question and sum; false where what limits the step is too close to call. */
    boolean write(
            Draw draw,
            Difficulty difficulty,
            Running before,
            ChargeLevel level,
            TemperatureDifference change,
            TemperatureDifference deviation,
            double restKg) {
        String unit = readout.differenceUnit();
        String perMass = unit + "/" + readout.massUnit();
        Mass moved = Mass.ofKilograms(Math.abs(netKg));
        Mass rest = Mass.ofKilograms(Math.abs(restKg));
        double response = readout.number(change) / (Math.signum(netKg) * readout.number(moved));
        draft.rule(Tolerances.shows(before.metering()))
                .rule("Assume that equal amounts of refrigerant have equal effects.")
                .part(
                        "response",
                        "By how much does each " + readout.massUnit() + " that is added move the "
                                + before.metering().judgedBy().label() + ", in " + perMass
                                + " (negative where it falls)?",
                        Answer.Figure.of(response, 1, perMass, 0.1))
                .part(
                        "direction",
                        "Is more to be added or taken out, or is it to be left?",
                        NextStepWords.directionAnswer(level))
                .part(
                        "rest",
                        "How much is left to move to reach the target itself, in " + readout.massUnit() + "?",
                        mass(rest, 0.01))
                .sum(
                        "response",
                        "r = (now - before) / mass added",
                        "(" + second.text() + " - " + first.text() + ") / " + (netKg < 0 ? "-" : "")
                                + readout.text(moved),
                        Printed.figure("%.2f %s", response, perMass))
                .sum(
                        "deviation now",
                        "d = now - target",
                        second.text() + " - " + target.text(),
                        readout.text(deviation))
                .sum(
                        "mass to the target",
                        "m = -d / r",
                        Printed.figure("-(%s) / (%.2f %s)", readout.text(deviation), response, perMass),
                        readout.text(rest) + (restKg < 0 ? " out" : " in"));
        return difficulty != Difficulty.EXPERIENCED || limited(draw, before, rest, restKg < 0);
    }

    /** A share of the rest at a time, and what the cylinder can take or give. */
    private boolean limited(Draw draw, Running before, Mass rest, boolean out) {
        int percent = draw.pick(List.of(50, 60, 70, 75, 80));
        Mass step = Mass.ofKilograms(rest.kilograms() * percent / 100);
        Mass reserve = Mass.ofKilograms(step.kilograms() * draw.between(0.4, 2.5));
        Given<Mass> scale = readout.smallMass("scale under the cylinder now", Mass.ofKilograms(draw.between(14, 24)));
        Given<Mass> limit = readout.smallMass(
                out ? "stop weight of the recovery cylinder" : "weight of the source cylinder when it counts as empty",
                out
                        ? scale.value().plus(reserve)
                        : Mass.ofKilograms(scale.value().kilograms() - reserve.kilograms()));
        Mass most = Mass.ofKilograms(
                Math.abs(limit.value().kilograms() - scale.value().kilograms()));
        double share = most.kilograms() / step.kilograms();
        if (most.kilograms() < 0.03
                || Math.abs(share - 1) < 0.15
                || Math.abs(readout.number(most) - readout.number(step)) < 0.02) {
            return false; // nothing left to move, or both limits alike: no accepted answer is more than the cylinder
            // allows
        }
        cylinderAllows = Optional.of(most);
        boolean enough = share > 1;
        Mass now = enough ? step : most;
        draft.given(
                        scale,
                        limit,
                        readout.temperature("outdoor air", before.air().outdoor()),
                        Given.words("time since the machine was started", draw.whole(25, 70) + " min"))
                .rule("The effect is curved in truth: move no more than " + percent
                        + " % of what is left to the target before reading again.")
                .part(
                        "available",
                        out
                                ? "How much may the recovery cylinder still take, in " + readout.massUnit() + "?"
                                : "How much can the source cylinder still give, in " + readout.massUnit() + "?",
                        mass(most, 0))
                .part(
                        "now",
                        "How much is to be moved in the next step, in " + readout.massUnit() + " (rounded down)?",
                        new Answer.Figure(
                                readout.number(now),
                                readout.smallMassDecimals(),
                                readout.massUnit(),
                                enough ? 0.01 : 0,
                                RoundingMode.FLOOR))
                .part(
                        "cylinder",
                        "Does this cylinder do for that step?",
                        Answer.Words.own(
                                enough ? "yes" : "no: it ends the step, and another cylinder is needed to go on"))
                .sum(
                        out ? "room left" : "left to give",
                        out ? "room = stop weight - scale" : "m = scale - weight when empty",
                        out ? limit.text() + " - " + scale.text() : scale.text() + " - " + limit.text(),
                        readout.text(most))
                .sum(
                        "next step",
                        "the smaller of share x rest and what the cylinder allows",
                        percent + " % of " + readout.text(rest) + " = " + readout.text(step) + ", or "
                                + readout.text(most),
                        readout.text(now))
                .slip(
                        "Outdoor air and running time are not needed for the sum; the running time says that it has settled.");
        return true;
    }

    /** What the cylinder of the question can still take or give; nothing where the question names none. */
    Optional<Mass> cylinderAllows() {
        return cylinderAllows;
    }

    private Answer.Figure mass(Mass value, double allowance) {
        return Answer.Figure.of(readout.number(value), readout.smallMassDecimals(), readout.massUnit(), allowance);
    }
}
