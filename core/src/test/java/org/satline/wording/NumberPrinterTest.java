package org.satline.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.measurement.ReportedValue;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.UnitSystem;
import org.satline.quantity.Volume;

/** Conversions by hand with the factors of NIST SP 811 (2008), appendix B: 0.45359237 kg/lb, 6.894757 kPa/psi, 3.386389 kPa/inHg. */
class NumberPrinterTest {
    private static final NumberPrinter TRADE = NumberPrinter.of(UnitSystem.US);
    private static final NumberPrinter SI = NumberPrinter.of(UnitSystem.SI);

    @Test
    void printsBothUnitsTheChosenOneFirst() {
        assertThat(TRADE.print(Mass.ofPounds(14.3))).isEqualTo("14.30 lb (6.49 kg)");
        assertThat(SI.print(Mass.ofPounds(14.3))).isEqualTo("6.49 kg (14.30 lb)");
        assertThat(TRADE.print(Temperature.ofFahrenheit(53))).isEqualTo("53.0 degF (11.7 degC)");
        assertThat(TRADE.print(TemperatureDifference.ofFahrenheitDegrees(16.1))).isEqualTo("16.1 degF (8.9 K)");
        assertThat(TRADE.print(GaugePressure.ofPsig(118))).isEqualTo("118.0 psig (813.6 kPa)");
        assertThat(SI.print(GaugePressure.ofPsig(118))).isEqualTo("813.6 kPa gauge (118.0 psig)");
        assertThat(TRADE.print(Pressure.ofPsia(132.16))).isEqualTo("132.2 psia (911.2 kPa)");
        assertThat(TRADE.print(PressureDifference.ofPsi(-3))).isEqualTo("-3.0 psi (-20.7 kPa)");
        assertThat(TRADE.print(MassDifference.ofPounds(-0.62))).isEqualTo("-0.62 lb (-0.28 kg)");
    }

    @Test
    void smallAmountsGetUnitsInWhichTheyShow() {
        assertThat(TRADE.print(Mass.ofGrams(34))).isEqualTo("1.20 oz (34.0 g)");
        assertThat(TRADE.print(Mass.ZERO)).isEqualTo("0.00 lb (0.00 kg)");
        assertThat(TRADE.print(Pressure.ofMicrons(500))).isEqualTo("500 micron (66.7 Pa)");
        assertThat(TRADE.print(GaugePressure.ofInchesOfMercuryVacuum(10))).isEqualTo("10.0 inHg vacuum (-33.9 kPa)");
        assertThat(TRADE.print(Volume.ofLitres(0.03))).isEqualTo("1.83 in3 (30.0 mL)");
        assertThat(TRADE.print(Length.ofInches(0.375))).isEqualTo("0.375 in (9.53 mm)");
        assertThat(TRADE.print(PressureDifference.ofPascals(125))).isEqualTo("0.50 inH2O (125 Pa)");
    }

    @Test
    void limitsAreRoundedToTheirSafeSideInBothUnits() {
        Mass limit = Mass.ofPounds(14.299);
        assertThat(TRADE.down(limit)).isEqualTo("14.29 lb (6.48 kg)");
        assertThat(TRADE.up(limit)).isEqualTo("14.30 lb (6.49 kg)");
        // -0.62 lb is -0.28123 kg
        assertThat(TRADE.down(MassDifference.ofPounds(-0.62))).isEqualTo("-0.62 lb (-0.29 kg)");
        assertThat(TRADE.up(MassDifference.ofPounds(-0.62))).isEqualTo("-0.62 lb (-0.28 kg)");
        // the smaller pressure is the deeper vacuum
        GaugePressure vacuum = GaugePressure.ofInchesOfMercuryVacuum(10.04);
        assertThat(TRADE.down(vacuum)).isEqualTo("10.1 inHg vacuum (-34.0 kPa)");
        assertThat(TRADE.up(vacuum)).isEqualTo("10.0 inHg vacuum (-33.9 kPa)");
    }

    @Test
    void noiseOfBinaryArithmeticMovesNoLimit() {
        Mass eightyPerCent = Mass.ofKilograms(Mass.ofPounds(30).kilograms() * 0.8);
        assertThat(TRADE.down(eightyPerCent)).startsWith("24.00 lb");
        assertThat(TRADE.up(eightyPerCent)).startsWith("24.00 lb");
        for (int hundredths = 0; hundredths < 20000; hundredths++) {
            Mass mass = Mass.ofPounds(hundredths / 100.0 + 1);
            assertThat(number(TRADE.down(mass))).isEqualTo(number(TRADE.up(mass)));
        }
        for (int tenths = -400; tenths < 2000; tenths++) {
            Temperature temperature = Temperature.ofFahrenheit(tenths / 10.0);
            assertThat(number(TRADE.down(temperature))).isEqualTo(number(TRADE.up(temperature)));
        }
    }

