package org.satline.visit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.charge.Judgement;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Cylinder;
import org.satline.cylinder.Role;
import org.satline.cylinder.Valve;
import org.satline.duty.Holder;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.filling.Provenance;
import org.satline.measurement.Reading;
import org.satline.quantity.Pressure;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.Direction;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowCheck;
import org.satline.transfer.HoseState;
import org.satline.transfer.Permit;
import org.satline.transfer.PermitOffice;
import org.satline.transfer.PermitRequest;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.visit.HookUpFacts.HosePort;

/**
 * What a visit has to ask the room {@code transfer}: permit, flows, state of the hose and plan, each once. For one visit and one thread.
 */
final class TransferDesk {
    /** Stands for the owner where nobody says who it is, so that two who are not stated are not the same. */
    private static final String SYSTEM_OWNER = "system.owner";

    private final Visit visit;
    private final Optional<CheckedCylinder> connected;
    private final SaturationCurve curve;
    private final HookUpModel model;
    private Optional<Permit> permit = Optional.empty();

    TransferDesk(
            Visit visit,
            Judgement judgement,
            List<CheckedCylinder> cylinders,
            Optional<CheckedCylinder> connected,
            SaturationCurve curve) {
        this.visit = visit;
        this.connected = connected;
        this.curve = curve;
        this.model = new HookUpModel(visit, cylinders, connected, curve, judgement);
    }

    Optional<Finding> overPressure(Pressure liquid) {
        return SystemDanger.of(
                liquid, curve, visit.site().atmosphere(), visit.system().name());
    }

    Permit ask(Direction direction) {
        Permit answer = ask(direction, connected);
        Optional<CheckedCylinder> next = model.next();
        if (next.isPresent() && answer instanceof Permit.Refused refused) {
            // what stands in the way of the other cylinder is told before the hose goes there
            answer = new Permit.Refused(
                    Stream.concat(refused.findings().stream(), ask(direction, next).findings().stream())
                            .distinct()
                            .sorted(Comparator.comparing(Finding::severity))
                            .toList());
        }
        permit = Optional.of(withEnd(answer));
        return permit.get();
    }

    private Permit ask(Direction direction, Optional<CheckedCylinder> used) {
        return PermitOffice.standard()
                .ask(asked(new PermitRequest(
                        direction,
                        visit.openPorts(),
                        visit.hookUp().hoses().stream()
                                .findFirst()
                                .flatMap(each -> each.port().port()),
                        point(used),
                        used.map(each -> each.cylinder().name()).orElse(""),
                        system(),
                        used.map(this::held),
                        findings(direction, used),
                        visit.system().refrigerant().isBlend(),
                        hose())));
    }

    private PermitRequest asked(PermitRequest bare) {
        return visit.hookUp().recoveryMachine() ? bare.withMachine() : bare;
    }

    Optional<Permit> permit() {
        return permit;
    }

    List<Flow> flows() {
        return point(connected)
                .map(cylinder -> FlowCheck.ports(visit.openPorts(), cylinder))
                .orElse(List.of());
    }

    HoseState hose() {
        return model.hose();
    }

    Optional<HookUpPlan> plan() {
        return model.plan();
    }

    Optional<HookUpPlan> endOfJob() {
        return model.endOfJob();
    }

    private static Optional<ConnectionPoint> point(Optional<CheckedCylinder> used) {
        return used.flatMap(each ->
                each.inside().map(pressure -> new ConnectionPoint(kind(each.cylinder()), pressure, List.of())));
    }

    static PointKind kind(Cylinder cylinder) {
        boolean liquid = cylinder.reaches() == Valve.LIQUID;
        return cylinder.role() == Role.RECEIVER
                ? liquid ? PointKind.RECOVERY_CYLINDER_LIQUID_VALVE : PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE
                : liquid ? PointKind.SOURCE_CYLINDER_LIQUID_VALVE : PointKind.SOURCE_CYLINDER_VAPOUR_VALVE;
    }

