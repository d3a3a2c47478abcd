package org.satline.transfer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.duty.TransferRules;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.transfer.hookup.Medium;

/**
 * The one place that answers whether refrigerant may go from here to there: by the cylinder, the law, the pressures, the phase and the
 * state of the hose. What is not known refuses. Immutable, thread-safe.
 */
public final class PermitOffice {
    private static final String LAW = "40 CFR 82.154(d); common practice";

    private final TransferRules rules;

    private PermitOffice(TransferRules rules) {
        this.rules = rules;
    }

    /**
     * The office with the rules that ship with the library.
     *
     * @return the office
     */
    public static PermitOffice standard() {
        return new PermitOffice(TransferRules.standard());
    }

    /**
     * Asks for a permit.
     *
     * @param request what is to go where
     * @return granted with the flow, or refused with every reason
     */
    public Permit ask(PermitRequest request) {
        Objects.requireNonNull(request, "request");
        if (request.cylinder().isEmpty()) {
            return new Permit.Refused(withoutPressure(request));
        }
        ConnectionPoint cylinder = request.cylinder().get();
        boolean receives = cylinder.kind().owner() == PointKind.Owner.RECOVERY_CYLINDER;
        List<Finding> found = new ArrayList<>(request.cylinderFindings());
        if (receives != (request.direction() == Direction.OUT)) {
            found.add(of(request, Severity.MUST_BE_SUPPLIED, TransferCode.OTHER_CYLINDER_NEEDED)
                    .citing(LAW));
            return new Permit.Refused(sorted(found));
        }
        request.held()
                .ifPresent(held -> found.addAll(
                        request.direction() == Direction.OUT
                                ? rules.check(request.system(), held)
                                : rules.check(held, request.system())));
        if (request.direction() == Direction.IN
                && request.glides()
                && cylinder.kind().leaving() != Medium.LIQUID) {
            found.add(of(request, Severity.MUST_BE_SUPPLIED, TransferCode.WRONG_PHASE));
        }
        hose(request).ifPresent(found::add);
        List<Flow> flows = FlowCheck.ports(candidates(request), cylinder);
        Optional<Flow.OneWay> flow = wanted(request, flows);
        if (flow.isEmpty() && request.machine() && request.direction() == Direction.OUT) {
            flow = candidates(request).stream().findFirst().map(port -> FlowCheck.pumped(port, cylinder));
            flow.ifPresent(way -> found.add(of(
                    request,
                    Severity.CAUTION,
                    TransferCode.BY_MACHINE,
                    Figure.of("cylinderPressure", cylinder.pressure().value()))));
        }
        if (flow.isEmpty()) {
            found.add(againstFlow(request, flows, cylinder));
        }
        flow.ifPresent(way ->
                way.warnings().forEach(code -> found.add(Finding.of(Severity.CAUTION, code, subject(request)))));
        boolean barred = flow.isEmpty() || found.stream().anyMatch(each -> each.severity() != Severity.CAUTION);
        return barred ? new Permit.Refused(sorted(found)) : new Permit.Granted(flow.orElseThrow(), sorted(found));
    }

    /** No cylinder at all, or one of which no pressure is known. */
    private static List<Finding> withoutPressure(PermitRequest request) {
        List<Finding> found = new ArrayList<>(request.cylinderFindings());
        if (found.stream().allMatch(each -> each.severity() == Severity.CAUTION)) {
            found.add(Finding.of(
                    Severity.MUST_BE_SUPPLIED,
                    TransferCode.NO_CYLINDER,
                    new Subject(Subject.Kind.CYLINDER, request.direction().word()),
                    Figure.of("refrigerant", refrigerant(request))));
        }
        return sorted(found);
    }

    private static List<Finding> sorted(List<Finding> found) {
        return found.stream()
                .distinct()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** Refrigerant enters a running system through the suction side only. */
    private static List<ConnectionPoint> candidates(PermitRequest request) {
        return request.ports().stream()
                .filter(port -> request.direction() == Direction.OUT || port.kind() == PointKind.LOW_SIDE_PORT)
                .filter(port ->
                        request.hosePort().isEmpty() || request.hosePort().get() == port.kind())
                .sorted(Comparator.comparing(ConnectionPoint::kind))
                .toList();
    }

    /**
     * A fast flow into an evacuated cylinder is the way it should go, slowly; liquid into suction is metered; every other warning bars the
     * port.
     */
    private static Optional<Flow.OneWay> wanted(PermitRequest request, List<Flow> flows) {
        return flows.stream()
                .filter(Flow.OneWay.class::isInstance)
                .map(Flow.OneWay.class::cast)
                .filter(way -> way.from().kind().isCylinder() == (request.direction() == Direction.IN))
                .filter(way -> way.warnings().stream()
                        .allMatch(code -> code == TransferCode.FAST_INTO_VACUUM
                                || (code == TransferCode.LIQUID_TO_SUCTION && request.direction() == Direction.IN)))
                .findFirst();
    }

    private static Finding againstFlow(PermitRequest request, List<Flow> flows, ConnectionPoint cylinder) {
        boolean elsewhere = request.hosePort().isPresent()
                && wanted(request, FlowCheck.ports(withoutHose(request), cylinder))
                        .isPresent();
        if (elsewhere || (flows.isEmpty() && request.hosePort().isPresent())) {
            return of(
                    request,
                    Severity.FORBIDS,
                    TransferCode.WRONG_PORT,
                    Figure.of("port", request.hosePort().map(PointKind::word).orElse("")));
        }
        for (Flow flow : flows) {
            if (flow instanceof Flow.TooCloseToCall close) {
                return of(
                        request,
                        Severity.FORBIDS,
                        TransferCode.TOO_CLOSE_TO_CALL,
                        Figure.of("cylinderPressure", cylinder.pressure().value()),
                        Figure.of("difference", close.difference()),
                        Figure.of("doubt", close.expandedUncertainty()));
            }
        }
        return of(
                        request,
                        Severity.FORBIDS,
                        TransferCode.BACKFLOW,
                        Figure.of("cylinderPressure", cylinder.pressure().value()))
                .citing(LAW);
    }

    private static List<ConnectionPoint> withoutHose(PermitRequest request) {
        return request.ports().stream()
                .filter(port -> request.direction() == Direction.OUT || port.kind() == PointKind.LOW_SIDE_PORT)
                .toList();
    }

    private static Optional<Finding> hose(PermitRequest request) {
        TransferCode code = switch (request.hose()) {
            case READY -> TransferCode.HOSE_UNKNOWN;
            case NOT_PURGED -> TransferCode.HOSE_NOT_PURGED;
            case CANNOT_BE_PURGED -> TransferCode.HOSE_CANNOT_BE_PURGED;
            case UNKNOWN -> TransferCode.HOSE_UNKNOWN;
        };
        return request.hose() == HoseState.READY
                ? Optional.empty()
                : Optional.of(Finding.of(
                        Severity.MUST_BE_SUPPLIED,
                        code,
                        new Subject(
                                Subject.Kind.HOSE,
                                request.hosePort().map(PointKind::word).orElse(""))));
    }

    private static Subject subject(PermitRequest request) {
        return Subject.cylinder(request.cylinderName());
    }

    private static Finding of(PermitRequest request, Severity severity, TransferCode code, Figure... figures) {
        return Finding.of(severity, code, subject(request), figures);
    }

    private static String refrigerant(PermitRequest request) {
        return request.system().refrigerant().map(each -> each.designation()).orElse("");
    }
}