    @Test
    void halvesAreRoundedAwayFromZeroAndZeroHasNoSign() {
        assertThat(SI.print(TemperatureDifference.ofKelvins(0.25))).startsWith("0.3 K");
        assertThat(SI.print(TemperatureDifference.ofKelvins(-0.25))).startsWith("-0.3 K");
        for (double tiny : List.of(-0.0, -0.001, 0.001)) {
            assertThat(SI.print(TemperatureDifference.ofKelvins(tiny))).isEqualTo("0.0 K (0.0 degF)");
            assertThat(TRADE.print(GaugePressure.ofPsig(tiny))).startsWith("0.0 psig (");
            assertThat(TRADE.print(tiny, "1")).doesNotStartWith("-0 ").isNotEqualTo("-0");
        }
        assertThat(TRADE.print(GaugePressure.ofPsig(-0.004))).isEqualTo("0.0 psig (0.0 kPa)");
    }

    @Test
    void derivationsGetOneDigitMore() {
        assertThat(SI.finer().print(Mass.ofKilograms(6.4864))).isEqualTo("6.486 kg (14.300 lb)");
    }

    /** JCGM 100:2008, 7.2.6: two digits of the uncertainty, upward, and the value to the same place. */
    @Test
    void anUncertaintyLimitsTheDigits() {
        assertThat(TRADE.within(Temperature.ofFahrenheit(53.04), TemperatureDifference.ofFahrenheitDegrees(1.81)))
                .isEqualTo("53.0 +/- 1.9 degF (11.7 +/- 1.1 degC)");
        assertThat(TRADE.within(GaugePressure.ofPsig(118.36), PressureDifference.ofPsi(12.1)))
                .isEqualTo("118 +/- 13 psig (816 +/- 84 kPa)");
        assertThat(TRADE.within(Mass.ofPounds(14.3), MassDifference.ofPounds(0)))
                .isEqualTo("14.30 +/- 0.00 lb (6.49 +/- 0.00 kg)");
        assertThat(TRADE.within(Pressure.ofPsia(14.7), PressureDifference.ofPsi(0.2)))
                .isEqualTo("14.7 +/- 0.2 psia (101.4 +/- 1.4 kPa)");
        assertThat(TRADE.within(Mass.ofGrams(34), MassDifference.ofGrams(4)))
                .isEqualTo("1.20 +/- 0.15 oz (34.0 +/- 4.0 g)");
        assertThatThrownBy(() -> TRADE.within(Mass.ofPounds(1), TemperatureDifference.ofKelvins(1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(TRADE.print(ReportedValue.of(5.81, 0.63, "K"))).isEqualTo("5.8 +/- 1.3 K");
    }

    @Test
    void everyFormHasADifferenceThatItsUncertaintyKnows() {
        assertThat(TRADE.within(GaugePressure.ofInchesOfMercuryVacuum(10), PressureDifference.ofPsi(0.5)))
                .isEqualTo("-4.9 +/- 0.5 psig (-33.9 +/- 3.5 kPa)");
        assertThat(TRADE.within(Pressure.ofMicrons(500), PressureDifference.ofPascals(10)))
                .isEqualTo("500 +/- 76 micron (67 +/- 10 Pa)");
        assertThat(TRADE.within(PressureDifference.ofPascals(125), PressureDifference.ofPascals(10)))
                .isEqualTo("0.50 +/- 0.05 inH2O (125 +/- 10 Pa)");
    }

    @ParameterizedTest
    @CsvSource({
        "5.2, 5 lb 3.2 oz (2.36 kg)",
        "0.5, 0 lb 8.0 oz (0.23 kg)",
        "4.999, 5 lb 0.0 oz (2.27 kg)",
        "0, 0 lb 0.0 oz (0.00 kg)"
    })
    void poundsAndOuncesCarryOver(double pounds, String text) {
        assertThat(TRADE.poundsAndOunces(Mass.ofPounds(pounds))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.93, 93 %",
        "0, 0 %",
        "1, 100 %",
        "0.997, 99.7 %",
        "0.99996, > 99.9 %",
        "0.0004, < 0.1 %",
        "0.005, 0.5 %"
    })
    void whatIsNeitherNoneNorAllIsNotPrintedAsSuch(double fraction, String text) {
        assertThat(TRADE.percent(fraction)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0, 0 s", "89.2, 90 s", "120, 2 min", "121, 3 min", "900, 15 min", "7200, 2 h", "7500, 2 h 5 min"})
    void timesToWaitAreRoundedUpward(double seconds, String text) {
        assertThat(TRADE.duration(seconds)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.123456, 1, 0.1235",
        "12345.6, 1, 12346",
        "15, min, 15 min",
        "0.5, 1, 0.5",
        "1e15, 1, 1000000000000000"
    })
    void plainNumbersHaveFourDigits(double value, String unit, String text) {
        assertThat(TRADE.print(value, unit)).isEqualTo(text);
    }

    @Test
    void refusesWhatIsNoNumber() {
        for (double wrong : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> TRADE.print(wrong, "1")).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> TRADE.percent(wrong)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> TRADE.duration(wrong)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> TRADE.duration(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static String number(String printed) {
        return printed.substring(0, printed.indexOf(' '));
    }
}
