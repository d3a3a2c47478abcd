package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PressureTest {
    private static final Atmosphere STANDARD = Atmosphere.standard();

    @ParameterizedTest(name = "{0} = {1} kPa")
    @CsvSource(textBlock = """
        # from the exact factors of NIST SP 811 (2008 ed.) and 101.325 kPa: (68 + 14.69595) psi x 6.894757 kPa
        68 psig, 570.168
        5 barg, 601.325
        5 bar gauge, 601.325
        310 kPa gauge, 411.325
        310 kPag, 411.325
        0.31 MPa gauge, 411.325
        # 101.325 - 14.2 x 3.386389
        14.2 inHg vacuum, 53.238
        14.2 in. Hg vac, 53.238
        # absolute units stay as they are
        411.325 kPa, 411.325
        0.411325 MPa, 411.325
        500 micron, 0.067
        14.69595 psia, 101.325
        1 atm, 101.325
        29.9213 inHg absolute, 101.325
        """)
    void readsGaugeAndAbsoluteUnitsWithAnAtmosphere(String text, double kilopascals) {
        // expected values are rounded to 0.001 kPa
        assertThat(Pressure.parse(text, STANDARD).kilopascals()).isCloseTo(kilopascals, within(0.0005));
    }

    @Test
    void gaugeReadingDependsOnTheAtmosphere() {
        Atmosphere mountain = Atmosphere.atAltitude(Length.ofMetres(2000));
        PressureDifference apart = Pressure.parse("68 psig", STANDARD).minus(Pressure.parse("68 psig", mountain));
        // ISO 2533: 101.325 - 79.501, from memory; half of the last digit
        assertThat(apart.kilopascals()).isCloseTo(21.824, within(0.0005));
    }

    @ParameterizedTest
    @ValueSource(strings = {"68 psig", "5 barg", "310 kPa gauge", "14.2 inHg vacuum"})
    void refusesGaugeUnitsWithoutAnAtmosphere(String text) {
        assertThatThrownBy(() -> Pressure.parse(text))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessageContaining(text)
                .hasMessageContaining("without its atmosphere");
    }

    @Test
    void refusesPsiAsAmbiguousButTakesItAsDifference() {
        assertThatThrownBy(() -> Pressure.parse("68 psi")).hasMessageContaining("psia for absolute or psig for gauge");
        assertThatThrownBy(() -> Pressure.parse("68 psi", STANDARD)).hasMessageContaining("psig for gauge");
        assertThatThrownBy(() -> GaugePressure.parse("68 psi")).hasMessageContaining("psig for gauge");
        assertThat(PressureDifference.parse("3 psi")).isEqualTo(PressureDifference.ofPsi(3));
        assertThatThrownBy(() -> PressureDifference.parse("3 psig")).hasMessageContaining("write psi");
    }

    @Test
    void refusesInchesOfMercuryWithoutZero() {
        assertThatThrownBy(() -> Pressure.parse("20 inHg")).hasMessageContaining("inHg absolute, or inHg vacuum");
        assertThatThrownBy(() -> Pressure.parse("20 inHg", STANDARD)).hasMessageContaining("inHg vacuum");
        assertThatThrownBy(() -> GaugePressure.parse("20 inHg")).hasMessageContaining("inHg vacuum");
    }

    @Test
    void gaugeTextWithAnAbsoluteUnitIsRefused() {
        assertThatThrownBy(() -> GaugePressure.parse("310 kPa")).hasMessageContaining("as in kPa gauge");
        assertThatThrownBy(() -> GaugePressure.parse("500 micron")).hasMessageContaining("this unit is absolute");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1 kPa", "-0.1 psia", "-1e-300 Pa", "-500 micron"})
    void refusesNegativeAbsolutePressure(String text) {
        assertThatThrownBy(() -> Pressure.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is below 0.0 ")
                .hasMessageContaining("never negative");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-15 psig", "-1.1 barg", "30.5 inHg vacuum", "-101.326 kPa gauge"})
    void refusesReadingsBelowPerfectVacuum(String text) {
        assertThatThrownBy(() -> Pressure.parse(text, STANDARD))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-101.325 kPa, a perfect vacuum in the standard atmosphere");
    }

    @Test
    void perfectVacuumIsAllowed() {
        assertThat(Pressure.ofGauge(GaugePressure.ofKilopascals(-101.325), STANDARD))
                .isEqualTo(Pressure.ZERO);
        assertThat(Pressure.ZERO.gauge(STANDARD)).isEqualTo(GaugePressure.ofPascals(-101325));
    }

    @Test
    void vacuumReadingCountsDownwards() {
        assertThat(GaugePressure.ofInchesOfMercuryVacuum(10).psig()).isNegative();
        assertThat(GaugePressure.ofPsig(5).inchesOfMercuryVacuum()).isNegative();
        assertThatThrownBy(() -> GaugePressure.parse("-3 inHg vacuum")).hasMessageContaining("above it in psig");
    }

    @Test
    void minusAndPlusAreInverse() {
        Pressure high = Pressure.ofKilopascals(1500);
        Pressure low = Pressure.ofKilopascals(400);
        assertThat(high.minus(low)).isEqualTo(PressureDifference.ofKilopascals(1100));
        assertThat(low.plus(PressureDifference.ofKilopascals(1100))).isEqualTo(high);
        assertThatThrownBy(() -> low.plus(PressureDifference.ofKilopascals(-401)))
                .hasMessageContaining("never negative");
    }

    @Test
    void printsInTheUnitsOfTheTrade() {
        assertThat(Pressure.ofKilopascals(101.325)).hasToString("101.325 kPa");
        assertThat(Pressure.ofPsia(82.7).format(UnitSystem.US)).isEqualTo("82.7 psia");
        assertThat(Pressure.ofMicrons(500).format(UnitSystem.US)).isEqualTo("500 micron");
        assertThat(Pressure.ofMicrons(500)).hasToString("66.6612 Pa");
        assertThat(GaugePressure.ofPsig(68).format(UnitSystem.US)).isEqualTo("68 psig");
        assertThat(GaugePressure.ofInchesOfMercuryVacuum(14.2).format(UnitSystem.US))
                .isEqualTo("14.2 inHg vacuum");
        assertThat(GaugePressure.ofKilopascals(310)).hasToString("310 kPa gauge");
        assertThat(Pressure.ofBars(5).in("bar", 2)).isEqualTo("5.00 bar");
        assertThat(Pressure.ofBars(5).valueIn("kPa")).isEqualTo(500);
    }
}
