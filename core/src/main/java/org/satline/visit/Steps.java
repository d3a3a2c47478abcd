package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.Judgement;
import org.satline.charge.belief.ChargeEstimate;
import org.satline.charge.belief.ChargeEstimate.Constants;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.LineMargin;
import org.satline.charge.margin.Margins;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Role;
import org.satline.cylinder.Room;
import org.satline.quantity.Mass;
import org.satline.quantity.TemperatureDifference;
import org.satline.step.StepAdvice;
import org.satline.step.StepAdvisor;
import org.satline.step.StepLimits;
import org.satline.step.StepReading;

/** How far the charge is off and how much to move next, for the cylinder that is connected. */
record Steps(Visit visit, Judgement judgement, Deviation deviation, ChargeLevel level) {
    /** Where the maker states none; common practice, no source. */
    private static final double USUAL_SUBCOOLING_K = 6.4;
    /** At an expansion valve, where the maker states none; common practice, no source. */
    private static final double USUAL_SUPERHEAT_K = 6;
    /** What hose and hand resolve where no scale is named; common practice, no source. */
    private static final double SMALLEST_KG = 0.02;
    /** The smallest step is this many expanded uncertainties of the scale; common practice, no source. */
    private static final double TIMES_THE_SCALE = 2;

    static Optional<Steps> of(Visit visit, Judgement judgement) {
        return judgement instanceof Judgement.Decided decided
                ? decided.evidence().deviation().map(d -> new Steps(visit, judgement, d, decided.level()))
                : Optional.empty();
    }

    private double rated(Criterion criterion, Optional<TemperatureDifference> stated, double usual) {
        return deviation.criterion() == criterion
                ? deviation.target().kelvins()
                : stated.map(TemperatureDifference::kelvins).orElse(usual);
    }

    Optional<ChargeEstimate> estimate() {
        Margins margins = judgement.evidence().margins();
        double subcooling = rated(Criterion.SUBCOOLING, visit.system().targetSubcooling(), USUAL_SUBCOOLING_K);
        Optional<LineMargin> high = margins.superheat();
        Optional<LineMargin> low = margins.subcooling();
        if (!(subcooling > 0) || high.isEmpty() || low.isEmpty()) {
            return Optional.empty();
        }
        double superheat = rated(Criterion.SUPERHEAT, visit.system().targetSuperheat(), USUAL_SUPERHEAT_K);
        return Optional.of(
                ChargeEstimate.of(high.get(), superheat, low.get(), subcooling, Constants.typical(subcooling)));
    }

    /** Nothing on target, or without the full charge of the plate. */
    Optional<StepAdvice> advice(Optional<CheckedCylinder> connected) {
        Optional<Mass> fullCharge = visit.system().fullCharge();
        if (level == ChargeLevel.ON_TARGET || fullCharge.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(StepAdvisor.typical(
                        fullCharge.get(),
                        visit.system().metering(),
                        deviation.tolerance().kelvins())
                .next(readings(), limits(fullCharge.get(), connected)));
    }

    /**
     * The whole uncertainty is taken as noise: its constant part cancels between steps, so the step comes out smaller rather than larger.
     */
    private List<StepReading> readings() {
        double u = deviation.standardUncertaintyK();
        double target = deviation.target().kelvins();
        List<StepReading> readings = new ArrayList<>();
        for (MovedSoFar.EarlierReading each : visit.moved().earlier()) {
            readings.add(reading(each.net().kilograms(), each.measured(), target, u));
        }
        readings.add(reading(visit.moved().net().kilograms(), deviation.measured(), target, u));
        return readings;
    }

    private StepReading reading(double netKg, TemperatureDifference measured, double targetK, double u) {
        return StepReading.of(netKg, deviation.criterion(), measured.kelvins(), targetK, u);
    }

    /**
     * What the cylinder takes or gives bounds the step only where it is the cylinder for this direction; else another one will be brought.
     */
    private StepLimits limits(Mass fullCharge, Optional<CheckedCylinder> connected) {
        Mass smallest = connected
                .flatMap(CheckedCylinder::contents)
                .map(contents -> Mass.ofKilograms(TIMES_THE_SCALE * contents.expandedUncertainty()))
                .orElse(Mass.ofKilograms(SMALLEST_KG));
        Mass room = connected
                .flatMap(CheckedCylinder::room)
                .filter(each -> level == ChargeLevel.HIGH)
                .map(each -> each instanceof Room.Left left ? left.room() : Mass.ZERO)
                .orElse(fullCharge);
        Mass available = connected
                .filter(each -> level == ChargeLevel.LOW && each.cylinder().role() == Role.SOURCE)
                .flatMap(CheckedCylinder::canGive)
                .orElse(fullCharge);
        return StepLimits.usual(room, available, smallest);
    }
}
