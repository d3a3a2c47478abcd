package org.satline.transfer.planner;

import java.util.List;
import java.util.Optional;
import org.satline.quantity.Pressure;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanReason;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.hookup.VolumeState;
import org.satline.transfer.transition.PlanParts;

/** Why there is no plan, and what would make one possible: the first that holds, from what nothing helps against to what a part mends. */
final class PlanDiagnosis {
    /** Critical pressure of R-744; R. Span, W. Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509. */
    private static final Pressure CRITICAL = Pressure.ofBars(73.773);

    private final HookUp hookUp;
    private final HookUpState state;
    private final PlanTask task;
    private final boolean out;
    private final Optional<SystemPort> low;
    private final Optional<SystemPort> high;
    private final PlanRoles roles;
    private final PlanParts parts;

    private PlanDiagnosis(HookUp hookUp, HookUpState state, PlanTask task) {
        this.hookUp = hookUp;
        this.state = state;
        this.task = task;
        parts = new PlanParts(hookUp, state);
        roles = new PlanRoles(parts, parts.arrival(state));
        out = hookUp.cylinder(task.cylinder())
                .map(each -> each.use() == ServiceCylinder.Use.RECEIVER)
                .orElse(true);
        low = port(parts.low());
        high = port(parts.high());
    }

    /** A reason, and the part that it makes one think of. */
    private record Likely(PlanReason reason, PlanPart part) {}

    static HookUpPlan.NoPlan of(HookUp hookUp, HookUpState state, PlanTask task) {
        Likely likely = new PlanDiagnosis(hookUp, state, task).likely();
        return new HookUpPlan.NoPlan(likely.reason(), PlanRemedy.of(hookUp, state, task, likely.part()));
    }

    private Likely likely() {
        return gas().or(this::sites)
                .or(() -> task.kind() == PlanTask.Kind.END_OF_JOB ? Optional.empty() : pressures())
                .or(this::contents)
                .or(this::neverVented)
                .or(this::ports)
                .orElseGet(this::hoses);
    }

    private Optional<SystemPort> port(int index) {
        return index < 0 ? Optional.empty() : Optional.of(hookUp.ports().get(index));
    }

    private static Optional<Likely> when(boolean holds, PlanReason reason, PlanPart part) {
        return holds ? Optional.of(new Likely(reason, part)) : Optional.empty();
    }

    static boolean isTranscritical(HookUp hookUp) {
        return hookUp.gas().carbonDioxide()
                && hookUp.ports().stream().anyMatch(each -> each.pressure().compareTo(CRITICAL) > 0);
    }

    private Optional<Likely> gas() {
        return when(isTranscritical(hookUp), PlanReason.TRANSCRITICAL, PlanPart.RECOVERY_MACHINE);
    }

    private Optional<Likely> sites() {
        boolean wrongWay =
                (task.kind() == PlanTask.Kind.STEP_OUT && !out) || (task.kind() == PlanTask.Kind.STEP_IN && out);
        return when(low.isEmpty() && (high.isEmpty() || !out), PlanReason.NO_PORT, PlanPart.SERVICE_PORT)
                .or(() -> when(roles.centre < 0, PlanReason.NO_HOSE, PlanPart.OTHER_HOSE))
                .or(() -> when(wrongWay, PlanReason.CYLINDER_NOT_SUITED, PlanPart.OTHER_CYLINDER));
    }

    private Optional<Likely> pressures() {
        VolumeState held = state.volume(task.cylinder());
        int index = parts.cylinders().indexOf(hookUp.cylinder(task.cylinder()).orElseThrow());
        boolean running = hookUp.running();
        if (out) {
            boolean pushed =
                    hookUp.ports().stream().anyMatch(each -> each.pressure().pascals() > parts.feedsPa(index));
            boolean machineUnknown = hookUp.machine()
                    && roles.outlet >= 0
                    && !hookUp.pump()
                    && state.volume(HookUp.MACHINE_INLET).origin() == GasOrigin.UNKNOWN;
            return when(!pushed && machineUnknown, PlanReason.UNKNOWN_CONTENTS, PlanPart.VACUUM_PUMP)
                    .or(() -> notPushed(pushed, running));
        }
        boolean clean =
                held.origin().isClean() && held.origin() != GasOrigin.NONE && held.content() != VolumeContent.AIR;
        double suction = low.map(each -> each.pressure().pascals()).orElse(0.0);
        boolean weighed = high.filter(each -> each.role() == SystemPort.Role.LIQUID_LINE)
                .filter(each -> held.pressure().pascals() - each.pressure().pascals() > HookUp.certainPa())
                .isPresent();
        boolean above = held.pressure().pascals() - suction > HookUp.certainPa();
        return when(!clean, PlanReason.CYLINDER_NOT_SUITED, PlanPart.OTHER_CYLINDER)
                .or(() -> when(!running && !weighed, PlanReason.AT_REST, PlanPart.RUNNING_SYSTEM))
                .or(() -> when(!above, PlanReason.SOURCE_NOT_ABOVE, PlanPart.WARM_SOURCE));
    }

