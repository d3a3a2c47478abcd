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

    static String name(Readout readout, PointKind kind) {
        return switch (kind) {
            case HIGH_SIDE_LIQUID_PORT -> readout.say("exercise.high-side-liquid-port");
            case HIGH_SIDE_VAPOUR_PORT -> readout.say("exercise.high-side-vapour-port");
            case LOW_SIDE_PORT -> readout.say("exercise.low-side-port");
            case RECOVERY_CYLINDER_VAPOUR_VALVE -> readout.say("exercise.recovery-cylinder-vapour-valve");
            case RECOVERY_CYLINDER_LIQUID_VALVE -> readout.say("exercise.recovery-cylinder-liquid-valve");
            case SOURCE_CYLINDER_VAPOUR_VALVE -> readout.say("exercise.source-cylinder-vapour-valve");
            case SOURCE_CYLINDER_LIQUID_VALVE -> readout.say("exercise.source-cylinder-liquid-valve");
            case VACUUM_PUMP -> readout.say("exercise.vacuum-pump");
            case ATMOSPHERE -> readout.say("exercise.atmosphere");
        };
    }

    static String wanted(Readout readout, Flow flow, boolean asWanted) {
        if (!(flow instanceof Flow.OneWay way)) {
            return readout.say("exercise.no-it-may-flow-either");
        }
        String advice = advice(readout, way);
        if (!asWanted) {
            return readout.say("exercise.no-it-would-flow-the", (advice.isEmpty() ? "" : "; " + advice));
        }
        return readout.say(
                "exercise.yes-it-flows-the-wanted", (advice.isEmpty() ? "" : readout.say("exercise.but", advice)));
    }

    private static String advice(Readout readout, Flow.OneWay way) {
        List<TransferCode> warnings = way.warnings();
        return warnings.stream()
                .map(code -> Finding.of(
                        Severity.CAUTION,
                        code,
                        new Subject(Subject.Kind.PORT, name(readout, way.to().kind()))))
                .map(readout.words()::of)
                .collect(Collectors.joining("; "));
    }
}
