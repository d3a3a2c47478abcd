package org.satline.visit;

import java.util.List;
import java.util.Optional;
import org.satline.charge.Judgement;
import org.satline.charge.margin.ChargeLevel;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Role;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.Direction;
import org.satline.transfer.HoseState;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.planner.HookUpPlanner;
import org.satline.visit.HookUpFacts.HoseOnSite;

/** What the planner says of the hook-up of a visit. For one visit and one thread. */
final class HookUpModel {
    private final Visit visit;
    private final Optional<CheckedCylinder> connected;
    private final Optional<CheckedCylinder> next;
    private final SaturationCurve curve;
    private final Direction direction;
    private final HoseState hose;
    private final Optional<HookUpPlan> plan;

    HookUpModel(
            Visit visit,
            List<CheckedCylinder> cylinders,
            Optional<CheckedCylinder> connected,
            SaturationCurve curve,
            Judgement judgement) {
        this.visit = visit;
        this.connected = connected;
        this.curve = curve;
        this.direction = judgement instanceof Judgement.Decided decided && decided.level() == ChargeLevel.LOW
                ? Direction.IN
                : Direction.OUT;
        boolean decided = judgement instanceof Judgement.Decided it && it.level() != ChargeLevel.ON_TARGET;
        this.next = decided && connected.filter(this::fits).isEmpty() ? other(cylinders, connected) : Optional.empty();
        boolean ready = isReady() && next.isEmpty();
        Optional<HookUpPlan> found = next.isPresent() ? changedOver() : planned(ready);
        this.plan = found;
        this.hose = visit.hookUp().hoses().isEmpty()
                ? HoseState.UNKNOWN
                : ready
                        ? HoseState.READY
                        : found.filter(HookUpPlan.Planned.class::isInstance).isPresent()
                                ? HoseState.NOT_PURGED
                                : HoseState.CANNOT_BE_PURGED;
    }

    HoseState hose() {
        return hose;
    }

    Optional<HookUpPlan> plan() {
        return plan;
    }

    /** The cylinder to which the hose has to go, where the one that it hangs on is there for the other direction. */
    Optional<CheckedCylinder> next() {
        return next;
    }

    private boolean fits(CheckedCylinder each) {
        return (each.cylinder().role() == Role.RECEIVER) == (direction == Direction.OUT);
    }

    /** The first cylinder on site that is there for the other direction than the connected one and may be used. */
    static Optional<CheckedCylinder> other(List<CheckedCylinder> cylinders, Optional<CheckedCylinder> connected) {
        return connected.flatMap(one -> cylinders.stream()
                .filter(each -> each.cylinder().role() != one.cylinder().role())
                .filter(each -> !each.forbids())
                .findFirst());
    }

    /** Free of air and of foreign gas, hose and manifold both. */
    private boolean isReady() {
        List<HoseOnSite> hoses = visit.hookUp().hoses();
        return !hoses.isEmpty() && manifoldIsClear() && hoses.stream().allMatch(this::isClear);
    }

    private boolean manifoldIsClear() {
        return visit.hookUp()
                .manifold()
                .map(each -> each.holds() != VolumeContent.AIR)
                .orElse(!TransferDesk.throughManifold(visit));
    }

    private boolean isClear(HoseOnSite each) {
        return switch (each.holds()) {
            case AIR -> false;
            case NOTHING -> true;
            case VAPOUR, LIQUID ->
                each.origin().isClean() || (direction == Direction.OUT && each.origin() == GasOrigin.RECOVERED);
        };
    }

    private Optional<HookUpPlan> planned(boolean ready) {
        boolean right = connected
                .filter(each -> each.inside().isPresent() && !each.isDangerous() && fits(each))
                .isPresent();
        if (visit.hookUp().hoses().isEmpty() || !right) {
            return Optional.empty();
        }
        PlanTask.Kind kind = !ready
                ? PlanTask.Kind.CONNECT_AND_PURGE
                : direction == Direction.OUT ? PlanTask.Kind.STEP_OUT : PlanTask.Kind.STEP_IN;
        return Optional.of(plan(ready, PlanTask.of(kind, HookUpSite.CYLINDER)));
    }

    /** The hose from the cylinder that it is on to the other; one that is not hooked up yet goes to the other at once. */
    private Optional<HookUpPlan> changedOver() {
        boolean known = next.filter(each -> each.inside().isPresent()).isPresent()
                && connected.filter(each -> each.inside().isPresent()).isPresent();
        if (visit.hookUp().hoses().isEmpty() || !known || !manifoldIsClear()) {
            return Optional.empty();
        }
        boolean hangs = visit.hookUp().hoses().stream().noneMatch(each -> each.holds() == VolumeContent.AIR);
        PlanTask.Kind kind = hangs ? PlanTask.Kind.CHANGE_OVER : PlanTask.Kind.CONNECT_AND_PURGE;
        return Optional.of(plan(hangs, PlanTask.of(kind, HookUpSite.NEXT)));
    }

    /** How everything comes off; nothing where nothing is hooked up. */
    Optional<HookUpPlan> endOfJob() {
        boolean hangs = connected.filter(each -> !each.isDangerous()).isPresent() && isHookedUp();
        return hangs ? Optional.of(plan(true, PlanTask.of(PlanTask.Kind.END_OF_JOB, ""))) : Optional.empty();
    }

    private boolean isHookedUp() {
        List<HoseOnSite> hoses = visit.hookUp().hoses();
        return !hoses.isEmpty()
                && manifoldIsClear()
                && hoses.stream().noneMatch(each -> each.holds() == VolumeContent.AIR);
    }

    private HookUpPlan plan(boolean hangs, PlanTask task) {
        HookUpSite site = new HookUpSite(visit, connected.orElseThrow(), next, curve);
        HookUp network = site.network();
        return HookUpPlanner.plan(network, site.state(network, hangs), task);
    }
}
