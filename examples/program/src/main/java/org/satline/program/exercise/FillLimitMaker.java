package org.satline.program.exercise;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRule;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.filling.Stamp;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;

/** How much a recovery cylinder may hold. */
final class FillLimitMaker implements Maker {
    static final String SITUATION = "exercise.a-recovery-cylinder-refillable-within";

    static final String WARMEST = "liquid-80-warmest";
    private static final List<String> GASES =
            List.of("R-134a", "R-22", "R-407C", "R-410A", "R-32", "R-404A", "R-448A", "R-454B", "R-290");
    /** Usual sizes by water capacity, lb, with the range of their tares: from memory, typical trade sizes. */
    private static final List<double[]> SIZES =
            List.of(new double[] {26.2, 14, 17}, new double[] {47.6, 24, 28}, new double[] {123, 55, 70});

    private final Bench bench;

    FillLimitMaker(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        double[] size = draw.pick(SIZES);
        Readout stamped = difficulty == Difficulty.PRACTISED ? readout.other() : readout;
        Given<Mass> capacity = stamped.mass(
                readout.say("exercise.water-capacity-wc"), Mass.ofPounds(size[0] * draw.between(0.98, 1.02)));
        Given<Mass> tare =
                stamped.mass(readout.say("exercise.tare-weight-tw"), Mass.ofPounds(draw.between(size[1], size[2])));
        if (difficulty == Difficulty.EXPERIENCED && !readout.us()) {
            return new FillRatioExercise(bench).draw(draw, readout, capacity, tare);
        }
        String designation = draw.pick(GASES);
        SaturationCurve curve = bench.curve(designation);
        int service = draw.pick(List.of(260, 350, 400));
        Given<Temperature> warmest = readout.temperature(
                readout.say("exercise.warmest-that-the-cylinder-may"),
                Temperature.ofFahrenheit(draw.pick(List.of(130, 135, 140))));
        CylinderStamps stamps = CylinderStamps.of(tare.value(), capacity.value())
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA" + service))
                .with(Stamp.SERVICE_PRESSURE, GaugePressure.ofPsig(service))
                .with(Stamp.REFILLABLE, true);
        FillAssessment assessment = bench.assessor()
                .assess(FillQuestion.of(stamps, curve)
                        .warmestAt(warmest.value())
                        .calculating());
        Exercise.Draft draft = new Exercise.Draft(Topic.FILL_LIMIT, difficulty, readout)
                .situation(readout.say(SITUATION))
                .given(bench.refrigerantGiven(designation, readout), capacity, tare, warmest)
                .cautions(bench.cautions(designation, Task.CYLINDER_FILLING));
        FillSum sum = new FillSum(draft, readout, curve, stamps, assessment);
        return switch (difficulty) {
            case STARTING -> starting(readout, sum, draft, warmest, assessment);
            case PRACTISED -> practised(readout, draw, sum, draft, stamped, warmest, assessment);
            case EXPERIENCED ->
                new FillRulesExercise(draft, sum, readout, curve, stamps, assessment)
                        .write(draw, designation, service, warmest);
        };
    }

    private static Optional<Exercise> starting(
            Readout readout, FillSum sum, Exercise.Draft draft, Given<Temperature> warmest, FillAssessment assessment) {
        if (!(assessment instanceof FillAssessment.Allowed)) {
            return Optional.empty();
        }
        return sum.limit(
                        WARMEST,
                        0.8,
                        warmest.value(),
                        readout.say("exercise.liquid-density-at", warmest.text()),
                        readout.say("exercise.limit"))
                .filter(limit -> sum.gross(limit))
                .map(limit -> draft.derive(limit.steps()).done());
    }

    private static Optional<Exercise> practised(
            Readout readout,
            Draw draw,
            FillSum sum,
            Exercise.Draft draft,
            Readout stamped,
            Given<Temperature> warmest,
            FillAssessment assessment) {
        if (!(assessment instanceof FillAssessment.Allowed)) {
            return Optional.empty();
        }
        draft.rule("1 lb = 0.45359237 kg.");
        Optional<MassLimit> limit = sum.limit(
                WARMEST,
                0.8,
                warmest.value(),
                readout.say("exercise.liquid-density-at", warmest.text()),
                readout.say("exercise.limit"));
        return limit.filter(each -> sum.room(draw, each, stamped, Mass.ZERO, Mass.ZERO))
                .map(each -> draft.derive(each.steps()).done());
    }

    /** The outcome of a rule by its name, where it is a mass. */
    static Optional<MassLimit> outcome(FillAssessment assessment, String rule) {
        return assessment.answers().outcomes().stream()
                .map(FillAssessment.CandidateOutcome::outcome)
                .filter(each -> each.rule().name().equals(rule))
                .filter(MassLimit.class::isInstance)
                .map(MassLimit.class::cast)
                .findFirst();
    }

    /** A limit is printed rounded down, so that the printed figure is never above the computed one. */
    static Answer.Figure down(Mass mass, Readout readout) {
        return new Answer.Figure(readout.number(mass), 2, readout.massUnit(), 0.02, RoundingMode.FLOOR);
    }

    static BigDecimal down(double value) {
        return Answer.Figure.rounded(value, 2, RoundingMode.FLOOR);
    }

    /** The density as the question prints it: so many digits that the limit does not hang on them. */
    static Given<Density> density(String name, double kilogramsPerCubicMetre, Readout readout) {
        Density exact = Density.ofKilogramsPerCubicMetre(kilogramsPerCubicMetre);
        String text = readout.us() ? exact.in("lb/ft3", 2) : exact.in("kg/m3", 1);
        return new Given<>(name, text, Density.parse(text));
    }

    static String rule(FillRule rule) {
        return rule.name() + ": " + rule.inequality() + " [" + rule.citation() + "]";
    }
}