    private Holder system() {
        return new Holder(
                Holder.Kind.SYSTEM,
                visit.system().owner().orElse(SYSTEM_OWNER),
                Optional.of(visit.system().refrigerant()),
                Provenance.RECOVERED);
    }

    private Holder held(CheckedCylinder checked) {
        Cylinder cylinder = checked.cylinder();
        Provenance provenance =
                cylinder.provenance().orElse(cylinder.role() == Role.RECEIVER ? Provenance.RECOVERED : Provenance.NEW);
        boolean recovery = cylinder.role() == Role.RECEIVER || provenance.isUsed();
        return new Holder(
                recovery ? Holder.Kind.RECOVERY_CYLINDER : Holder.Kind.SOURCE_CYLINDER,
                cylinder.owner().orElseGet(() -> cylinder.path("owner")),
                checked.holds(),
                provenance);
    }

    private Permit withEnd(Permit answer) {
        return answer instanceof Permit.Granted granted
                ? withoutEnd()
                        .<Permit>map(reason ->
                                new Permit.Refused(Stream.concat(Stream.of(reason), granted.findings().stream())
                                        .toList()))
                        .orElse(granted)
                : answer;
    }

    /** A step that has no order of valves, or no end, is not begun. */
    private Optional<Finding> withoutEnd() {
        return model.plan()
                .filter(each -> hose() == HoseState.READY)
                .filter(HookUpPlan.NoPlan.class::isInstance)
                .map(each -> ((HookUpPlan.NoPlan) each).reason())
                .map(reason -> Finding.of(
                        Severity.FORBIDS,
                        reason,
                        new Subject(
                                Subject.Kind.HOSE,
                                visit.hookUp().hoses().get(0).port().word())));
    }

    /** What comes from a refillable cylinder is not new because nobody says what it is. */
    private List<Finding> findings(Direction direction, Optional<CheckedCylinder> used) {
        List<Finding> found = new ArrayList<>();
        used.ifPresent(each -> {
            each.findings().stream()
                    .filter(finding -> finding.severity() != Severity.CAUTION)
                    .forEach(found::add);
            boolean disposable = each.cylinder().stamps().refillable().equals(Optional.of(false));
            if (direction == Direction.IN
                    && each.cylinder().role() == Role.SOURCE
                    && each.cylinder().provenance().isEmpty()
                    && !disposable) {
                found.add(notGiven(each.cylinder().path("provenance")));
            }
            // of a source that may be refilled the date was to be read before it was filled
            if (direction == Direction.IN
                    && each.cylinder().role() == Role.SOURCE
                    && each.cylinder().stamps().retestDue().isEmpty()
                    && !disposable) {
                found.add(notGiven(each.cylinder().path("retestDue")));
            }
            boolean recovered =
                    each.cylinder().provenance().filter(Provenance::isUsed).isPresent();
            if (direction == Direction.IN && recovered) {
                owners(each).map(TransferDesk::notGiven).forEach(found::add);
            }
            if (visit.hookUp().hoses().isEmpty()) {
                found.add(notGiven(each.cylinder().path("hoses")));
            }
            if (each.inside().isEmpty()) {
                found.add(notGiven(each.cylinder().path("pressure")));
            }
        });
        return found;
    }

    /** Fields of the owners that are not stated: used refrigerant goes back to its own owner alone. */
    private Stream<String> owners(CheckedCylinder held) {
        return Stream.of(
                        visit.system().owner().isPresent() ? "" : SYSTEM_OWNER,
                        held.cylinder().owner().isPresent()
                                ? ""
                                : held.cylinder().path("owner"))
                .filter(each -> !each.isEmpty());
    }

    private static Finding notGiven(String field) {
        return Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading(field));
    }

    /** Whether the hose hangs at the centre of a manifold. */
    static boolean throughManifold(Visit visit) {
        return visit.hookUp().hoses().stream().anyMatch(each -> each.port() == HosePort.CENTRE);
    }

    static Optional<Reading<Pressure>> portPressure(Visit visit, PointKind kind) {
        return visit.openPorts().stream()
                .filter(point -> point.kind() == kind)
                .map(ConnectionPoint::pressure)
                .findFirst();
    }
}
