package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.equation.MixtureEvidence;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** A blend that the mixture model is known to miss says so in every kind of result; one that it meets says nothing. */
class KnownDifferenceWarningTest {
    private static String warning(UnitSystem first) {
        return Wording.of(Language.ENGLISH, first)
                .of(MixtureEvidence.of(Catalogue.standard().find("R-401A"))
                        .warnings()
                        .get(0));
    }

    @TempDir
    private Path folder;

    private String bulk(String command, String header, String row) throws IOException {
        Path in = folder.resolve("in.csv");
        Path out = folder.resolve("out.csv");
        Files.writeString(in, header + "\n" + row + "\n");
        ProgramRun.of(command, in.toString(), "--out", out.toString());
        return Files.readString(out);
    }

    @Test
    void pointsAndTablesWarn() throws IOException {
        String header = "id,refrigerant,quantity,temperature_K,pressure_Pa";
        assertThat(bulk("points", header, "a,R-401A,bubble_pressure,280,")).contains(warning(UnitSystem.SI));
        assertThat(bulk("points", header, "a,R-410A,bubble_pressure,280,")).doesNotContain("published");
        String page = ProgramRun.of("table", "R-401A").out();
        assertThat(page)
                .contains("warning: mixture model")
                .contains(warning(UnitSystem.SI))
                .contains(", data 20");
    }

    @Test
    void verdictsWarn() throws IOException {
        String header =
                "id,refrigerant,metering,suction_pressure_Pa,suction_line_K,liquid_pressure_Pa,liquid_line_K,return_wet_bulb_K,condenser_air_K,"
                        + "target_superheat_K,target_subcooling_K,pressure_standard_uncertainty_Pa,temperature_standard_uncertainty_K";
        assertThat(bulk("verdicts", header, "a,R-401A,expansion-valve,300000,284.8,1000000,303.1,,,,5.56,2000,0.3"))
                .contains(warning(UnitSystem.SI));
    }

    @Test
    void aVisitWarnsAndNamesItsData() throws IOException {
        String visit = Files.readString(Path.of("samples", "boathouse.json"))
                .replace("R-410A", "R-401A")
                .replace("118 psig", "45 psig")
                .replace("388 psig", "175 psig");
        Path file = Files.writeString(folder.resolve("visit.json"), visit);
        assertThat(page("visit", file)).contains("warning mixture model").contains(warning(UnitSystem.US));
        assertThat(page("visit", file, "--full"))
                .contains(warning(UnitSystem.US))
                .contains("data 20");
    }

    private static String page(Object... arguments) throws IOException {
        ProgramRun run = ProgramRun.of(arguments);
        assertThat(run.err()).isEmpty();
        return run.out().replaceAll("\\s+", " ");
    }
}