    private static Optional<Likely> notPushed(boolean pushed, boolean running) {
        return when(!pushed && !running, PlanReason.AT_REST, PlanPart.RECOVERY_MACHINE)
                .or(() -> when(!pushed, PlanReason.PRESSURE_NOT_BELOW, PlanPart.COLD_CYLINDER));
    }

    private Optional<Likely> contents() {
        boolean unknown = hookUp.volumes().keySet().stream()
                .filter(name -> !name.startsWith(HookUp.MACHINE)
                        && hookUp.cylinder(name).isEmpty())
                .anyMatch(name -> state.volume(name).origin() == GasOrigin.UNKNOWN);
        return when(unknown, PlanReason.UNKNOWN_CONTENTS, PlanPart.VACUUM_PUMP);
    }

    private Optional<Likely> neverVented() {
        if (hookUp.gas().mayBeVented()) {
            return Optional.empty();
        }
        PlanReason reason =
                hookUp.gas().group().isToxic() ? PlanReason.TOXIC_NEEDS_MACHINE : PlanReason.FLAMMABLE_NEEDS_EVACUATION;
        boolean core = hookUp.ports().stream().anyMatch(each -> !each.hasValve());
        PlanPart part = core
                ? PlanPart.CORE_TOOL
                : !hookUp.pump()
                        ? PlanPart.VACUUM_PUMP
                        : plainAtPort() ? PlanPart.SHUT_OFF_AT_PORT : PlanPart.OTHER_HOSE;
        return Optional.of(new Likely(reason, part));
    }

    /** Whether a hose at a port has no end that shuts. */
    private boolean plainAtPort() {
        List<Integer> atPorts = roles.manifold ? List.of(roles.low, roles.high) : List.of(roles.centre);
        return atPorts.stream()
                .filter(hose -> hose >= 0)
                .map(hookUp.hoses()::get)
                .anyMatch(PlanDiagnosis::plain);
    }

    private static boolean plain(ServiceHose hose) {
        return hose.systemEnd() == EndFitting.PLAIN_FLARE && hose.cylinderEnd() == EndFitting.PLAIN_FLARE;
    }

    private Optional<Likely> ports() {
        double air = hookUp.atmosphere().pressure().pascals();
        double least = air
                + Pressure.ofBars(HookUpPractice.SWEEP_ABOVE_ATMOSPHERE_BAR.value())
                        .pascals();
        boolean below = low.filter(each -> each.pressure().pascals() <= least).isPresent();
        boolean lowCore = low.filter(each -> !each.hasValve()).isPresent();
        int atLiquid = roles.manifold ? roles.high : roles.centre;
        boolean highCore =
                high.filter(each -> !each.hasValve() && each.liquid()).isPresent()
                        && atLiquid >= 0
                        && hookUp.hoses().get(atLiquid).systemEnd() == EndFitting.PLAIN_FLARE;
        boolean carbonDioxide = hookUp.gas().carbonDioxide();
        return when(below && lowCore, PlanReason.LOW_SIDE_BELOW_ATMOSPHERE, PlanPart.CORE_TOOL)
                .or(() -> when(
                        below,
                        PlanReason.LOW_SIDE_BELOW_ATMOSPHERE,
                        hookUp.pump() ? PlanPart.OTHER_HOSE : PlanPart.VACUUM_PUMP))
                .or(() -> when(
                        carbonDioxide,
                        PlanReason.CARBON_DIOXIDE_LIQUID,
                        out ? PlanPart.RECOVERY_MACHINE : PlanPart.REGULATOR))
                .or(() -> when(highCore, PlanReason.PLAIN_END_ON_CORE, PlanPart.SHUT_OFF_AT_PORT))
                .or(() -> when(
                        !hookUp.running() && low.filter(SystemPort::liquid).isPresent(),
                        PlanReason.AT_REST,
                        PlanPart.RUNNING_SYSTEM));
    }

    private Likely hoses() {
        ServiceHose centre = hookUp.hoses().get(roles.centre);
        boolean bothSeal =
                centre.systemEnd() == EndFitting.SELF_SEALING && centre.cylinderEnd() == EndFitting.SELF_SEALING;
        boolean mixed = hookUp.hoses().stream()
                .anyMatch(each -> !state.volume(each.name()).origin().isClean());
        PlanPart mend = hookUp.pump() ? PlanPart.OTHER_HOSE : PlanPart.VACUUM_PUMP;
        return when(bothSeal, PlanReason.BOTH_ENDS_SELF_SEALING, mend)
                .or(() -> when(mixed, PlanReason.HOSE_STAYS_MIXED, PlanPart.VACUUM_PUMP))
                .or(() -> when(!hookUp.running(), PlanReason.AT_REST, PlanPart.RUNNING_SYSTEM))
                .or(() -> when(!roles.manifold, PlanReason.NO_SWEEP_PATH, PlanPart.MANIFOLD))
                .orElseGet(() -> new Likely(PlanReason.NO_SWEEP_PATH, mend));
    }
}
