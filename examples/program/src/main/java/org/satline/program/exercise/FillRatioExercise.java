package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRules;
import org.satline.filling.RuleOutcome;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.filling.Stamp;
import org.satline.program.page.Printed;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;

/**
 * The hard form of a fill limit by the European rules: a printed filling ratio against shares of the warm liquid, and a test pressure that
 * has to suffice.
 */
final class FillRatioExercise {
    private static final String RATIO = "filling-ratio";
    /** Limits closer than this share would make the governing rule hang on a rounding. */
    private static final double CLEAR_SHARE = 0.001;

    /**
     * A row of the table of filling ratios: ADR 2025, 4.1.4.1, packing instruction P200, table 2.
     *
     * @param designation the refrigerant
     * @param ratio the filling ratio
     * @param testBar the least test pressure, bar gauge
     */
    record Row(String designation, double ratio, int testBar) {}

    static final List<Row> ROWS = List.of(
            new Row("R-32", 0.78, 48),
            new Row("R-404A", 0.82, 36),
            new Row("R-407C", 0.95, 30),
            new Row("R-22", 1.03, 27),
            new Row("R-290", 0.43, 23),
            new Row("R-134a", 1.05, 18),
            new Row("R-152a", 0.79, 16));

    private static final List<Integer> TEST_BAR = List.of(14, 18, 24, 30, 36, 48);

    private final Bench bench;

    FillRatioExercise(Bench bench) {
        this.bench = bench;
    }

    Optional<Exercise> draw(Draw draw, Readout readout, Given<Mass> capacity, Given<Mass> tare) {
        Row row = draw.pick(ROWS);
        SaturationCurve curve = bench.curve(row.designation());
        boolean wanted = draw.chance(0.7);
        int test = draw.pick(TEST_BAR.stream()
                .filter(bar -> wanted == (bar >= row.testBar()))
                .toList());
        CylinderStamps stamps = CylinderStamps.of(tare.value(), capacity.value())
                .with(Stamp.TEST_PRESSURE, GaugePressure.ofBars(test))
                .with(Stamp.REFILLABLE, true);
        FillAssessment assessment = bench.assessor()
                .assess(FillQuestion.of(stamps, curve)
                        .under(FillRules.standard().jurisdiction("adr"))
                        .calculating());
        boolean enough = test >= row.testBar();
        boolean forbidden = assessment.answers().outcomes().stream()
                .map(FillAssessment.CandidateOutcome::outcome)
                .anyMatch(each -> each instanceof RuleOutcome.Forbidden
                        && each.rule().name().equals(RATIO));
        if (forbidden == enough || assessment instanceof FillAssessment.Allowed != enough) {
            return Optional.empty(); // another rule than the one asked about stands against it
        }
        Exercise.Draft draft = new Exercise.Draft(Topic.FILL_LIMIT, Difficulty.EXPERIENCED, readout)
                .situation(readout.say(FillLimitMaker.SITUATION))
                .given(
                        bench.refrigerantGiven(row.designation(), readout),
                        capacity,
                        tare,
                        Given.words(
                                readout.say("exercise.test-pressure-on-the-collar"),
                                readout.say("exercise.bar-gauge", test)),
                        Given.words(
                                readout.say("exercise.row-of-the-table-for", row.designation()),
                                readout.say("exercise.filling-ratio-test-pressure-bar", row.ratio(), row.testBar())))
                .cautions(bench.cautions(row.designation(), Task.CYLINDER_FILLING))
                .rule(readout.say("exercise.rule-filling-ratio-m-wc"))
                .rule(readout.say("exercise.the-smallest-of-the-limits"));
        return asked(
                draw, new FillSum(draft, readout, curve, stamps, assessment), draft, readout, row, test, assessment);
    }

    private static Optional<Exercise> asked(
            Draw draw,
            FillSum sum,
            Exercise.Draft draft,
            Readout readout,
            Row row,
            int test,
            FillAssessment assessment) {
        boolean enough = test >= row.testBar();
        String no = readout.say("exercise.no-the-table-asks-for", row.testBar());
        Mass byRatio = Mass.ofKilograms(row.ratio()
                * assessment.answers().question().stamps().waterCapacity().kilograms());
        draft.part(
                        "may be filled",
                        readout.say("exercise.may-this-cylinder-be-filled", row.designation()),
                        Answer.Words.own(enough ? readout.say("exercise.yes") : no))
                .part(
                        "limit, ratio",
                        readout.say("exercise.what-is-the-largest-contents", readout.massUnit()),
                        FillLimitMaker.down(byRatio, readout))
                .sum(
                        readout.say("exercise.test-pressure"),
                        readout.say("exercise.tp-test-pressure-of-the"),
                        readout.say("exercise.bar-against-bar", test, row.testBar()),
                        enough ? readout.say("exercise.enough") : readout.say("exercise.too-low"))
                .work(
                        readout.say("exercise.largest-contents-by-the-filling"),
                        readout.say("exercise.m-filling-ratio-x-wc"),
                        Printed.figure(
                                "%s x %s",
                                row.ratio(),
                                readout.text(
                                        assessment.answers().question().stamps().waterCapacity())),
                        readout.text(byRatio),
                        "ADR 2025, 4.1.4.1, P200 table 2");
        Optional<MassLimit> most = sum.limit(
                "liquid-95-50C",
                0.95,
                Temperature.ofCelsius(50),
                readout.say("exercise.liquid-density-at-50-degc"),
                readout.say("exercise.limit-95"));
        Optional<MassLimit> full = sum.limit(
                "not-liquid-full-60C",
                1,
                Temperature.ofCelsius(60),
                readout.say("exercise.liquid-density-at-60-degc"),
                readout.say("exercise.limit-liquid-full"));
        if (most.isEmpty() || full.isEmpty()) {
            return Optional.empty();
        }
        double ratio = byRatio.kilograms();
        double fifty = most.get().maximumContents().kilograms();
        double sixty = full.get().maximumContents().kilograms();
        double least = Math.min(ratio, Math.min(fifty, sixty));
        String governing = least == ratio ? RATIO : least == fifty ? "liquid-95-50C" : "not-liquid-full-60C";
        long near = List.of(ratio, fifty, sixty).stream()
                .filter(each -> each < least * (1 + CLEAR_SHARE))
                .count();
        boolean agreed = !enough
                || (assessment instanceof FillAssessment.Allowed allowed
                        && allowed.governing().rule().name().equals(governing));
        if (near > 1 || !agreed) {
            return Optional.empty();
        }
        draft.part(
                "governing",
                readout.say("exercise.which-of-the-three-limits"),
                Answer.Words.oneOf(governing, List.of(RATIO, "liquid-95-50C", "not-liquid-full-60C")));
        draft.slip(readout.say("exercise.the-three-limits-lie-close"));
        MassLimit limit = assessment instanceof FillAssessment.Allowed allowed ? allowed.governing() : most.get();
        return sum.scale(draw, limit) ? Optional.of(draft.derive(limit.steps()).done()) : Optional.empty();
    }
}
