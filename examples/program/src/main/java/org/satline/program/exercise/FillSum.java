package org.satline.program.exercise;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.cylinder.Room;
import org.satline.cylinder.RoomFinder;
import org.satline.cylinder.Weighing;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.measurement.Reading;
import org.satline.quantity.Density;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** The sum of a fill limit: volume, share of the liquid, gross weight, room. */
final class FillSum {
    /** What rounding in the third digit after the point may move. */
    private static final double CARRIED = 0.001;

    private static final String NOT_TO_BE_FILLED = "exercise.nothing-the-cylinder-must-not";

    private final Exercise.Draft draft;
    private final Readout readout;
    private final SaturationCurve curve;
    private final CylinderStamps stamps;
    private final FillAssessment assessment;
    /** Limits by rule, from the densities as the question prints them. */
    private final Map<String, Mass> byHand = new HashMap<>();

    private boolean volumeShown;

    FillSum(
            Exercise.Draft draft,
            Readout readout,
            SaturationCurve curve,
            CylinderStamps stamps,
            FillAssessment assessment) {
        this.draft = draft;
        this.readout = readout;
        this.curve = curve;
        this.stamps = stamps;
        this.assessment = assessment;
    }

    /**
     * A share of the liquid that would fill the cylinder. Nothing where the last printed digit depends on the digits of the printed
     * density.
     *
     * @param rule name of the rule
     * @param factor the share
     * @param temperature where the liquid density is taken
     * @param densityName how the question calls the density
     * @param part name of the part
     */
    Optional<MassLimit> limit(String rule, double factor, Temperature temperature, String densityName, String part) {
        Optional<MassLimit> found = FillLimitMaker.outcome(assessment, rule);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        MassLimit limit = found.get();
        Given<Density> density =
                FillLimitMaker.density(densityName, curve.bubbleLiquidDensity(temperature.kelvins()), readout);
        Mass hand = Mass.ofKilograms(factor
                * density.value().kilogramsPerCubicMetre()
                * stamps.waterCapacity().kilograms()
                / Density.parse(water()).kilogramsPerCubicMetre());
        if (!sameDigits(hand, limit.maximumContents())) {
            return Optional.empty();
        }
        byHand.put(rule, hand);
        String mass = readout.massUnit();
        if (rule.equals(FillLimitMaker.WARMEST)) {
            slip(limit, part);
        }
        draft.given(density).rule(readout.say("exercise.rule", FillLimitMaker.rule(limit.rule())));
        volume();
        draft.part(
                        part,
                        readout.say("exercise.what-is-the-largest-contents-by", rule, mass),
                        FillLimitMaker.down(limit.maximumContents(), readout))
                .work(
                        readout.say("exercise.largest-contents-by", rule),
                        limit.rule().inequality(),
                        factor + " x " + density.text() + " x " + volumeText(),
                        readout.text(hand),
                        limit.rule().citation());
        return found;
    }

    /** What usual mistakes lead to. */
    private void slip(MassLimit limit, String part) {
        Answer.Figure water = FillLimitMaker.down(
                Mass.ofKilograms(0.8 * stamps.waterCapacity().kilograms()), readout);
        boolean more = water.value() > readout.number(limit.maximumContents());
        draft.mistake(
                        part,
                        water,
                        readout.say(
                                "exercise.80-of-the-water-capacity",
                                water.text(),
                                (more
                                        ? readout.say("exercise.too-much-because-the-warm")
                                        : readout.say("exercise.another-figure-than-80-of"))))
                .mistake(
                        part,
                        FillLimitMaker.down(
                                Mass.ofKilograms(limit.maximumContents().kilograms() / 0.8), readout),
                        readout.say("exercise.the-whole-volume-filled-with"));
    }

    private void volume() {
        if (volumeShown) {
            return;
        }
        volumeShown = true;
        draft.rule(readout.say("exercise.v-is-the-volume-of", water()))
                .sum(
                        readout.say("exercise.volume-of-the-cylinder"),
                        "V = WC / rho_w",
                        readout.text(stamps.waterCapacity()) + " / " + water(),
                        volumeText());
    }

    /** {@link CylinderStamps#WATER_AT_60_F}, with so many digits that a limit does not hang on them. */
    private String water() {
        return readout.us() ? "62.366 lb/ft3" : "999.0 kg/m3";
    }

    private String volumeText() {
        return readout.us() ? stamps.volume().in("ft3", 5) : stamps.volume().in("m3", 6);
    }

    /** The limit as the student has it. */
    Mass hand(MassLimit limit) {
        return byHand.getOrDefault(limit.rule().name(), limit.maximumContents());
    }

    boolean gross(MassLimit limit) {
        Mass gross = stamps.tare().plus(limit.maximumContents());
        Mass hand = stamps.tare().plus(hand(limit));
        draft.part(
                        "gross",
                        readout.say("exercise.what-may-the-cylinder-weigh", readout.massUnit()),
                        FillLimitMaker.down(gross, readout))
                .sum(
                        readout.say("exercise.largest-gross-weight"),
                        readout.say("exercise.gross-tw-m"),
                        readout.text(stamps.tare()) + " + " + readout.text(hand(limit)),
                        readout.text(hand));
        return sameDigits(hand, gross) && steady(gross, limit.maximumContents());
    }

