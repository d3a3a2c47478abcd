package org.satline.visit;

import java.util.List;
import java.util.Optional;
import org.satline.cylinder.CheckedCylinder;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.transfer.HookUpPlan;
import org.satline.transfer.PlanPart;
import org.satline.transfer.TransferCode;

/** The fields of a visit file that are to be supplied or changed before the reasons to hold are gone. */
record Asked(Optional<CheckedCylinder> connected, Optional<HookUpPlan> plan) {
    private static final String CYLINDER = "cylinder";

    List<String> of(List<Finding> findings) {
        return findings.stream()
                .filter(each -> each.severity() != Severity.CAUTION)
                .flatMap(each -> of(each).stream())
                .distinct()
                .toList();
    }

    private Optional<String> of(Finding finding) {
        FindingCode code = finding.code();
        if (code == CommonCode.NOT_GIVEN) {
            return Optional.of(finding.subject().name());
        } else if (code == TransferCode.HOSE_NOT_PURGED) {
            return Optional.empty(); // the plan says what to do
        } else if (code == TransferCode.HOSE_CANNOT_BE_PURGED) {
            return Optional.of(plan.orElse(null) instanceof HookUpPlan.NoPlan none ? of(none.part()) : part("hoses"));
        } else if (code == TransferCode.HOSE_UNKNOWN
                || code == TransferCode.WRONG_PORT
                || code == TransferCode.TRAPPED_LIQUID) {
            return Optional.of(part("hoses"));
        } else if (code == TransferCode.BACKFLOW || code == TransferCode.TOO_CLOSE_TO_CALL) {
            return Optional.of(part("pressure"));
        } else if (code == TransferCode.WRONG_PHASE) {
            return Optional.of(part("valve"));
        }
        boolean ofCylinder = finding.subject().kind() == Subject.Kind.CYLINDER || code instanceof TransferCode;
        return ofCylinder ? Optional.of(field(finding)) : Optional.empty();
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
            case SHUT_OFF_AT_PORT, OTHER_HOSE, REGULATOR -> part("hoses");
            case COLD_CYLINDER, OTHER_CYLINDER -> part("name");
            case WARM_SOURCE -> part("temperature");
            case RUNNING_SYSTEM -> "conditions.running";
        };
    }
}
