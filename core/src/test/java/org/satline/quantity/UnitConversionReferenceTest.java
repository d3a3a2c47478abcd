package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("reference")
class UnitConversionReferenceTest {

    @ParameterizedTest(name = "{0}: 1 {1} = {2}")
    @CsvSource(textBlock = """
        # NIST SP 811 (2008 ed.), appendix B.8, SI value of one unit; from memory
        pressure, psia, 6.894757E+03
        pressure difference, psi, 6.894757E+03
        gauge pressure, psig, 6.894757E+03
        pressure, inHg absolute, 3.386389E+03
        gauge pressure, inHg vacuum, -3.386389E+03
        pressure, mmHg, 1.333224E+02
        pressure, torr, 1.333224E+02
        pressure, micron, 1.333224E-01
        pressure, atm, 1.01325E+05
        pressure, bar, 1.0E+05
        pressure, mbar, 1.0E+02
        pressure difference, inH2O, 2.490889E+02
        length, ft, 3.048E-01
        length, in, 2.54E-02
        mass, lb, 4.535924E-01
        mass, oz, 2.834952E-02
        volume, ft3, 2.831685E-02
        volume, in3, 1.638706E-05
        volume, L, 1.0E-03
        density, lb/ft3, 1.601846E+01
        speed, ft/s, 3.048E-01
        speed, ft/min, 5.08E-03
        volume flow, cfm, 4.719474E-04
        power, Btu/h, 2.930711E-01
        power, ton of refrigeration, 3.516853E+03
        specific enthalpy, Btu/lb, 2.326E+03
        specific entropy, Btu/(lb degF), 4.1868E+03
        specific heat capacity, Btu/(lb degF), 4.1868E+03
        """)
    void oneUnitIsThePrintedFactor(String quantity, String unit, BigDecimal printed) {
        // the publication rounds to the printed digits; exact factors are printed with fewer, and then rounding alone
        // remains
        double halfOfLastDigit = printed.ulp().doubleValue() / 2;
        Quantity<?> one = Quantities.named(quantity).parse("1 " + unit);
        assertThat(one.si()).isCloseTo(printed.doubleValue(), within(halfOfLastDigit));
    }

    @ParameterizedTest(name = "{0} degF = {1} degC = {2} K")
    @CsvSource(textBlock = """
        # exact by definition: t/degC = (t/degF - 32)/1.8, T/K = t/degC + 273.15 (NIST SP 811, 2008 ed., appendix B.8)
        -40, -40, 233.15
         32,   0, 273.15
         50,  10, 283.15
        212, 100, 373.15
        """)
    void temperatureScalesMeetAtFixedPoints(double fahrenheit, double celsius, double kelvins) {
        // one rounding at 400 K is 6E-14 K, and two or three of them add up
        assertThat(Temperature.ofFahrenheit(fahrenheit).kelvins()).isCloseTo(kelvins, within(2e-13));
        assertThat(Temperature.ofFahrenheit(fahrenheit).celsius()).isCloseTo(celsius, within(2e-13));
        assertThat(Temperature.ofCelsius(celsius).fahrenheit()).isCloseTo(fahrenheit, within(2e-13));
        assertThat(Temperature.ofCelsius(celsius).kelvins()).isCloseTo(kelvins, within(2e-13));
    }

    @Test
    void nineFahrenheitDegreesAreFiveKelvins() {
        assertThat(TemperatureDifference.ofFahrenheitDegrees(9)).isEqualTo(TemperatureDifference.ofKelvins(5));
        assertThat(TemperatureDifference.parse("18 degF")).isEqualTo(TemperatureDifference.parse("10 degC"));
    }

    @Test
    void decimalSubmultiplesAreTheSameDouble() {
        assertThat(Mass.ofGrams(9500)).isEqualTo(Mass.ofKilograms(9.5));
        assertThat(Mass.parse("454 g")).isEqualTo(Mass.parse("0.454 kg"));
        assertThat(Volume.ofLitres(12.3)).isEqualTo(Volume.ofCubicMetres(0.0123));
        assertThat(Length.parse("6.35 mm").metres()).isEqualTo(0.00635);
    }
}
