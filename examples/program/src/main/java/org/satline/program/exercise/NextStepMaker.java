package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.MeteringDevice;
import org.satline.program.exercise.RunningSystems.Running;
import org.satline.quantity.Mass;
import org.satline.quantity.TemperatureDifference;
import org.satline.safety.Task;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.NoSteadyStateException;
import org.satline.step.StepAdvice;
import org.satline.step.StepAdvisor;
import org.satline.step.StepLimits;
import org.satline.step.StepReading;

/** What to do after the verdict: which way, from or into what, and how much. */
final class NextStepMaker implements Maker {
    /** Standard deviation with which a settled system reads again: our choice, no source. */
    static final double REPEATABILITY_K = 0.2;

    /** More than any step moves, where the question names no cylinder. */
    private static final Mass AMPLE = Mass.ofKilograms(20);

    private static final Mass SMALLEST = Mass.ofKilograms(0.02);

    private final Bench bench;
    private final RunningSystems systems;

    NextStepMaker(Bench bench) {
        this.bench = bench;
        systems = new RunningSystems(bench);
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        MeteringDevice metering = draw.pick(List.of(MeteringDevice.values()));
        String designation =
                draw.pick(difficulty == Difficulty.STARTING ? Bench.COOLING_WITHOUT_GLIDE : Bench.COOLING_WITH_GLIDE);
        double error = difficulty == Difficulty.STARTING ? ChargeErrors.draw(draw) : ChargeErrors.offTarget(draw);
        Optional<Running> running = systems.draw(draw, designation, metering, error, ImposedFault.none());
        return difficulty == Difficulty.STARTING
                ? running.flatMap(each -> whichWay(readout, each))
                : running.flatMap(each -> howMuch(draw, readout, difficulty, each, error));
    }

    private Exercise.Draft draft(Readout readout, Difficulty difficulty, Running running, ChargeLevel level) {
        Task task = level == ChargeLevel.LOW ? Task.CHARGING : Task.RECOVERY;
        return new Exercise.Draft(Topic.NEXT_STEP, difficulty, readout)
                .given(bench.refrigerantGiven(running.designation(), readout))
                .cautions(bench.cautions(running.designation(), task));
    }

    private static Optional<ChargeLevel> level(
            Criterion criterion, TemperatureDifference deviation, TemperatureDifference band) {
        double towardsMore = deviation.kelvins() * criterion.directionWithCharge();
        if (Math.abs(Math.abs(towardsMore) - band.kelvins()) < VerdictMaker.CLEAR_K || Math.abs(towardsMore) > 9) {
            return Optional.empty();
        }
        if (Math.abs(towardsMore) < band.kelvins()) {
            return Optional.of(ChargeLevel.ON_TARGET);
        }
        return Optional.of(towardsMore > 0 ? ChargeLevel.HIGH : ChargeLevel.LOW);
    }

    private Optional<Exercise> whichWay(Readout readout, Running running) {
        Criterion criterion = running.metering().judgedBy();
        Given<TemperatureDifference> superheat = readout.difference(
                readout.say("exercise.superheat"), running.state().superheat());
        Given<TemperatureDifference> subcooling = readout.difference(
                readout.say("exercise.subcooling"), running.state().subcooling());
        Given<TemperatureDifference> target = readout.target(
                readout.say("exercise.maker-s-target", readout.words().name(criterion)), running.target());
        Given<TemperatureDifference> band = Tolerances.given(readout, criterion);
        TemperatureDifference measured = (criterion == Criterion.SUPERHEAT ? superheat : subcooling).value();
        TemperatureDifference deviation = measured.minus(target.value());
        Optional<ChargeLevel> level = level(criterion, deviation, band.value());
        if (level.isEmpty()
                || !Sane.target(running.metering(), target.value())
                || !Sane.margins(running.metering(), superheat.value(), subcooling.value())) {
            return Optional.empty();
        }
        StepReading reading =
                StepReading.of(0, criterion, measured.kelvins(), target.value().kelvins(), REPEATABILITY_K);
        StepAdvice advice =
                advisor(running, band.value()).next(List.of(reading), StepLimits.usual(AMPLE, AMPLE, SMALLEST));
        if (!NextStepWords.agrees(advice, level.get())) {
            return Optional.empty();
        }
        Exercise.Draft draft = draft(readout, Difficulty.STARTING, running, level.get())
                .situation(readout.say(
                        "exercise.an-air-conditioner-with-has", Tolerances.article(readout, running.metering())))
                .given(superheat, subcooling, target, band)
                .rule(Tolerances.rule(running.metering(), readout))
                .part(
                        "deviation",
                        readout.say("exercise.how-far-is-the-quantity", readout.differenceUnit()),
                        Answer.Figure.of(readout.number(deviation), 1, readout.differenceUnit(), 0))
                .part(
                        "direction",
                        readout.say("exercise.is-refrigerant-to-be-added"),
                        NextStepWords.directionAnswer(readout, level.get()))
                .part(
                        "where",
                        readout.say("exercise.from-where-to-where-does"),
                        Answer.Words.own(NextStepWords.where(
                                readout, level.get(), running.system().design().refrigerant())))
                .sum(
                        readout.say("exercise.less-target", readout.words().name(criterion)),
                        readout.say("exercise.d-measured-target"),
                        readout.text(measured) + " - " + target.text(),
                        readout.text(deviation))
                .sum(
                        readout.say("exercise.level"),
                        readout.say("exercise.d-against-the-band"),
                        readout.say("exercise.against", readout.text(deviation), band.text()),
                        VerdictAsk.words(readout, level.get()))
                .derive(List.of(NextStepWords.step(readout, advice, Optional.empty())));
        return Optional.of(draft.done());
    }

