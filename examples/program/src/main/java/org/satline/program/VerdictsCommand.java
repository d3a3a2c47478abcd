package org.satline.program;

import java.util.concurrent.Callable;
import org.satline.program.verdicts.VerdictRows;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Judges charges in bulk. */
@Command(
        name = "verdicts",
        description = {
            "Judges charges in bulk.",
            "Columns in, in any order (a cell may be empty): id,refrigerant,metering,suction_pressure_Pa,suction_line_K,",
            "  liquid_pressure_Pa,liquid_line_K,return_wet_bulb_K,condenser_air_K,target_superheat_K,target_subcooling_K,",
            "  pressure_standard_uncertainty_Pa,temperature_standard_uncertainty_K",
            "Optional columns: tolerance_K,return_dry_bulb_K,supply_dry_bulb_K,discharge_line_K,outdoor_minimum_met (true, false).",
            "Pressures are absolute; metering is expansion-valve or fixed-orifice.",
            "Columns out: id,superheat_K,subcooling_K,judged_by,target_K,deviation_K,standard_uncertainty_K,probability_low,",
            "  probability_on_target,probability_high,level,note",
            "Levels: low, on-target, high, undecided, not-charge (another fault explains it better), refused (the note says why)."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "A verdict supports licensed practice and does not replace it."})
final class VerdictsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BulkFiles files = new BulkFiles();

    /** Made by the command line library. */
    VerdictsCommand() {}

    @Override
    public Integer call() {
        VerdictRows rows = new VerdictRows();
        return BulkRun.of(
                spec,
                files.in(),
                files.out(),
                VerdictRows.INPUT,
                VerdictRows.OPTIONAL,
                VerdictRows.OUTPUT,
                rows::answer);
    }
}
