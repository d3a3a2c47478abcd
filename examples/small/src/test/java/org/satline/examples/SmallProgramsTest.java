package org.satline.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Runs each small program and holds what it prints against a published figure or a sum done by hand. */
class SmallProgramsTest {
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w-])-?\\d+\\.\\d+");
    private static final Path SOURCES = Path.of("src/main/java/org/satline/examples");

    /**
     * ASHRAE Handbook Fundamentals 2021 (SI), ch. 2, Example 2: 132.73 kPa at -20 degC; 0.005 kPa is 0.001 K there, below the printed
     * digit.
     */
    @Test
    void superheatInThreeLines() {
        assertThat(printed(SuperheatInThreeLines::main)).isEqualTo("superheat 8.00 K\n");
    }

    /** ASHRAE Handbook Fundamentals 2021 (SI), ch. 29, Table 2: -43.8 and -36.7 degC; the model differs by less than 0.25 K. */
    @Test
    void blendGlide() {
        List<Double> numbers = numbers(printed(BlendGlide::main)); // the middle one is the pressure's
        assertThat(numbers.get(0)).isCloseTo(-43.8, within(0.25));
        assertThat(numbers.get(1)).isCloseTo(-36.7, within(0.25));
        assertThat(numbers.get(2)).isCloseTo(-36.7 + 43.8, within(0.25));
    }

    /**
     * 60 psi = 413.685 kPa, atmosphere 101.325 kPa at 0 m and 84.56 kPa at 1500 m (ISO 2533, table, from memory); 498.0 kPa at 0 degC and
     * 583.8 kPa at 5 degC (R-22, from memory): 3.4 % of pressure are 1.1 K.
     */
    @Test
    void gaugeAtAltitude() {
        List<Double> numbers = numbers(printed(GaugeAtAltitude::main));
        assertThat(numbers.get(0)).isCloseTo(413.685 + 101.325, within(0.05)); // half of the last digit
        assertThat(numbers.get(2)).isCloseTo(413.685 + 84.56, within(0.055)); // that of both figures
        assertThat(numbers.get(3)).isCloseTo(0.0, within(0.05));
        assertThat(numbers.get(1) - numbers.get(3)).isCloseTo(1.0, within(0.1)); // half of both printed digits
    }

    /**
     * Course tables of R-744: 1969.6, 2031.0 and 2093.8 kPa at -20, -19 and -18 degC. The lines are 4 and 6 K warmer in turn; a failing
     * sensor falls on a line 4 K warmer each time (minutes 479, 959 and 1439), so the mean of the rest is (720 x 6 + 717 x 4) / 1437.
     */
    @Test
    void streamOfReadings() {
        String text = printed(StreamOfReadings::main);
        List<Double> numbers = numbers(text);
        assertThat(numbers.get(0)).isCloseTo((720 * 6 + 717 * 4) / 1437.0, within(0.005)); // half of the last digit
        assertThat(text).contains("of 1437 readings, 3 refused");
        // half of the last digit of the printed pressure, 0.05 kPa, is 0.0008 K
        assertThat(numbers.subList(1, 4)).containsExactly(253.15, 254.15, 255.15);
    }

    /**
     * The composition of R-410A: ASHRAE Handbook Fundamentals 2021 (SI), ch. 29, Table 2: -51.6 degC; the model differs by less than 0.25
     * K.
     */
    @Test
    void ownBlend() {
        String text = printed(OwnBlend::main);
        assertThat(numbers(text).get(0)).isCloseTo(-51.6, within(0.25));
        assertThat(text).contains("pair FITTED");
    }

    /**
     * V = 21.591 kg / 999.0 kg/m3 = 21.613 L; 0.80 x 0.021613 m3 / 0.0009317 m3/kg = 18.56 kg, gross 30.35 kg (R-134a at 56 degC: Cengel
     * and Boles, Table A-11, made with another equation: 0.1 %).
     */
    @Test
    void fillLimit() {
        String text = printed(FillLimit::main);
        List<Double> numbers = numbers(text);
        assertThat(numbers.get(0)).isCloseTo(18.56, within(0.001 * 18.56));
        assertThat(numbers.get(2)).isCloseTo(18.56 + 26 * 0.45359237, within(0.001 * 18.56));
        assertThat(text).contains("liquid-80-warmest").contains("beware: ").doesNotContain("do not fill");
    }

    /**
     * The limit of 18.56 kg as above (0.1 %), tare 26 lb = 11.793 kg: at 25 kg there is room for 18.56 - (25 - 11.793) - 2 x 0.04 kg, and
     * 30.3 kg is 18.51 kg of contents, within the margin; 34 kg is 22.21 kg, over the limit.
     */
    @Test
    void cylinderOnTheScale() {
        String text = printed(CylinderOnTheScale::main);
        List<Double> numbers = numbers(text); // 25.0, room in kg and lb, stop in kg and lb
        double room = 18.56 - (25 - 26 * 0.45359237) - 2 * 0.04;
        double printedDown = 0.01;
        assertThat(numbers.get(1)).isCloseTo(room, within(0.001 * 18.56 + printedDown));
        assertThat(numbers.get(3)).isCloseTo(25 + room, within(0.001 * 18.56 + printedDown));
        assertThat(text)
                .contains("25.0 kg on the scale: no danger\n  room for ")
                .contains("30.3 kg on the scale: no danger\n")
                .contains(" FULL: ")
                .contains("34.0 kg on the scale: DANGER\n")
                .contains("danger OVERFILLED: ");
        assertThat(text).containsOnlyOnce("room for ");
    }

    /**
     * 135 psig - 75 psig = 60 psi = 413.7 kPa. From a cylinder of mixed recovered refrigerant nothing goes into a system: common practice,
     * no source.
     */
    @Test
    void mayItGo() {
        String text = printed(MayItGo::main);
        assertThat(text)
                .startsWith("OUT: granted, driven by 60.0 psi (413.7 kPa)\n")
                .contains("\nIN: refused, ");
    }

    /** 9.5 kg - 3.2 kg = 6.3 kg; root of the sum of squares of 30 g and 40 g is 50 g (JCGM 100:2008, 5.1.2). */
    @Test
    void ledgerOfOneJob() {
        assertThat(printed(LedgerOfOneJob::main))
                .contains("refused: 5000000 mg would leave cylinder C-1107, which holds 3200000 mg")
                .contains("cylinder 3.2 kg +/- 0.04 kg\n")
                .contains("system 6.3 kg +/- 0.05 kg\n");
    }

    /**
     * Course tables of R-744: 1969.6 kPa at -20 degC, so 3 K at -23 degC. Band +/- 3 degF = 1.667 K, deviation -2 K, u = 0.5 K: z = (2 -
     * 1.667) / 0.5 = 0.667, and the normal distribution has 0.7475 below it (printed tables: 0.7475 at 0.667).
     */
    @Test
    void verdictWithUncertainty() {
        String text = printed(VerdictWithUncertainty::main);
        List<Double> numbers = numbers(text);
        assertThat(text).startsWith("LOW as read: 3.00 K, target 5.00 K, u = 0.50 K\n");
        assertThat(numbers.get(3))
                .isCloseTo(0.7475, within(0.001)); // 0.0008 K of the pressure, 0.0005 of the last digit
        assertThat(numbers.get(3) + numbers.get(4) + numbers.get(5)).isCloseTo(1, within(0.0015));
        assertThat(text).contains("\nundecided\n"); // 0.7475 is less than 0.95, and more readings are asked for
    }

    /** Critical temperature of R-744: 304.1282 K +/- 0.015 K (Span and Wagner 1996, table 3, from memory). */
    @Test
    void catchingErrors() {
        String text = printed(CatchingErrors::main);
        assertThat(numbers(text).get(0)).isCloseTo(304.1282, within(0.015));
        assertThat(text)
                .startsWith("temperature at most ")
                .contains("\"68 psig\" is no absolute pressure\n")
                .contains("did you mean R-134a?\n");
    }

    /**
     * Liquid of 20 degC: 227.47 kJ/kg (from memory, as in ISO 17584); at -20 degC 173.64 and 386.55 kJ/kg (ASHRAE Handbook Fundamentals
     * 2021, ch. 2, Example 2): q = (227.47 - 173.64) / (386.55 - 173.64) = 0.25283, half of the last digits is 0.00005.
     */
    @Test
    void throttledLiquid() {
        String text = printed(ThrottledLiquid::main);
        assertThat(text).startsWith("LIQUID_AND_VAPOUR at -20.00 degC");
        assertThat(numbers(text).get(1)).isCloseTo(0.25283, within(0.0001)); // and half of ours
    }

    /** 1969.6 kPa at -20 degC (course tables of R-744), so 5 K at -15 degC; 0.05 kPa is 0.0008 K. */
    @Test
    void jsonRoundTrip() {
        String text = printed(JsonRoundTrip::main);
        assertThat(text)
                .contains("\"value\":{\"value\":")
                .contains(",\"unit\":\"K\"}")
                .endsWith("equal: true\n");
        Matcher superheat = Pattern.compile("\"value\":\\{\"value\":([^,]+),").matcher(text);
        assertThat(superheat.find()).isTrue();
        assertThat(Double.parseDouble(superheat.group(1))).isCloseTo(5, within(0.0008));
    }

    @Test
    void eachProgramIsRunHereAndListedInTheReadme() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        List<String> tests = Stream.of(SmallProgramsTest.class.getDeclaredMethods())
                .map(method -> method.getName().toLowerCase(Locale.ROOT))
                .toList();
        try (Stream<Path> files = Files.list(SOURCES)) {
            List<String> programs = files.map(
                            file -> file.getFileName().toString().replace(".java", ""))
                    .filter(name -> !name.equals("package-info"))
                    .toList();
            assertThat(programs).hasSizeGreaterThanOrEqualTo(10);
            for (String program : programs) {
                assertThat(tests).contains(program.toLowerCase(Locale.ROOT));
                assertThat(readme).contains("`" + program + "`");
            }
        }
    }

    private static String printed(Consumer<String[]> program) {
        PrintStream console = System.out;
        ByteArrayOutputStream output = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(output, true, StandardCharsets.UTF_8));
            program.accept(new String[0]);
        } finally {
            System.setOut(console);
        }
        return output.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    private static List<Double> numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(MatchResult::group)
                .map(Double::valueOf)
                .toList();
    }
}
