package org.satline.program.exercise;

import java.util.List;
import java.util.stream.Collectors;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowWarning;

/** What the key says about opening a valve. */
final class FlowWords {
    private FlowWords() {}

    static String wanted(Flow flow, boolean asWanted) {
        if (!(flow instanceof Flow.OneWay way)) {
            return "no: reckon with flow either way and keep the valve closed until the pressures differ";
        }
        List<FlowWarning> warnings = way.warnings();
        String advice = warnings.stream().map(FlowWarning::advice).collect(Collectors.joining("; "));
        if (!asWanted) {
            return "no: it would flow the wrong way" + (advice.isEmpty() ? "" : "; " + advice);
        }
        return "yes, it flows the wanted way" + (advice.isEmpty() ? "" : ", but: " + advice);
    }
}
