package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Constant differences and ratios that no named mistake makes: planted ones are named, noise is not taken for one. */
class AuditHintsTest {
    private static final String HEADER = "id,refrigerant,quantity,temperature_K,pressure_Pa,answer,unit\n";
    private static final SaturationCurve R134A =
            SaturationCurves.of(Catalogue.standard().find("R-134a"));
    private static final SaturationCurve R22 =
            SaturationCurves.of(Catalogue.standard().find("R-22"));
    private static final int ROWS = 12;

    @TempDir
    private Path folder = Path.of("");

    private String page(String rows) throws IOException {
        return ProgramRun.of("audit", Files.writeString(folder.resolve("in.csv"), HEADER + rows))
                .out()
                .replaceAll("\\s+", " ");
    }

    /** Dew pressures in kPa from 240 K to 350 K, altered. */
    private static String pressures(SaturationCurve curve, DoubleUnaryOperator alteredKpa, int decimals) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < ROWS; i++) {
            double t = 240 + 10.0 * i;
            double answer = alteredKpa.applyAsDouble(curve.dewPressurePa(t) / 1000);
            rows.append(String.format(
                    Locale.ROOT,
                    "p%d,%s,dew_pressure,%.1f,,%." + decimals + "f,kPa%n",
                    i,
                    curve.refrigerant().designation(),
                    t,
                    answer));
        }
        return rows.toString();
    }

    /** Dew temperatures in degC from 1 to 23 bar, altered. */
    private static String temperatures(DoubleUnaryOperator alteredCelsius) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < ROWS; i++) {
            double pa = 1e5 * (1 + 2 * i);
            double answer = alteredCelsius.applyAsDouble(R134A.dewTemperatureK(pa) - 273.15);
            rows.append(String.format(Locale.ROOT, "t%d,R-134a,dew_temperature,,%.0f,%.1f,degC%n", i, pa, answer));
        }
        return rows.toString();
    }

    @ParameterizedTest
    @CsvSource({"7, \\+(7\\.0[0-5]|6\\.9[5-9])", "-12, -(12\\.0|11\\.9|12\\.1)", "40, \\+40\\.0"})
    void anOffsetOfPressureIsNamed(double offsetKpa, String figure) throws IOException {
        // the answers are printed to 0.1 kPa, so that the middle of the differences lies within 0.05 kPa of the offset
        assertThat(page(pressures(R134A, p -> p + offsetKpa, 1)))
                .containsPattern("dew_pressure: constant difference " + figure
                        + " kPa of answer less ours over all 12 rows compared; no mistake that is tried makes it")
                .doesNotContain("constant ratio");
    }

    @ParameterizedTest
    @CsvSource({"1.2, \\+1\\.(1[5-9]|2[0-5])", "-0.7, -0\\.(6[5-9]|7[0-4])"})
    void anOffsetOfTemperatureIsNamed(double offsetK, String figure) throws IOException {
        assertThat(page(temperatures(t -> t + offsetK)))
                .containsPattern("dew_temperature: constant difference " + figure);
    }

    /** Two percent of the offset either way: that of another equation, not of chance. */
    @Test
    void anOffsetUnderALittleNoiseIsNamed() throws IOException {
        Random noise = new Random(5);
        assertThat(page(pressures(R134A, p -> p + 20 + 0.8 * (noise.nextDouble() - 0.5), 2)))
                .containsPattern("constant difference \\+(19\\.9|20\\.[01]) kPa");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.05, 0.1, 0.3})
    void noiseIsNoConstant(double relative) throws IOException {
        Random noise = new Random(2026);
        String rows = pressures(R134A, p -> p * (1 + relative * noise.nextGaussian()), 1)
                + pressures(R22, p -> p * (1 + relative * noise.nextGaussian()), 1)
                + temperatures(t -> t + 100 * relative * noise.nextGaussian());
        assertThat(page(rows)).doesNotContain("constant");
    }

    @Test
    void neitherAreRoundingNorCuttingOffNorCoarseTables() throws IOException {
        assertThat(page(pressures(R134A, p -> p, 0) + pressures(R22, Math::floor, 0)))
                .doesNotContain("constant");
        assertThat(page(pressures(R134A, p -> 10 * Math.floor(p / 10), 1))).doesNotContain("constant");
        assertThat(page(temperatures(Math::floor))).doesNotContain("constant");
        // a straight line between rows of a table lies above the curve: most in the middle, nothing at the rows
        assertThat(page(pressures(R134A, p -> p * (1 + 0.0015 * Math.abs(Math.sin(p))), 3)))
                .doesNotContain("constant");
    }

    @Test
    void aRatioStaysARatio() throws IOException {
        assertThat(page(pressures(R134A, p -> 1.03 * p, 2)))
                .contains("constant ratio 1.03")
                .doesNotContain("constant difference");
    }

    @Test
    void aNamedCauseNeedsNoHint() throws IOException {
        assertThat(page(pressures(R134A, p -> p - 101.325, 2)))
                .contains("gauge and absolute pressure mixed up")
                .doesNotContain("constant");
    }

    @Test
    void theSameQuestionThriceIsNoPattern() throws IOException {
        String row = ",R-134a,dew_pressure,300.0,,950.0,kPa\n";
        assertThat(page("a" + row + "b" + row + "c" + row)).doesNotContain("constant difference");
    }
}
