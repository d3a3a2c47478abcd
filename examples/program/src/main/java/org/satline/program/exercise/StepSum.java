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
        draft.rule(Tolerances.shows(readout, before.metering()))
                .rule(readout.say("exercise.assume-that-equal-amounts-of"))
                .part(
                        "response",
                        readout.say(
                                "exercise.by-how-much-does-each",
                                readout.massUnit(),
                                readout.words().name(before.metering().judgedBy()),
                                perMass),
                        Answer.Figure.of(response, 1, perMass, 0.1))
                .part(
                        "direction",
                        readout.say("exercise.is-more-to-be-added"),
                        NextStepWords.directionAnswer(readout, level))
                .part("rest", readout.say("exercise.how-much-is-left-to", readout.massUnit()), mass(rest, 0.01))
                .sum(
                        readout.say("exercise.response"),
                        readout.say("exercise.r-now-before-mass-added"),
                        "(" + second.text() + " - " + first.text() + ") / " + (netKg < 0 ? "-" : "")
                                + readout.text(moved),
                        Printed.figure("%.2f %s", response, perMass))
                .sum(
                        readout.say("exercise.deviation-now"),
                        readout.say("exercise.d-now-target"),
                        second.text() + " - " + target.text(),
                        readout.text(deviation))
                .sum(
                        readout.say("exercise.mass-to-the-target"),
                        "m = -d / r",
                        Printed.figure("-(%s) / (%.2f %s)", readout.text(deviation), response, perMass),
                        readout.text(rest)
                                + (restKg < 0
                                        ? " " + readout.say("exercise.out")
                                        : " " + readout.say("exercise.in-4")));
        return difficulty != Difficulty.EXPERIENCED || limited(draw, before, rest, restKg < 0);
    }

    /** A share of the rest at a time, and what the cylinder can take or give. */
    private boolean limited(Draw draw, Running before, Mass rest, boolean out) {
        int percent = draw.pick(List.of(50, 60, 70, 75, 80));
        Mass step = Mass.ofKilograms(rest.kilograms() * percent / 100);
        Mass reserve = Mass.ofKilograms(step.kilograms() * draw.between(0.4, 2.5));
        Given<Mass> scale = readout.smallMass(
                readout.say("exercise.scale-under-the-cylinder-now"), Mass.ofKilograms(draw.between(14, 24)));
        Given<Mass> limit = readout.smallMass(
                out
                        ? readout.say("exercise.stop-weight-of-the-recovery")
                        : readout.say("exercise.weight-of-the-source-cylinder"),
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
                        readout.temperature(
                                readout.say("exercise.outdoor-air"),
                                before.air().outdoor()),
                        Given.words(
                                readout.say("exercise.time-since-the-machine-was"),
                                readout.say("exercise.min", draw.whole(25, 70))))
                .rule(readout.say("exercise.the-effect-is-curved-in", percent))
                .part(
                        "available",
                        out
                                ? readout.say("exercise.how-much-may-the-recovery", readout.massUnit())
                                : readout.say("exercise.how-much-can-the-source", readout.massUnit()),
                        mass(most, 0))
                .part(
                        "now",
                        readout.say("exercise.how-much-is-to-be", readout.massUnit()),
                        new Answer.Figure(
                                readout.number(now),
                                readout.smallMassDecimals(),
                                readout.massUnit(),
                                enough ? 0.01 : 0,
                                RoundingMode.FLOOR))
                .part(
                        "cylinder",
                        readout.say("exercise.does-this-cylinder-do-for"),
                        Answer.Words.own(
                                enough ? readout.say("exercise.yes") : readout.say("exercise.no-it-ends-the-step")))
                .sum(
                        out ? readout.say("exercise.room-left") : readout.say("exercise.left-to-give"),
                        out
                                ? readout.say("exercise.room-stop-weight-scale")
                                : readout.say("exercise.m-scale-weight-when-empty"),
                        out ? limit.text() + " - " + scale.text() : scale.text() + " - " + limit.text(),
                        readout.text(most))
                .sum(
                        readout.say("exercise.next-step"),
                        readout.say("exercise.the-smaller-of-share-x"),
                        readout.say(
                                "exercise.of-or", percent, readout.text(rest), readout.text(step), readout.text(most)),
                        readout.text(now))
                .slip(readout.say("exercise.outdoor-air-and-running-time"));
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
