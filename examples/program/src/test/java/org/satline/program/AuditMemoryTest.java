package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * An audit keeps no rows: a process with a heap of 256 MB takes any number of them. The usual run takes 20 000 in 64 MB,
 * {@code -Dsatline.audit.rows=1000000} the million in 256 MB.
 */
class AuditMemoryTest {
    private static final int ROWS = Integer.getInteger("satline.audit.rows", 20_000);
    private static final String HEAP = ROWS > 20_000 ? "-Xmx256m" : "-Xmx64m";

    @TempDir
    private Path folder = Path.of("");

    /** Dew pressures in kPa, every tenth of R-32 a gauge pressure (101.325 kPa, ISO 2533). */
    private Path file() throws IOException {
        Path file = folder.resolve("rows.csv");
        Random random = new Random(3);
        List<SaturationCurve> curves = List.of(
                SaturationCurves.of(Catalogue.standard().find("R-134a")),
                SaturationCurves.of(Catalogue.standard().find("R-32")));
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("id,refrigerant,quantity,temperature_K,pressure_Pa,answer,unit\n");
            for (int i = 0; i < ROWS; i++) {
                SaturationCurve curve = curves.get(i % 2);
                double kelvins = 240 + Math.rint(800 * random.nextDouble()) / 10;
                double kpa = curve.dewPressurePa(kelvins) / 1000 - (i % 20 == 1 ? 101.325 : 0);
                out.write(String.format(
                        Locale.ROOT,
                        "r%d,%s,dew_pressure,%.1f,,%.2f,kPa%n",
                        i,
                        curve.refrigerant().designation(),
                        kelvins,
                        kpa));
            }
        }
        return file;
    }

    @Test
    void aSmallHeapIsEnough() throws IOException, InterruptedException {
        Path out = folder.resolve("page.txt");
        Path json = folder.resolve("out.json");
        Process audit = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        HEAP,
                        "-cp",
                        System.getProperty("java.class.path").replace("\n", File.pathSeparator),
                        "org.satline.program.Main",
                        "audit",
                        file().toString(),
                        "--json",
                        json.toString())
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        assertThat(audit.waitFor()).isEqualTo(ExitStatus.ANSWERS_OUTSIDE);
        String page = Files.readString(out).replaceAll("\\s+", " ");
        assertThat(page)
                .contains(ROWS + ": " + (ROWS - ROWS / 20) + " within tolerance, " + ROWS / 20 + " outside")
                .contains("explains " + ROWS / 20 + " of " + ROWS / 20 + " rows outside");
        try (var lines = Files.lines(json)) {
            assertThat(lines.filter(line -> line.contains("\"outcome\"")).count())
                    .isEqualTo(ROWS);
        }
    }
}
