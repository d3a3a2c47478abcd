package org.satline.program;

import org.satline.charge.margin.Criterion;
import picocli.CommandLine.Command;

/** Answers how large the superheat of one pressure and one line temperature is. */
@Command(
        name = "superheat",
        description = "How far the suction line stands above the dew point. Example: superheat R-410A 118psig 53degF",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class SuperheatCommand extends MarginCommand {
    /** Made by the command line library. */
    SuperheatCommand() {
        super(Criterion.SUPERHEAT);
    }
}
