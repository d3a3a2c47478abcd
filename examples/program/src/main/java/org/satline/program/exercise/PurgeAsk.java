package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import org.satline.quantity.Density;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.transfer.Hose;
import org.satline.transfer.PurgeAction;
import org.satline.transfer.PurgePlan;

/** What a question about a purge asks, and its answers. */
final class PurgeAsk {
    private static final String NONE = "none";

    private final Exercise.Draft draft;
    private final Readout readout;
    private final Difficulty difficulty;

    PurgeAsk(Exercise.Draft draft, Readout readout, Difficulty difficulty) {
        this.draft = draft;
        this.readout = readout;
        this.difficulty = difficulty;
    }

    /** Who begins stays in one family of units. */
    private String massUnit() {
        return readout.us() && difficulty == Difficulty.STARTING ? "oz" : "g";
    }

    private Answer.Figure mass(Mass released) {
        boolean grams = massUnit().equals("g");
        return Answer.Figure.of(released.valueIn(massUnit()), grams ? 1 : 2, massUnit(), grams ? 0.1 : 0.01);
    }

    void write(PurgePlan plan, Hose hose, Given<Density> density) {
        Given<Length> bore = size("bore of the hose", hose.bore(), readout.us() ? "in" : "mm", readout.us() ? 2 : 1);
        Given<Length> length = size("length of the hose", hose.length(), readout.us() ? "ft" : "m", 1);
        draft.given(bore, length);
        if (difficulty != Difficulty.STARTING) {
            draft.part(
                    "possible",
                    "Can this hose be purged, as it hangs or turned round?",
                    new Answer.Words(possible(plan)));
        }
        if (plan instanceof PurgePlan.Purge purge) {
            purge(purge, hose, bore, length, density);
        } else if (plan instanceof PurgePlan.Impossible none) {
            ask(NONE, NONE, "none; instead: " + none.instead(), new Answer.Words(NONE));
            int number = 1;
            for (String reason : none.reasons()) {
                draft.work(
                        "way " + number++,
                        "who pushes, and who lets out",
                        reason,
                        "does not do",
                        "rules of the question");
            }
        }
    }

    private static String possible(PurgePlan plan) {
        if (plan instanceof PurgePlan.Purge purge) {
            return purge.turned() ? "yes, after it is turned round" : "yes, as it hangs";
        }
        return "no";
    }

    private void purge(
            PurgePlan.Purge purge, Hose hose, Given<Length> bore, Given<Length> length, Given<Density> density) {
        List<String> moves = new ArrayList<>();
        int number = 1;
        for (PurgeAction action : purge.actions()) {
            moves.add(number++ + ") " + action.instruction());
        }
        ask(
                "from the " + purge.from(),
                "the one at the " + purge.looseJoint(),
                String.join("; ", moves),
                mass(purge.released()));
        draft.sum(
                        "volume of the hose",
                        "V = pi/4 d^2 L",
                        "pi/4 x (" + bore.text() + ")^2 x " + length.text(),
                        hose.volume().in(readout.us() ? "in3" : "L", readout.us() ? 2 : 4))
                .work(
                        "refrigerant released",
                        "m = 3 V rho_v",
                        "3 x " + hose.volume().in(readout.us() ? "ft3" : "L", 5) + " x " + density.text(),
                        purge.released().in(massUnit(), massUnit().equals("g") ? 2 : 3),
                        "common practice, no source")
                .derive(purge.steps())
                .slip("The vapour that counts is that of the side that pushes; what leaves comes out at the "
                        + purge.looseJoint() + ".");
    }

    /** The same questions whether there is a way or not, so that they tell nothing. */
    private void ask(String from, String loose, String moves, Answer released) {
        draft.rule("Reckon that three volumes of the hose leave it before the air is gone (common practice, no source)"
                        + (readout.us()
                                ? "; 1 ft = 12 in, 1 ft3 = 1728 in3, 1 lb = "
                                        + (massUnit().equals("g") ? "453.59 g." : "16 oz.")
                                : "."))
                .part("from", "From which end is the hose purged?", new Answer.Words(from))
                .part("loose", "Which joint stays loose?", new Answer.Words(loose))
                .part("moves", "List the moves in order.", new Answer.Words(moves))
                .part("released", "How much refrigerant is released, in " + massUnit() + "?", released);
    }

    private static Given<Length> size(String name, Length length, String unit, int decimals) {
        return new Given<>(name, length.in(unit, decimals), length);
    }
}