    /** The same last digit whether the student goes on from the rounded or from the full limit. */
    private boolean steady(Mass exact, Mass limit) {
        double cut = readout.number(limit)
                - FillLimitMaker.down(readout.number(limit)).doubleValue();
        return sameDigits(readout.number(exact), readout.number(exact) - cut);
    }

    /** The same printed digits from the printed density as from the exact one, and also for who carries three digits after the point. */
    private boolean sameDigits(Mass hand, Mass exact) {
        double number = readout.number(exact);
        return sameDigits(readout.number(hand), number) && sameDigits(number, number + CARRIED);
    }

    private static boolean sameDigits(double first, double second) {
        return FillLimitMaker.down(first).compareTo(FillLimitMaker.down(second)) == 0;
    }

    /** The same for a scale that is not exact and hoses that are not empty. */
    boolean scale(Draw draw, MassLimit limit) {
        Given<Mass> doubt = readout.mass(
                readout.say("exercise.expanded-uncertainty-of-the-scale"), Mass.ofKilograms(draw.between(0.02, 0.06)));
        Given<Mass> hose = readout.mass(
                readout.say("exercise.refrigerant-in-the-hoses-when"), Mass.ofKilograms(draw.between(0.05, 0.15)));
        draft.given(doubt, hose).rule(readout.say("exercise.keep-the-contents-of-the"));
        return room(draw, limit, readout, doubt.value(), hose.value());
    }

    /** Contents by the scale, and room and stop weight where the cylinder may be filled. */
    boolean room(Draw draw, MassLimit limit, Readout scaleUnits, Mass scaleDoubt, Mass hose) {
        double share = draw.between(0.25, 0.8);
        Given<Mass> scale = scaleUnits.mass(
                readout.say("exercise.scale-now-gross"),
                Mass.ofKilograms(stamps.tare().kilograms()
                        + share * limit.maximumContents().kilograms()));
        Weighing weighed = new Weighing.Gross(Reading.ofExpanded(scale.value(), scaleDoubt.kilograms(), "scale"));
        Mass contents = Mass.ofKilograms(weighed.contents(stamps.tare()).value().kilograms());
        draft.given(scale)
                .part(
                        "contents",
                        readout.say("exercise.how-much-is-in-the", unit()),
                        Answer.Figure.of(readout.number(contents), 2, readout.massUnit(), 0.01))
                .sum(
                        readout.say("exercise.contents-now"),
                        readout.say("exercise.contents-gross-tw"),
                        scale.text() + " - " + scaleUnits.text(stamps.tare()),
                        readout.text(contents));
        if (assessment instanceof FillAssessment.Allowed allowed) {
            return allowed.governing().equals(limit) && left(allowed, weighed, scale, scaleDoubt, hose, contents);
        }
        roomParts(Answer.Words.own(readout.say(NOT_TO_BE_FILLED)), Answer.Words.own(readout.say(NOT_TO_BE_FILLED)));
        draft.slip(readout.say("exercise.the-masses-of-the-rules"));
        return true;
    }

    private boolean left(
            FillAssessment.Allowed allowed,
            Weighing weighed,
            Given<Mass> scale,
            Mass scaleDoubt,
            Mass hose,
            Mass contents) {
        MassLimit limit = allowed.governing();
        MassLimit printed = new MassLimit(limit.rule(), hand(limit), List.of(), List.of());
        if (!(RoomFinder.find(allowed, weighed, hose) instanceof Room.Left left)
                || !(RoomFinder.find(new FillAssessment.Allowed(printed, allowed.answers()), weighed, hose)
                        instanceof Room.Left worked)
                || !(sameDigits(worked.room(), left.room()) && sameDigits(stop(worked), stop(left)))) {
            return false;
        }
        roomParts(FillLimitMaker.down(left.room(), readout), FillLimitMaker.down(stop(left), readout));
        draft.sum(
                        readout.say("exercise.room"),
                        readout.say("exercise.room-limit-contents-hose-contents"),
                        readout.text(hand(limit)) + " - " + readout.text(contents) + " - " + readout.text(hose)
                                + " - 2 x " + readout.text(scaleDoubt),
                        readout.text(worked.room()))
                .sum(
                        readout.say("exercise.stop-weight"),
                        readout.say("exercise.stop-gross-room"),
                        readout.text(scale.value()) + " + " + readout.text(worked.room()),
                        readout.text(stop(worked)))
                .derive(left.steps());
        return true;
    }

    private void roomParts(Answer room, Answer stop) {
        draft.part("room", readout.say("exercise.how-much-may-still-go", unit()), room)
                .part("stop", readout.say("exercise.at-which-reading-of-the", unit()), stop);
    }

    private String unit() {
        return readout.say("exercise.in-2", readout.massUnit());
    }

    /** The scale of an exercise shows the gross weight. */
    private static Mass stop(Room.Left left) {
        return Mass.ofKilograms(left.neverPass().kilograms());
    }
}
