package org.satline.program.exercise;

import java.util.List;
import java.util.stream.Collectors;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.transfer.Flow;
import org.satline.transfer.PointKind;
import org.satline.transfer.TransferCode;

/** What a question about a flow calls its points, and what its key says about opening a valve. */
final class FlowWords {
    private FlowWords() {}

    static String name(PointKind kind) {
        return switch (kind) {
            case HIGH_SIDE_LIQUID_PORT -> "high-side liquid port";
            case HIGH_SIDE_VAPOUR_PORT -> "high-side vapour port";
            case LOW_SIDE_PORT -> "low-side port";
            case RECOVERY_CYLINDER_VAPOUR_VALVE -> "recovery cylinder, vapour valve";
            case RECOVERY_CYLINDER_LIQUID_VALVE -> "recovery cylinder, liquid valve";
            case SOURCE_CYLINDER_VAPOUR_VALVE -> "source cylinder, vapour valve";
            case SOURCE_CYLINDER_LIQUID_VALVE -> "source cylinder, liquid valve";
            case VACUUM_PUMP -> "vacuum pump";
            case ATMOSPHERE -> "atmosphere";
        };
    }

    static String wanted(Flow flow, boolean asWanted) {
        if (!(flow instanceof Flow.OneWay way)) {
            return "no: it may flow either way; keep the valve closed until the pressures differ";
        }
        String advice = advice(way);
        if (!asWanted) {
            return "no: it would flow the wrong way" + (advice.isEmpty() ? "" : "; " + advice);
        }
        return "yes, it flows the wanted way" + (advice.isEmpty() ? "" : ", but: " + advice);
    }

    private static String advice(Flow.OneWay way) {
        List<TransferCode> warnings = way.warnings();
        return warnings.stream()
                .map(code -> Finding.of(
                        Severity.CAUTION,
                        code,
                        new Subject(Subject.Kind.PORT, name(way.to().kind()))))
                .map(Bench.WORDS::of)
                .collect(Collectors.joining("; "));
    }
}
