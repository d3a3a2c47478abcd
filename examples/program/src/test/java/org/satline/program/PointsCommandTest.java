package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.program.file.CsvRow;
import org.satline.program.file.CsvRows;
import org.satline.program.points.PointAnswers;
import org.satline.program.points.PointQuantity;
import org.satline.refrigerant.Catalogue;

class PointsCommandTest {
    private static final String HEADER = "id,refrigerant,quantity,temperature_K,pressure_Pa\n";
    private static final List<String> REFRIGERANTS = List.of(
            "R-12",
            "R-22",
            "R-32",
            "R-123",
            "R-125",
            "R-134a",
            "R-152a",
            "R-290",
            "R-600a",
            "R-717",
            "R-744",
            "R-1234yf",
            "R-1234ze(E)",
            "R-404A",
            "R-407C",
            "R-410A",
            "R-448A",
            "R-454B",
            "R-507A",
            "R-513A");

    @TempDir
    Path folder;

    @Test
    void randomRowsOverTheWholeDomainAreAllComputed() throws IOException {
        Random random = new Random(20260714);
        StringBuilder rows = new StringBuilder(HEADER);
        for (int i = 0; i < 1000; i++) {
            rows.append("row-").append(i).append(',').append(randomRow(random)).append('\n');
        }
        Path out = folder.resolve("out.csv");
        ProgramRun run = ProgramRun.of("points", input(rows.toString()), "--out", out);
        List<CsvRow> answers = answers(out);
        assertThat(answers.stream().filter(row -> row.text("value").isEmpty()).map(CsvRow::cells))
                .isEmpty();
        assertThat(answers)
                .extracting(row -> row.raw("id"))
                .hasSize(1000)
                .startsWith("row-0", "row-1")
                .endsWith("row-999");
        assertThat(answers).allMatch(row -> !row.raw("unit").isEmpty());
        assertThat(run.status()).isZero();
    }

    /**
     * Uniform over the range of the line; one-phase states at 1 to 99 % of the dew pressure, surely vapour, or above the bubble pressure.
     */
    private static String randomRow(Random random) {
        FluidModel model =
                FluidModel.of(Catalogue.standard().find(REFRIGERANTS.get(random.nextInt(REFRIGERANTS.size()))));
        // a fugacity coefficient wants a component named, and nothing has a quality above the two-phase region: they
        // are asked for in PointStatesTest
        List<PointQuantity> all = Stream.of(PointQuantity.values())
                .filter(q -> q != PointQuantity.FUGACITY_COEFFICIENT && q != PointQuantity.QUALITY)
                .toList();
        PointQuantity quantity = all.get(random.nextInt(all.size()));
        String name = model.refrigerant().designation() + "," + quantity.label() + ",";
        Range temperatures = new Range(model.minTemperatureK(), model.maxTemperatureK());
        boolean phaseOnLine =
                quantity.label().contains("_liquid_") || quantity.label().contains("_vapour_");
        boolean temperatureWanted = quantity.label().endsWith("_temperature")
                || quantity == PointQuantity.GLIDE
                || quantity == PointQuantity.LATENT_HEAT;
        boolean fromPressure = temperatureWanted || (phaseOnLine && random.nextBoolean());
        if (fromPressure) {
            Range bubble = model.bubblePressureRange();
            Range dew = model.dewPressureRange();
            Range both = new Range(Math.max(bubble.low(), dew.low()), Math.min(bubble.high(), dew.high()));
            return name + "," + uniform(random, both);
        }
        double temperature = uniform(random, temperatures);
        if (phaseOnLine || quantity.label().contains("_pressure")) {
            return name + temperature + ",";
        }
        double pressure = random.nextBoolean()
                ? model.dewAtTemperature(temperature).pressurePa() * (0.01 + 0.98 * random.nextDouble())
                : model.bubbleAtTemperature(temperature).pressurePa() * (1.01 + random.nextDouble());
        return name + temperature + "," + pressure;
    }

