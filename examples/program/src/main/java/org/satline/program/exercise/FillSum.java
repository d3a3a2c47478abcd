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

    private static final String NOT_TO_BE_FILLED = "nothing: the cylinder must not be filled";

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
        draft.given(density).rule("Rule " + FillLimitMaker.rule(limit.rule()) + ".");
        volume();
        draft.part(
                        part,
                        "What is the largest contents by the rule " + rule + ", in " + mass + " (rounded down)?",
                        FillLimitMaker.down(limit.maximumContents(), readout))
                .work(
                        "largest contents by " + rule,
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
                        "80 % of the water capacity would be " + water.text()
                                + (more
                                        ? ": too much, because the warm liquid is lighter than water."
                                        : ": another figure than 80 % of the volume filled with warm liquid."))
                .mistake(
                        part,
                        FillLimitMaker.down(
                                Mass.ofKilograms(limit.maximumContents().kilograms() / 0.8), readout),
                        "The whole volume filled with warm liquid leaves no room for it to expand.");
    }

    private void volume() {
        if (volumeShown) {
            return;
        }
        volumeShown = true;
        draft.rule("V is the volume of the cylinder: its water capacity over the density of water at 60 degF, "
                        + water() + ".")
                .sum(
                        "volume of the cylinder",
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
                        "What may the cylinder weigh at most on the scale, in " + readout.massUnit()
                                + " (rounded down)?",
                        FillLimitMaker.down(gross, readout))
                .sum(
                        "largest gross weight",
                        "gross = TW + m",
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
                "expanded uncertainty of the scale (U, k = 2)", Mass.ofKilograms(draw.between(0.02, 0.06)));
        Given<Mass> hose =
                readout.mass("refrigerant in the hoses when it is stopped", Mass.ofKilograms(draw.between(0.05, 0.15)));
        draft.given(doubt, hose)
                .rule(
                        "Keep the contents of the hoses and twice the uncertainty of the scale free (twice: common practice, no source).");
        return room(draw, limit, readout, doubt.value(), hose.value());
    }

    /** Contents by the scale, and room and stop weight where the cylinder may be filled. */
    boolean room(Draw draw, MassLimit limit, Readout scaleUnits, Mass scaleDoubt, Mass hose) {
        double share = draw.between(0.25, 0.8);
        Given<Mass> scale = scaleUnits.mass(
                "scale now (gross)",
                Mass.ofKilograms(stamps.tare().kilograms()
                        + share * limit.maximumContents().kilograms()));
        Weighing weighed = new Weighing.Gross(Reading.ofExpanded(scale.value(), scaleDoubt.kilograms(), "scale"));
        Mass contents = Mass.ofKilograms(weighed.contents(stamps.tare()).value().kilograms());
        draft.given(scale)
                .part(
                        "contents",
                        "How much is in the cylinder now" + unit() + "?",
                        Answer.Figure.of(readout.number(contents), 2, readout.massUnit(), 0.01))
                .sum(
                        "contents now",
                        "contents = gross - TW",
                        scale.text() + " - " + scaleUnits.text(stamps.tare()),
                        readout.text(contents));
        if (assessment instanceof FillAssessment.Allowed allowed) {
            return allowed.governing().equals(limit) && left(allowed, weighed, scale, scaleDoubt, hose, contents);
        }
        roomParts(Answer.Words.own(NOT_TO_BE_FILLED), Answer.Words.own(NOT_TO_BE_FILLED));
        draft.slip(
                "The masses of the rules are only half of it: a cylinder whose service pressure is too low takes nothing, and what is in it"
                        + " must come out.");
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
                        "room",
                        "room = limit - contents - hose contents - 2 U",
                        readout.text(hand(limit)) + " - " + readout.text(contents) + " - " + readout.text(hose)
                                + " - 2 x " + readout.text(scaleDoubt),
                        readout.text(worked.room()))
                .sum(
                        "stop weight",
                        "stop = gross + room",
                        readout.text(scale.value()) + " + " + readout.text(worked.room()),
                        readout.text(stop(worked)))
                .derive(left.steps());
        return true;
    }

    private void roomParts(Answer room, Answer stop) {
        draft.part("room", "How much may still go in" + unit() + " (rounded down)?", room)
                .part("stop", "At which reading of the scale is to be stopped" + unit() + " (rounded down)?", stop);
    }

    private String unit() {
        return ", in " + readout.massUnit();
    }

    /** The scale of an exercise shows the gross weight. */
    private static Mass stop(Room.Left left) {
        return Mass.ofKilograms(left.neverPass().kilograms());
    }
}
