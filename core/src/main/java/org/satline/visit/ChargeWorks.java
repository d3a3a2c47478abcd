package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.ChargeEstimate;
import org.satline.charge.ChargeEstimate.Constants;
import org.satline.charge.ChargeLevel;
import org.satline.charge.Criterion;
import org.satline.charge.Deviation;
import org.satline.charge.Diagnosis;
import org.satline.charge.LineMargin;
import org.satline.charge.Margins;
import org.satline.charge.StepAdvice;
import org.satline.charge.StepAdvisor;
import org.satline.charge.StepLimits;
import org.satline.charge.StepReading;
import org.satline.cylinder.Room;
import org.satline.quantity.Mass;
import org.satline.quantity.TemperatureDifference;

/** Works out the charge error and the next step from a level that was decided. */
final class ChargeWorks {
    /** Where the maker states none; common practice, no source. */
    private static final double USUAL_SUBCOOLING_K = 6.4;
    /** At an expansion valve, where the maker states none; common practice, no source. */
    private static final double USUAL_SUPERHEAT_K = 6;
    /** What hose and hand resolve where no scale is named; common practice, no source. */
    private static final double SMALLEST_KG = 0.02;
    /** A step is at least this many times the expanded uncertainty of one weighing; common practice, no source. */
    private static final double TIMES_THE_SCALE = 2;

    private final VisitInput input;
    private final Margins margins;
    private final Optional<CylinderReport> cylinder;
    private final Optional<HookUpReport> hookUp;
    private final Deviation deviation;
    private final ChargeLevel level;

    private ChargeWorks(
            VisitInput input,
            Margins margins,
            Optional<CylinderReport> cylinder,
            Optional<HookUpReport> hookUp,
            Deviation deviation,
            ChargeLevel level) {
        this.input = input;
        this.margins = margins;
        this.cylinder = cylinder;
        this.hookUp = hookUp;
        this.deviation = deviation;
        this.level = level;
    }

    static ChargeWork of(
            VisitInput input,
            Margins margins,
            Diagnosis diagnosis,
            Optional<CylinderReport> cylinder,
            Optional<HookUpReport> hookUp) {
        Optional<Deviation> deviation = diagnosis.evidence().deviation();
        if (diagnosis instanceof Diagnosis.Decided decided && deviation.isPresent()) {
            return new ChargeWorks(input, margins, cylinder, hookUp, deviation.get(), decided.level()).work();
        }
        return new ChargeWork(Optional.empty(), Optional.empty());
    }

    private ChargeWork work() {
        double subcooling = rated(Criterion.SUBCOOLING, input.system().targetSubcooling(), USUAL_SUBCOOLING_K);
        if (!(subcooling > 0)) {
            return new ChargeWork(Optional.empty(), Optional.empty());
        }
        Constants constants = Constants.typical(subcooling);
        return new ChargeWork(estimate(constants, subcooling), advice());
    }

    private double rated(Criterion criterion, Optional<TemperatureDifference> stated, double usual) {
        return deviation.criterion() == criterion
                ? deviation.target().kelvins()
                : stated.map(TemperatureDifference::kelvins).orElse(usual);
    }

    private Optional<ChargeEstimate> estimate(Constants constants, double ratedSubcoolingK) {
        Optional<LineMargin> superheat = margins.superheat();
        Optional<LineMargin> subcooling = margins.subcooling();
        if (superheat.isEmpty() || subcooling.isEmpty()) {
            return Optional.empty();
        }
        double ratedSuperheatK = rated(Criterion.SUPERHEAT, input.system().targetSuperheat(), USUAL_SUPERHEAT_K);
        return Optional.of(
                ChargeEstimate.of(superheat.get(), ratedSuperheatK, subcooling.get(), ratedSubcoolingK, constants));
    }

    private Optional<StepAdvice> advice() {
        Optional<Mass> fullCharge = input.system().fullCharge();
        if (level == ChargeLevel.ON_TARGET || fullCharge.isEmpty()) {
            return Optional.empty();
        }
        return limits(fullCharge.get())
                .map(limits -> StepAdvisor.typical(
                                fullCharge.get(),
                                input.system().metering(),
                                deviation.tolerance().kelvins())
                        .next(readings(), limits));
    }

    /** The whole uncertainty is taken as noise: its constant part cancels between steps, so the step comes out smaller rather than larger. */
    private List<StepReading> readings() {
        double u = deviation.standardUncertaintyK();
        double target = deviation.target().kelvins();
        List<StepReading> readings = new ArrayList<>();
        for (MovedSoFar.EarlierReading each : input.moved().earlier()) {
            readings.add(StepReading.of(
                    each.net().kilograms(),
                    deviation.criterion(),
                    each.measured().kelvins(),
                    target,
                    u));
        }
        readings.add(StepReading.of(
                input.moved().net().kilograms(),
                deviation.criterion(),
                deviation.measured().kelvins(),
                target,
                u));
        return readings;
    }

    /** Nothing where the cylinder that hangs there must or can not take or give anything. */
    private Optional<StepLimits> limits(Mass fullCharge) {
        Mass smallest = Mass.ofKilograms(input.cylinder()
                .flatMap(CylinderOnSite::scale)
                .map(scale -> TIMES_THE_SCALE * scale.weighed().expandedUncertainty())
                .orElse(SMALLEST_KG));
        Mass room = fullCharge;
        if (cylinder.isPresent() && level == ChargeLevel.HIGH) {
            if (!(cylinder.get().room().orElse(null) instanceof Room.Left left)) {
                return Optional.empty();
            }
            room = left.room();
        }
        boolean barred = hookUp.filter(
                        each -> !each.refusals().isEmpty() || !each.forbidding().isEmpty())
                .isPresent();
        if (level == ChargeLevel.LOW && barred && cylinder.isEmpty()) {
            return Optional.empty();
        }
        Mass available = input.cylinder()
                .filter(each -> !each.receives())
                .flatMap(CylinderOnSite::insideKg)
                .map(inside -> Mass.ofKilograms(Math.max(0, inside)))
                .orElse(fullCharge);
        return Optional.of(StepLimits.usual(room, available, smallest));
    }
}
