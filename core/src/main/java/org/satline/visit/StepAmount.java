package org.satline.visit;

import java.util.Optional;
import org.satline.charge.StepAdvice;
import org.satline.cylinder.Scale;
import org.satline.quantity.MassDifference;

/** The next amount in words, and the reading of the scale at which it is reached. */
final class StepAmount {
    /** Hundredths of a pound; far above the error of doubles, far below what a scale shows. */
    private static final double ROUND_OFF = 1e-6;

    private final VisitInput input;
    private final Optional<StepAdvice.Move> move;

    StepAmount(VisitInput input, ChargeWork work) {
        this.input = input;
        this.move = work.advice().filter(StepAdvice.Move.class::isInstance).map(StepAdvice.Move.class::cast);
    }

    /** Rounded down, so that no more is moved than was computed. */
    String words() {
        return move.map(found -> Figures.figure(
                        "%.2f lb (%.3f kg)%s as the next step",
                        Math.floor(found.amount().pounds() * 100) / 100,
                        Math.floor(found.amount().kilograms() * 1000) / 1000,
                        found.changesDirection() && !rightCylinderHangs(found)
                                ? ", after a change of cylinder and another purge,"
                                : ""))
                .orElse("no more than 5 % of the full charge"
                        + (input.system().fullCharge().isPresent()
                                ? ""
                                : " (which is not known here: read it on the nameplate)"));
    }

    private boolean rightCylinderHangs(StepAdvice.Move found) {
        return input.cylinder()
                .filter(each -> each.receives() == (found.direction() == StepAdvice.Direction.REMOVE))
                .isPresent();
    }

    /** The reading at which the step ends, rounded so that no more is moved; empty where step or scale is not known. */
    String reading() {
        Optional<CylinderOnSite> cylinder = input.cylinder();
        if (move.isEmpty() || cylinder.flatMap(CylinderOnSite::scale).isEmpty() || !rightCylinderHangs(move.get())) {
            return "";
        }
        double shown = shownPounds(cylinder.get().scale().orElseThrow());
        double step = Math.floor(move.get().amount().pounds() * 100) / 100;
        double pounds = cylinder.get().receives()
                ? Math.floor(100 * (shown + step) + ROUND_OFF) / 100
                : Math.ceil(100 * (shown - step) - ROUND_OFF) / 100;
        return ", that is " + Figures.of(MassDifference.ofPounds(pounds)) + " on the scale";
    }

    private static double shownPounds(Scale scale) {
        return scale instanceof Scale.ZeroedAfterHookUp zeroed
                ? zeroed.transferred().value().pounds()
                : scale.weighed().value().pounds();
    }
}
