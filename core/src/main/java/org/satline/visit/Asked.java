package org.satline.visit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.CylinderCode;
import org.satline.duty.DutyCode;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.filling.FillingCode;
import org.satline.transfer.TransferCode;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanReason;

/** The fields of a visit file that are to be supplied or changed before the reasons to hold are gone. */
record Asked(Optional<CheckedCylinder> connected, Optional<HookUpPlan> plan) {
    private static final String CYLINDER = "cylinder";
    private static final String HOSES = "hoses";
    /** The field of the cylinder whose other value would take the reason away. */
    private static final Map<FindingCode, String> PARTS = Map.ofEntries(
            Map.entry(TransferCode.HOSE_NOT_PURGED, HOSES),
            Map.entry(TransferCode.HOSE_CANNOT_BE_PURGED, HOSES),
            Map.entry(TransferCode.HOSE_UNKNOWN, HOSES),
            Map.entry(TransferCode.WRONG_PORT, HOSES),
            Map.entry(TransferCode.TRAPPED_LIQUID, HOSES),
            Map.entry(TransferCode.BACKFLOW, "pressure"),
            Map.entry(TransferCode.TOO_CLOSE_TO_CALL, "pressure"),
            Map.entry(TransferCode.WRONG_PHASE, "valve"),
            Map.entry(CylinderCode.INVERTED, "inverted"),
            Map.entry(CylinderCode.BELOW_TARE, "scaleReading"),
            Map.entry(CylinderCode.WEIGHT_MISFITS_PRESSURE, "scaleReading"),
            Map.entry(CylinderCode.NOT_AT_REST, "atRest"),
            Map.entry(CylinderCode.WARMER_THAN_WARMEST, "warmest"),
            Map.entry(FillingCode.TARE_MISFITS_CAPACITY, "waterCapacity"),
            Map.entry(FillingCode.MARK_IMPOSSIBLE, "specification"));

    List<String> of(List<Finding> findings) {
        List<Finding> standing = findings.stream()
                .filter(each -> each.severity() != Severity.CAUTION)
                .toList();
        List<String> asked = standing.stream().flatMap(this::of).distinct().toList();
        // what the law forbids, whatever is read again, needs another cylinder
        boolean unlawful = standing.stream().anyMatch(each -> each.code() instanceof DutyCode);
        return asked.isEmpty() && unlawful ? List.of(CYLINDER) : asked;
    }

    private Stream<String> of(Finding finding) {
        FindingCode code = finding.code();
        if (code == CommonCode.NOT_GIVEN) {
            return Stream.of(finding.subject().name());
        } else if ((code == TransferCode.HOSE_CANNOT_BE_PURGED || code instanceof PlanReason)
                && plan.orElse(null) instanceof HookUpPlan.NoPlan none) {
            return Stream.concat(Stream.of(part(HOSES)), none.parts().stream().map(this::of));
        }
        if (code == TransferCode.OTHER_CYLINDER_NEEDED && plan.orElse(null) instanceof HookUpPlan.Planned) {
            // it is on site: the plan takes the hose there
            return Stream.of("connected");
        }
        String part = PARTS.get(code);
        if (part != null) {
            return Stream.of(part(part));
        }
        boolean ofCylinder = finding.subject().kind() == Subject.Kind.CYLINDER || code instanceof TransferCode;
        return ofCylinder ? Stream.of(field(finding)) : Stream.empty();
    }

    /** Another cylinder, or what is stamped on it, read again. */
    private String field(Finding finding) {
        return connected
                .map(each -> each.cylinder())
                .filter(each -> each.name().equals(finding.subject().name()))
                .map(each -> each.field())
                .orElse(CYLINDER);
    }

    private String part(String name) {
        return connected.map(each -> each.cylinder().path(name)).orElse(CYLINDER);
    }

    private String of(PlanPart part) {
        return switch (part) {
            case VACUUM_PUMP -> "vacuumPump";
            case RECOVERY_MACHINE -> "recoveryMachine";
            case MANIFOLD -> "manifold";
            case CORE_TOOL -> "ports";
            case SERVICE_PORT -> "openPorts";
            case SHUT_OFF_AT_PORT, OTHER_HOSE, REGULATOR -> part(HOSES);
            case COLD_CYLINDER, OTHER_CYLINDER -> part("name");
            case WARM_SOURCE -> part("temperature");
            case RUNNING_SYSTEM -> "conditions.running";
        };
    }
}