    private static double uniform(Random random, Range range) {
        return range.low() + random.nextDouble() * (range.high() - range.low());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        R-134a,bubble_pressure,300,100000       | ambiguous
        R-134a,dew_vapour_density,300,100000    | ambiguous
        R-134a,glide,300,100000                 | ambiguous
        R-134a,bubble_pressure,,                | fill it in
        R-134a,bubble_pressure,,100000          | temperature_K
        R-134a,dew_temperature,300,             | pressure_Pa
        R-134a,bubble_liquid_density,,          | needs temperature_K or pressure_Pa
        R-134a,density,300,                     | fill in both
        R-134a,density,,                        | fill in both
        R-134a,weight,300,                      | quantity "weight" is not known; allowed: bubble_pressure
        R-134a,,300,                            | quantity is empty
        ,bubble_pressure,300,                   | refrigerant is empty
        R-9999,bubble_pressure,300,             | R-9999
        R-134a,bubble_pressure,NaN,             | "NaN" is not a finite decimal number
        R-134a,bubble_pressure,Infinity,        | is not a finite decimal number
        R-134a,bubble_pressure,1e999,           | is not a finite decimal number
        R-134a,bubble_pressure,80 degF,         | is not a finite decimal number
        R-134a,bubble_pressure,-5,              | outside [
        R-134a,bubble_pressure,0,               | outside [
        R-134a,bubble_pressure,400,             | outside [
        R-134a,dew_temperature,,-100000         | outside [
        R-134a,dew_temperature,,0               | outside [
        R-134a,dew_temperature,,1e9             | outside [
        R-134a,density,300,-1                   | outside [
        R-134a,density,5000,100000              | outside [
        R-410A,speed_of_sound,300,1738000       | mixture of liquid and vapour
        R-134a,bubble_pressure,300              | line 2 has 4 cells
        R-134a,bubble_pressure,300,,,           | line 2 has 7 cells
        """)
    void aHostileRowIsRefusedWithItsOwnNoteAndTheOthersGoOn(String row, String part) throws IOException {
        Path out = folder.resolve("out.csv");
        ProgramRun run = ProgramRun.of(
                "points", input(HEADER + "bad," + row + "\ngood,R-134a,bubble_pressure,300,\n"), "--out", out);
        List<CsvRow> answers = answers(out);
        assertThat(answers).extracting(each -> each.raw("id")).containsExactly("bad", "good");
        assertThat(answers.get(0).raw("value")).isEmpty();
        assertThat(answers.get(0).raw("note")).contains(part);
        assertThat(answers.get(1).raw("value")).isNotEmpty();
        assertThat(answers.get(1).raw("note")).isEmpty();
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).contains("1 of 2 rows").hasLineCount(1);
    }

    @Test
    void valuesHaveFifteenSignificantDigits() throws IOException {
        CsvRow row = answered("x,R-134a,dew_pressure,253.15,\n");
        assertThat(row.raw("value")).matches("\\d{6}\\.\\d{9}");
        assertThat(row.raw("unit")).isEqualTo("Pa");
        // ASHRAE Handbook Fundamentals 2021 (SI), ch. 2, example 2: 132.73 kPa at -20 degC; half of the last printed
        // digit
        assertThat(row.number("value").orElseThrow()).isCloseTo(132.73e3, offset(5.0));
    }

    @Test
    void enthalpyCountsFromTheReferenceOfTheInternationalInstitute() throws IOException {
        CsvRow row = answered("x,R-410A,bubble_liquid_enthalpy,273.15,\n");
        // by definition of the IIR reference state; the shift is one subtraction of numbers near 2E5, so round-off
        // stays below 1E-9 of it
        assertThat(row.number("value").orElseThrow()).isCloseTo(200_000, offset(2e-4));
        assertThat(row.raw("note")).isEmpty();
    }

    @Test
    void anotherReferenceIsNamedInTheNote() throws IOException {
        assertThat(answered("x,R-728,bubble_liquid_enthalpy,80,\n").raw("note"))
                .contains("reference state: h = 0, s = 0 for saturated liquid at 101.325 kPa");
        assertThat(answered("x,R-728,bubble_liquid_density,80,\n").raw("note")).isEmpty();
    }

    @Test
    void idsComeBackAsTheyWere() throws IOException {
        Path out = folder.resolve("out.csv");
        ProgramRun.of(
                "points",
                input(
                        "pressure_Pa,quantity,id,temperature_K,refrigerant\n,dew_pressure,\" a, \"\"b\"\" \",300,r134A\n"),
                "--out",
                out);
        CsvRow row = answers(out).get(0);
        assertThat(row.raw("id")).isEqualTo(" a, \"b\" ");
        assertThat(row.raw("refrigerant")).isEqualTo("r134A");
        assertThat(Files.readAllLines(out).get(0)).isEqualTo("id,refrigerant,quantity,value,unit,note");
    }

    @Test
    void brokenFilesLeaveNoOutput() throws IOException {
        for (String content :
                List.of("", "id,refrigerant\n", HEADER.strip() + ",extra\n", HEADER + "x,R-134a,\"bubble,300,\n")) {
            Path out = folder.resolve("none.csv");
            ProgramRun run = ProgramRun.of("points", input(content), "--out", out);
            assertThat(run.status()).isEqualTo(2);
            assertThat(run.err()).startsWith("satline: ").contains("in.csv").hasLineCount(1);
            assertThat(names()).containsExactly("in.csv");
        }
    }

    @Test
    void theInputIsNotOverwritten() throws IOException {
        Path in = input(HEADER + "x,R-134a,bubble_pressure,300,\n");
        ProgramRun run = ProgramRun.of("points", in, "--out", in);
        assertThat(run.status()).isEqualTo(2);
        assertThat(in).hasContent(HEADER + "x,R-134a,bubble_pressure,300,\n");
    }

    @Test
    void theTableEngineAnswersToo() throws IOException {
        Path out = folder.resolve("out.csv");
        ProgramRun run = ProgramRun.of(
                "points", input(HEADER + "x,R-134a,bubble_pressure,300,\n"), "--out", out, "--engine", "table");
        assertThat(run.status()).isZero();
        double equation =
                answered("x,R-134a,bubble_pressure,300,\n").number("value").orElseThrow();
        // the certificate of the tables bounds the pressure to 1E-8 of itself below 0.99 Tc
        assertThat(answers(out).get(0).number("value").orElseThrow()).isCloseTo(equation, offset(1e-8 * equation));
    }

    private CsvRow answered(String row) throws IOException {
        Path out = folder.resolve("answered.csv");
        ProgramRun.of("points", input(HEADER + row), "--out", out);
        return answers(out).get(0);
    }

    private Path input(String content) throws IOException {
        return Files.writeString(folder.resolve("in.csv"), content);
    }

    private static List<CsvRow> answers(Path out) throws IOException {
        List<CsvRow> rows = new ArrayList<>();
        try (CsvRows answers = CsvRows.of(out, PointAnswers.OUTPUT, List.of())) {
            answers.forEachRemaining(rows::add);
        }
        return rows;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName())).toList();
        }
    }
}
