package org.satline.program;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The two files of a command that answers rows. */
final class BulkFiles {
    @Parameters(paramLabel = "IN.csv", description = "The rows to answer.")
    private Path in = Path.of("");

    @Option(
            names = "--out",
            required = true,
            paramLabel = "OUT.csv",
            description = "Where the answers go; replaced if it exists.")
    private Path out = Path.of("");

    Path in() {
        return in;
    }

    Path out() {
        return out;
    }
}
