package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.safety.Caution;

/** Works out the room left in a cylinder and the reading at which to stop, for both ways of weighing. */
public final class RoomFinder {
    private static final String ARITHMETIC = "arithmetic: gross = tare + contents";
    private static final String PRACTICE = "common practice, no source";

    private RoomFinder() {}

    /**
     * Works out the room. The stop reading leaves twice the expanded uncertainty, and what the hoses hold, below the limit, so that
     * they can be emptied into the cylinder afterwards.
     *
     * @param stamps the stamps of the cylinder
     * @param limit the largest contents, such as the governing limit of a {@link FillAssessment}
     * @param scale how it is weighed, with the reading now
     * @param hoseContents the refrigerant in the hoses that will end in the cylinder; zero where they are emptied elsewhere
     * @return the room, or that it is full, overfilled or contradictory
     */
    public static Room find(CylinderStamps stamps, Mass limit, Scale scale, Mass hoseContents) {
        boolean zeroed = scale instanceof Scale.ZeroedAfterHookUp;
        Mass gross = scale.weighed().value();
        Optional<Refusal> contradiction = StampCheck.belowTare(stamps, scale.weighed());
        Step weighed = weighed(stamps, scale);
        if (contradiction.isPresent()) {
            return new Room.Contradiction(Mass.ofKilograms(0), contradiction.get(), List.of(weighed));
        }
        // within the uncertainty of the scale below the tare: empty
        double before = Math.max(0, gross.kilograms() - stamps.tare().kilograms());
        double moved = scale instanceof Scale.ZeroedAfterHookUp since
                ? since.transferred().value().kilograms()
                : 0;
        double inside = Math.max(0, before + moved);
        Mass contents = Mass.ofKilograms(inside);
        double expanded = scale.expandedUncertaintyKg();
        double margin = 2 * expanded;
        double room = limit.kilograms() - inside - hoseContents.kilograms() - margin;
        List<Step> steps = new ArrayList<>();
        steps.add(weighed);
        steps.add(new Step(
                "margin for the scale",
                zeroed ? "2 U sqrt(2)" : "2 U",
                String.format(Locale.ROOT, "2 x %.4f kg", expanded),
                Figures.mass(margin),
                "JCGM 100, 5.1.2 and 6.2; twice: common practice, no source"));
        steps.add(new Step(
                "room left",
                "room = limit - contents - hose contents - margin",
                String.format(
                        Locale.ROOT,
                        "%.4f kg - %.4f kg - %.4f kg - %.4f kg",
                        limit.kilograms(),
                        inside,
                        hoseContents.kilograms(),
                        margin),
                String.format(Locale.ROOT, "%.4f kg", room),
                ARITHMETIC));
        if (inside > limit.kilograms()) {
            double excess = inside - limit.kilograms();
            return new Room.Overfilled(
                    contents, Mass.ofKilograms(excess), List.of(overfilled(limit, inside, excess)), steps);
        }
        if (!(room > 0)) {
            return new Room.Full(
                    contents,
                    List.of(new Caution(
                            "full: what is left below the limit is within the margin of the scale and the contents of the hoses; "
                                    + "stop now and take another cylinder",
                            PRACTICE)),
                    steps);
        }
        double stop = (zeroed ? moved : gross.kilograms()) + room;
        if (!zeroed) {
            // an empty cylinder may read a little below its tare; the stop weight counts from the tare
            stop = stamps.tare().kilograms() + inside + room;
        }
        steps.add(new Step(
                "stop reading",
                zeroed ? "stop = transferred + room" : "stop = TW + contents + room",
                String.format(Locale.ROOT, "%.4f kg + %.4f kg", stop - room, room),
                Figures.mass(stop),
                ARITHMETIC));
        return new Room.Left(
                contents, Mass.ofKilograms(room), MassDifference.ofKilograms(stop), weighing(zeroed), steps);
    }

    private static Step weighed(CylinderStamps stamps, Scale scale) {
        String gross =
                String.format(Locale.ROOT, "%.4f kg", scale.weighed().value().kilograms());
        String tare = String.format(Locale.ROOT, "%.4f kg", stamps.tare().kilograms());
        if (scale instanceof Scale.ZeroedAfterHookUp since) {
            double sum = scale.weighed().value().kilograms()
                    - stamps.tare().kilograms()
                    + since.transferred().value().kilograms();
            return new Step(
                    "contents by the scale",
                    "contents = gross before - TW + transferred",
                    String.format(
                            Locale.ROOT,
                            "%s - %s + %.4f kg",
                            gross,
                            tare,
                            since.transferred().value().kilograms()),
                    String.format(Locale.ROOT, "%.4f kg", sum),
                    ARITHMETIC);
        }
        return new Step(
                "contents by the scale",
                "contents = gross - TW",
                gross + " - " + tare,
                String.format(
                        Locale.ROOT,
                        "%.4f kg",
                        scale.weighed().value().kilograms() - stamps.tare().kilograms()),
                ARITHMETIC);
    }

    private static Caution overfilled(Mass limit, double inside, double excess) {
        return new Caution(
                "OVERFILLED: the cylinder holds " + Figures.mass(inside) + ", " + Figures.mass(excess)
                        + " over the limit of "
                        + Figures.mass(limit.kilograms())
                        + "; let nothing more in, keep it cool and out of the sun, do not transport it, and move the excess into another "
                        + "cylinder; a cylinder that fills with liquid bursts",
                "49 CFR 173.304; common practice");
    }

    private static List<Caution> weighing(boolean zeroed) {
        String hoses = zeroed
                ? "the hoses must hang as they did when the scale was zeroed; a pull on them reads as mass"
                : "with the hoses connected the scale carries part of them; weigh once more without them at the end";
        return List.of(
                new Caution(hoses, PRACTICE),
                new Caution("the scale decides; a float or level switch at 80 % is an aid only", PRACTICE));
    }
}
