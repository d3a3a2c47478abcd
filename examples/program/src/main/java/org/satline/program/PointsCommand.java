package org.satline.program;

import java.util.Locale;
import java.util.concurrent.Callable;
import org.satline.program.points.PointAnswers;
import org.satline.saturation.Engine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Computes properties in bulk, for people who check other calculators. */
@Command(
        name = "points",
        description = {
            "Computes properties in bulk.",
            "Columns in, in any order: id,refrigerant,quantity,temperature_K,pressure_Pa (a cell may be empty).",
            "A file may add: density_kg_m3,specific_volume_m3_kg,enthalpy_J_kg,entropy_J_kg_K,",
            "internal_energy_J_kg,quality,phase,component.",
            "Columns out: id,refrigerant,quantity,value,unit,note. SI units, 15 significant digits.",
            "A row that cannot be computed has an empty value and a note that says why."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footerHeading = "%nQuantities:%n",
        footer = {
            "  from temperature_K: bubble_pressure dew_pressure",
            "  from pressure_Pa: bubble_temperature dew_temperature glide",
            "  from either of them: bubble_liquid_... and dew_vapour_... with density, enthalpy, entropy,",
            "    isobaric_heat_capacity, speed_of_sound",
            "  from temperature_K: bubble_pressure_slope dew_pressure_slope; from pressure_Pa: latent_heat",
            "  a state, liquid and vapour together too: temperature pressure density enthalpy entropy",
            "    internal_energy gibbs_energy quality phase",
            "  one phase: isobaric_heat_capacity isochoric_heat_capacity speed_of_sound isentropic_exponent",
            "    joule_thomson_coefficient compressibility_factor isothermal_compressibility volume_expansivity",
            "    fugacity_coefficient (of a blend: of the column component)",
            "  a state is named by temperature_K and pressure_Pa, or by pressure_Pa with enthalpy, entropy,",
            "    density or quality, temperature_K with one of these, enthalpy and entropy, or internal energy",
            "    and specific volume; where several states share a pair, the column phase says which:",
            "    liquid, vapour, liquid_and_vapour or supercritical",
            "Enthalpy and entropy: IIR reference (200 kJ/kg and 1 kJ/(kg K) for saturated liquid at 0 degC), or the one the note names."
        })
final class PointsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BulkFiles files = new BulkFiles();

    @Option(
            names = "--engine",
            paramLabel = "ENGINE",
            converter = EngineName.class,
            description = "equation (default) or table: where saturation figures come from.")
    private Engine engine = Engine.EQUATION;

    /** Made by the command line library. */
    PointsCommand() {}

    @Override
    public Integer call() {
        PointAnswers answers = new PointAnswers(engine);
        return BulkRun.of(
                spec,
                files.in(),
                files.out(),
                PointAnswers.INPUT,
                PointAnswers.OPTIONAL,
                PointAnswers.OUTPUT,
                answers::answer);
    }

    /** Reads the name of an engine. */
    static final class EngineName implements ITypeConverter<Engine> {
        /** Made by the command line library. */
        EngineName() {}

        @Override
        public Engine convert(String value) {
            for (Engine engine : Engine.values()) {
                if (engine.name().toLowerCase(Locale.ROOT).equals(value)) {
                    return engine;
                }
            }
            throw new TypeConversionException("\"" + value + "\" is not known; allowed: equation, table");
        }
    }
}