    private Optional<Exercise> howMuch(
            Draw draw, Readout readout, Difficulty difficulty, Running before, double error) {
        Criterion criterion = before.metering().judgedBy();
        double rated = before.system().ratedCharge().kilograms();
        double share = draw.between(0.2, 0.5);
        Given<Mass> moved = readout.smallMass(
                readout.say("exercise.moved-so-far"), Mass.ofKilograms(Math.abs(error) * share * rated));
        double netKg = error > 0 ? -moved.value().kilograms() : moved.value().kilograms();
        Running after;
        try {
            after = before.with(Mass.ofKilograms(before.charge().kilograms() + netKg));
        } catch (NoSteadyStateException | IllegalArgumentException e) {
            return Optional.empty();
        }
        Given<TemperatureDifference> first = readout.difference(
                readout.say("exercise.before", readout.words().name(criterion)), before.judged());
        Given<TemperatureDifference> second = readout.difference(
                readout.say("exercise.now-settled", readout.words().name(criterion)), after.judged());
        Given<TemperatureDifference> target = readout.target(
                readout.say("exercise.maker-s-target", readout.words().name(criterion)), before.target());
        Given<TemperatureDifference> band = Tolerances.given(readout, criterion);
        TemperatureDifference change = second.value().minus(first.value());
        TemperatureDifference deviation = second.value().minus(target.value());
        Optional<ChargeLevel> level = level(criterion, deviation, band.value());
        double responseKPerKg = change.kelvins() / netKg;
        double restKg = -deviation.kelvins() / responseKPerKg;
        boolean answers = responseKPerKg * criterion.directionWithCharge() > 0 && Math.abs(change.kelvins()) >= 1;
        if (!systems.seen(after)
                || !Sane.margins(
                        after.metering(),
                        after.state().superheat(),
                        after.state().subcooling())
                || !Sane.target(before.metering(), target.value())
                || level.isEmpty()
                || level.get() != (error > 0 ? ChargeLevel.HIGH : ChargeLevel.LOW)
                || !answers
                || Math.abs(restKg) > 0.4 * rated
                || Math.abs(restKg) < 0.05) {
            return Optional.empty();
        }
        Exercise.Draft draft = draft(readout, difficulty, before, level.get())
                .situation(readout.say(
                        "exercise.an-air-conditioner-with-was",
                        Tolerances.article(readout, before.metering()),
                        (netKg > 0 ? readout.say("exercise.added") : readout.say("exercise.taken-out")),
                        readout.words()
                                .name(criterion == Criterion.SUPERHEAT ? Criterion.SUBCOOLING : Criterion.SUPERHEAT)))
                .given(
                        readout.mass(
                                readout.say("exercise.full-charge-on-the-plate"),
                                before.system().ratedCharge()),
                        target,
                        band,
                        first,
                        new Given<>(
                                readout.say(
                                        "exercise.refrigerant-2",
                                        (netKg > 0
                                                ? readout.say("exercise.added")
                                                : readout.say("exercise.taken-out"))),
                                moved.text(),
                                moved.value()),
                        second);
        StepSum sum = new StepSum(draft, readout, netKg, first, second, target);
        boolean fits = sum.write(draw, difficulty, before, level.get(), change, deviation, restKg);
        if (!fits) {
            return Optional.empty();
        }
        Mass most = sum.cylinderAllows().orElse(AMPLE);
        double towards = target.value().kelvins();
        StepAdvice advice = advisor(before, band.value())
                .next(
                        List.of(
                                StepReading.of(0, criterion, first.value().kelvins(), towards, REPEATABILITY_K),
                                StepReading.of(netKg, criterion, second.value().kelvins(), towards, REPEATABILITY_K)),
                        StepLimits.usual(most, most, SMALLEST));
        if (!NextStepWords.agrees(advice, level.get())) {
            return Optional.empty();
        }
        return Optional.of(draft.derive(List.of(NextStepWords.step(readout, advice, sum.cylinderAllows())))
                .done());
    }

    private static StepAdvisor advisor(Running running, TemperatureDifference band) {
        return StepAdvisor.typical(running.system().ratedCharge(), running.metering(), band.kelvins());
    }
}
