package org.satline.program.exercise;

import java.util.EnumSet;
import java.util.Optional;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillRule;
import org.satline.filling.FillingCode;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.filling.RuleOutcome.PressureTest;
import org.satline.program.page.Printed;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** The hard form of a fill limit: may it be filled at all, by which rule, and how much is left for a scale that is not exact. */
final class FillRulesExercise {
    private static final String SERVICE = "service-pressure-131F";
    /** So far from its limit the pressure test does not hang on a rounding. */
    private static final double CLEAR_SHARE = 0.03;

    private final Exercise.Draft draft;
    private final FillSum sum;
    private final Readout readout;
    private final SaturationCurve curve;
    private final CylinderStamps stamps;
    private final FillAssessment assessment;

    FillRulesExercise(
            Exercise.Draft draft,
            FillSum sum,
            Readout readout,
            SaturationCurve curve,
            CylinderStamps stamps,
            FillAssessment assessment) {
        this.draft = draft;
        this.sum = sum;
        this.readout = readout;
        this.curve = curve;
        this.stamps = stamps;
        this.assessment = assessment;
    }

    Optional<Exercise> write(Draw draw, String designation, int service, Given<Temperature> warmest) {
        Optional<PressureTest> test = assessment.answers().outcomes().stream()
                .map(FillAssessment.CandidateOutcome::outcome)
                .filter(each -> each.rule().name().equals(SERVICE))
                .filter(PressureTest.class::isInstance)
                .map(PressureTest.class::cast)
                .findFirst();
        Temperature hot = Temperature.ofCelsius(55);
        Pressure vapour = curve.bubblePressure(hot);
        double allowed = 1.25 * stamps.servicePressure().orElseThrow().pascals();
        if (test.isEmpty()
                || Math.abs(test.get().margin().pascals()) < CLEAR_SHARE * allowed
                || !onlyPressure(assessment)) {
            return Optional.empty();
        }
        draft.given(Given.words(
                        readout.say("exercise.specification-and-service-pressure-sp"),
                        "DOT-4BA" + service + ", SP " + service + " psig"))
                .given(readout.absolute(readout.say("exercise.pressure-of-at-55-degc", designation), vapour))
                .rule(readout.say(
                        "exercise.rule", FillLimitMaker.rule(test.get().rule())))
                .rule(readout.say("exercise.the-standard-atmosphere-is-101"));
        boolean passed = test.get().passed();
        draft.part(
                        "may be filled",
                        readout.say("exercise.may-this-cylinder-be-filled-with", designation, SERVICE),
                        Answer.Words.own(
                                passed ? readout.say("exercise.yes") : readout.say("exercise.no-it-must-not-be")))
                .work(
                        readout.say("exercise.pressure-at-55-degc-against"),
                        test.get().rule().inequality(),
                        readout.say("exercise.101-3-kpa-against-1", vapour.in("kPa", 1), service),
                        Printed.figure(
                                "%.0f kPa against %.0f kPa",
                                vapour.minus(Atmosphere.standard().pressure()).kilopascals(), allowed / 1000),
                        test.get().rule().citation())
                .derive(test.get().steps());
        if (passed != assessment instanceof FillAssessment.Allowed) {
            return Optional.empty(); // another rule than the one asked about stands against it
        }
        return limits(draw, warmest);
    }

    private static boolean onlyPressure(FillAssessment assessment) {
        return assessment.objections().stream().allMatch(each -> each.code() == FillingCode.PRESSURE_TOO_LOW);
    }

    /** The strictest limit of the set, whether or not the cylinder may be filled. */
    private boolean isStrictest(MassLimit limit) {
        return assessment
                .answers()
                .limits(EnumSet.allOf(FillRule.Basis.class))
                .get(0)
                .equals(limit);
    }

    private Optional<Exercise> limits(Draw draw, Given<Temperature> warmest) {
        Optional<MassLimit> custom = sum.limit(
                FillLimitMaker.WARMEST,
                0.8,
                warmest.value(),
                readout.say("exercise.liquid-density-at", warmest.text()),
                readout.say("exercise.limit-warmest"));
        Optional<MassLimit> law = sum.limit(
                "not-liquid-full-131F",
                1,
                Temperature.ofCelsius(55),
                readout.say("exercise.liquid-density-at-55-degc"),
                readout.say("exercise.limit-liquid-full"));
        if (custom.isEmpty() || law.isEmpty() || !isStrictest(custom.get())) {
            return Optional.empty();
        }
        MassLimit limit = custom.get();
        Mass most = law.get().maximumContents();
        Mass stricter =
                Mass.ofKilograms(most.kilograms() - limit.maximumContents().kilograms());
        draft.part(
                        "stricter",
                        readout.say("exercise.by-how-much-is-the", readout.massUnit()),
                        Answer.Figure.of(readout.number(stricter), 2, readout.massUnit(), 0.03))
                .sum(
                        readout.say("exercise.custom-against-law"),
                        readout.say("exercise.m-law-m-custom"),
                        readout.text(sum.hand(law.get())) + " - " + readout.text(sum.hand(limit)),
                        readout.text(Mass.ofKilograms(sum.hand(law.get()).kilograms()
                                - sum.hand(limit).kilograms())))
                .rule(readout.say("exercise.the-smaller-of-both-limits"));
        return sum.scale(draw, limit) ? Optional.of(draft.derive(limit.steps()).done()) : Optional.empty();
    }
}
