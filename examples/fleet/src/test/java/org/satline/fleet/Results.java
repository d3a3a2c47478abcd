package org.satline.fleet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** All lines of a run, sorted: equal where nothing was lost, doubled or different. */
record Results(List<String> alarms, List<String> days, List<String> rejected) {
    static Results of(Path out) throws IOException {
        return new Results(
                OutputFiles.lines(out, "alarms"), OutputFiles.lines(out, "days"), OutputFiles.lines(out, "rejected"));
    }
}
