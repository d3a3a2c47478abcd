package org.satline.program;

import org.satline.charge.margin.Criterion;
import picocli.CommandLine.Command;

/** Answers how large the subcooling of one pressure and one line temperature is. */
@Command(
        name = "subcooling",
        description =
                "How far the liquid line stands below the bubble point. Example: subcooling R-410A 388psig 98degF",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class SubcoolingCommand extends MarginCommand {
    /** Made by the command line library. */
    SubcoolingCommand() {
        super(Criterion.SUBCOOLING);
    }
}
