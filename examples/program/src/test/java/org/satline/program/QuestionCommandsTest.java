package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.json.JsonFields;
import org.satline.visit.file.FieldValue;

class QuestionCommandsTest {
    private static final double PA_PER_KPA = 1000;

    private static FieldValue.Fields asked(String... words) {
        String[] all = new String[words.length + 1];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = "--json";
        ProgramRun run = ProgramRun.of((Object[]) all);
        assertThat(run.err()).isEmpty();
        return JsonFields.read(run.out());
    }

    private static double number(FieldValue.Fields fields, String name) {
        if (fields.values().get(name) instanceof FieldValue.Fields number
                && number.values().get("value") instanceof FieldValue.Plain plain) {
            return plain.value();
        }
        throw new AssertionError("no number " + name + " in " + fields);
    }

    private static String word(FieldValue.Fields fields, String name) {
        if (fields.values().get(name) instanceof FieldValue.Text text) {
            return text.value();
        }
        throw new AssertionError("no word " + name + " in " + fields);
    }

    /**
     * Tillner-Roth and Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657-729, saturation table of R-134a:
     * 0.57171 MPa at 20 degC and 0.29280 MPa at 0 degC. Half a unit of the last digit printed is 5 Pa.
     */
    @ParameterizedTest
    @CsvSource({"20degC,571.71", "0degC,292.80"})
    void pressureOfACylinderIsThatOfThePublishedTable(String temperature, double kilopascals) {
        assertThat(number(asked("pressure", "R-134a", temperature), "bubblePressure"))
                .isCloseTo(kilopascals * PA_PER_KPA, within(6.0));
    }

    /** The number stands in the first line. */
    @ParameterizedTest
    @CsvSource({
        "pressure R-134a 20degC,psig",
        "superheat R-410A 118psig 53degF,degF",
        "subcooling R-410A 388psig 98degF,degF",
        "flow 118psig 252psig,psi",
        "cylinder R-410A --tare 27.4lb --water-capacity 47.7lb,lb"
    })
    void numberComesFirstThenFormulaAndSource(String line, String unit) {
        ProgramRun run = ProgramRun.of((Object[]) line.split(" ", -1));
        assertThat(run.status()).isZero();
        assertThat(run.out().lines().findFirst().orElseThrow()).containsPattern("\\d\\.\\d+.* " + unit);
        assertThat(run.out()).contains(" = ").contains("source: ");
    }

    /**
     * R-22 boils at 40 degF at 83.2 psia, 68.5 psig: ASHRAE Handbook Fundamentals, refrigerant properties (from memory);
     * rounded to 0.1 psi that is 0.07 K.
     */
    @Test
    void superheatCountsFromTheDewLine() {
        assertThat(number(asked("superheat", "R-22", "68.5psig", "50degF"), "superheat"))
                .isCloseTo(10 / 1.8, within(0.1));
    }

    /** R-22 at 105 degF: 210.8 psig, from the same table (from memory). */
    @Test
    void subcoolingCountsFromTheBubbleLine() {
        assertThat(number(asked("subcooling", "R-22", "210.8psig", "95degF"), "subcooling"))
                .isCloseTo(10 / 1.8, within(0.1));
    }

    @Test
    void gaugesCountFromTheAirOfTheSite() {
        double low = number(asked("superheat", "R-22", "68.5psig", "50degF"), "superheat");
        double high = number(asked("superheat", "R-22", "68.5psig", "50degF", "--altitude", "1600m"), "superheat");
        assertThat(high).isGreaterThan(low + 0.5);
    }

    /**
     * The usual sum of the trade: 0.8 x WC x specific gravity at 77 degF (1.06 for R-410A) + TW; common practice, no source.
     * The gravity is rounded to 0.005, 0.19 lb here, and counts from water of 62.4 lb/ft3, 0.05 lb.
     */
    @Test
    void mostACylinderMayWeighIsTheUsualSum() {
        FieldValue.Fields fields =
                asked("cylinder", "R-410A", "--tare", "27.4lb", "--water-capacity", "47.7lb", "--warmest", "77degF");
        assertThat(number(fields, "largestGross") / 0.45359237).isCloseTo(0.8 * 47.7 * 1.06 + 27.4, within(0.25));
        assertThat(word(fields, "law")).isEqualTo("not-tested");
    }

    @Test
    void stampsLetTheLawBeTested() {
        FieldValue.Fields fields = asked(
                "cylinder",
                "R-410A",
                "--tare",
                "27.4lb",
                "--water-capacity",
                "21.6l",
                "--specification",
                "DOT-4BW400",
                "--retest-due",
                "2029-04-30",
                "--date",
                "2026-07-14");
        assertThat(word(fields, "law")).isEqualTo("tested");
    }

    @Test
    void aCylinderThatMustNotBeFilledGetsNoNumber() {
        ProgramRun run = ProgramRun.of(
                "cylinder",
                "R-410A",
                "--tare",
                "27.4lb",
                "--water-capacity",
                "47.7lb",
                "--specification",
                "DOT-39",
                "--json");
        assertThat(run.status()).isEqualTo(ExitStatus.SOME_ROWS_REFUSED);
        FieldValue.Fields fields = JsonFields.read(run.out());
        assertThat(fields.values()).doesNotContainKeys("largestContents", "largestGross");
        assertThat(word(fields, "law")).isEqualTo("forbids");
    }

    @ParameterizedTest
    @CsvSource({
        "118psig,252psig,second-into-first",
        "252psig,118psig,first-into-second",
        "118psig,120psig,too-close-to-call"
    })
    void theHigherPressureFlowsIntoTheLower(String first, String second, String way) {
        assertThat(word(asked("flow", first, second), "way")).isEqualTo(way);
    }

    @ParameterizedTest
    @CsvSource({
        "superheat R-410A 118psi 53degF,PRESSURE",
        "superheat R-410A 118psig 53,TEMPERATURE",
        "superheat R-4100 118psig 53degF,REFRIGERANT",
        "pressure R-744 100degF,310.9278 K",
        "cylinder R-410A --tare 27.4lb --water-capacity 47.7psi,--water-capacity",
        "cylinder R-410A --tare 0lb --water-capacity 47.7lb,tare",
        "flow 118psig 252psig --first nowhere,nowhere",
        "flow 118psig 252psig --gauge-error=-1psi,--gauge-error",
        "flow 118psig 252psig --altitude 0m --barometer 1bar,--barometer"
    })
    void whatCannotBeUsedIsNamed(String line, String named) {
        ProgramRun run = ProgramRun.of((Object[]) line.split(" ", -1));
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains(named);
    }
}
