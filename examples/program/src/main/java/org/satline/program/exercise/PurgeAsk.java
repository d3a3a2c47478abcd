package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.quantity.Density;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.Hose;
import org.satline.wording.VisitLines;

/** What a question about a purge asks, and its answers. */
final class PurgeAsk {
    private static final String NONE = "exercise.none";

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

    void write(HookUpPlan plan, Hose hose, Given<Density> density) {
        Given<Length> bore = size(
                readout.say("exercise.bore-of-the-hose"),
                hose.bore(),
                readout.us() ? "in" : "mm",
                readout.us() ? 2 : 1);
        Given<Length> length =
                size(readout.say("exercise.length-of-the-hose"), hose.length(), readout.us() ? "ft" : "m", 1);
        draft.given(bore, length);
        if (difficulty != Difficulty.STARTING) {
            draft.part("possible", readout.say("exercise.can-this-hose-be-swept"), Answer.Words.own(possible(plan)));
        }
        if (plan instanceof HookUpPlan.Planned planned) {
            purge(planned, hose, bore, length, density);
        } else if (plan instanceof HookUpPlan.NoPlan none) {
            String why = readout.words()
                    .message("transfer.planReason." + none.reason().word());
            String instead = VisitLines.parts(none, readout.words());
            ask(readout.say(NONE), readout.say("exercise.none-instead", instead), Answer.Words.own(readout.say(NONE)));
            draft.work(
                    readout.say("exercise.sweep"),
                    readout.say("exercise.who-pushes-and-who-lets"),
                    why,
                    instead,
                    readout.say("exercise.rules-of-the-question"));
        }
    }

    static boolean isTurned(HookUpPlan.Planned plan) {
        return plan.acts().stream().anyMatch(act -> act.kind() == Act.Kind.TURN_ROUND);
    }

    private String possible(HookUpPlan plan) {
        if (plan instanceof HookUpPlan.Planned planned) {
            return isTurned(planned)
                    ? readout.say("exercise.yes-after-it-is-turned")
                    : readout.say("exercise.yes-as-it-hangs");
        }
        return readout.say("exercise.no");
    }

    private String looseJoint(HookUpPlan.Planned plan) {
        boolean atCylinder = plan.acts().stream()
                .anyMatch(act -> act.kind() == Act.Kind.CONNECT_LOOSE
                        && act.to().orElse("").startsWith("cylinder"));
        return readout.say(
                "exercise.the-one-at-the",
                (atCylinder ? readout.say("exercise.cylinder") : readout.say("exercise.system")));
    }

    private String moves(HookUpPlan.Planned plan) {
        List<String> moves = new ArrayList<>();
        for (Act act : plan.acts()) {
            List<Figure> places = new ArrayList<>();
            places.add(Figure.of("target", part(act.target())));
            act.to().ifPresent(to -> places.add(Figure.of("to", part(to))));
            moves.add((moves.size() + 1) + ") "
                    + readout.words().message("act." + act.kind().code(), places.toArray(new Figure[0])));
        }
        return String.join(" ", moves);
    }

    private String part(String name) {
        return readout.words().message("place." + name, Figure.of("name", readout.say("exercise.the-cylinder")));
    }

    private void purge(
            HookUpPlan.Planned plan, Hose hose, Given<Length> bore, Given<Length> length, Given<Density> density) {
        double volumes = HookUpPractice.SWEEP_VOLUMES.value();
        Mass released = Mass.ofKilograms(
                volumes * hose.volume().cubicMetres() * density.value().kilogramsPerCubicMetre());
        Mass planned = plan.phases().stream().map(HookUpPlan.Phase::vented).reduce(Mass.ZERO, Mass::plus);
        ask(looseJoint(plan), moves(plan), mass(released));
        draft.sum(
                        readout.say("exercise.volume-of-the-hose"),
                        "V = pi/4 d^2 L",
                        "pi/4 x (" + bore.text() + ")^2 x " + length.text(),
                        hose.volume().in(readout.us() ? "in3" : "L", readout.us() ? 2 : 4))
                .work(
                        readout.say("exercise.refrigerant-released"),
                        "m = 3 V rho_v",
                        "3 x " + hose.volume().in(readout.us() ? "ft3" : "L", 5) + " x " + density.text(),
                        released.in(massUnit(), massUnit().equals("g") ? 2 : 3),
                        Finding.PRACTICE)
                .derive(List.of(new Step(
                        "letOut",
                        "m = n V rho_v",
                        List.of(Figure.of("n", volumes, "1"), Figure.of("V", hose.volume())),
                        Figure.of("m", planned),
                        Finding.PRACTICE)))
                .slip(readout.say("exercise.the-vapour-that-counts-is"));
    }

    /** The same questions whether there is a way or not, so that they tell nothing. */
    private void ask(String loose, String moves, Answer released) {
        draft.rule(readout.say(
                        "exercise.assume-that-three-volumes-of",
                        (readout.us()
                                ? "; 1 ft = 12 in, 1 ft3 = 1728 in3, 1 lb = "
                                        + (massUnit().equals("g") ? "453.59 g." : "16 oz.")
                                : ".")))
                .part("loose", readout.say("exercise.which-joint-stays-loose"), Answer.Words.own(loose))
                .part("moves", readout.say("exercise.list-the-moves-in-order"), Answer.Words.own(moves))
                .part("released", readout.say("exercise.how-much-refrigerant-is-released", massUnit()), released);
    }

    private static Given<Length> size(String name, Length length, String unit, int decimals) {
        return new Given<>(name, length.in(unit, decimals), length);
    }
}
