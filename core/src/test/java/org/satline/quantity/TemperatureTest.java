package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "25 degC",
                "25C",
                "25 \u00B0C",
                "25\u00A0\u00B0C",
                "25 \u00BAC",
                "+25.0 deg C",
                "2.5e1 celsius",
                "298.15 K",
                "77 degF",
                "77 \u00B0F"
            })
    void readsTheSpellingsOfTheTrade(String text) {
        assertThat(Temperature.parse(text)).isEqualTo(Temperature.ofCelsius(25));
    }

    @Test
    void readsAMinusSignAsTypesetterWriteIt() {
        assertThat(Temperature.parse("\u221240 degF")).isEqualTo(Temperature.parse("-40 degF"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 K", "-1 K", "-273.15 degC", "-300 degC", "-460 degF"})
    void refusesAbsoluteZeroAndBelow(String text) {
        assertThatThrownBy(() -> Temperature.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("temperature ")
                .hasMessageContaining(" is not above ")
                .hasMessageContaining("absolute zero");
    }

    @Test
    void aReadingAndADifferenceAreTwoThings() {
        // 5 degC as a reading is 278.15 K, as a difference 5 K
        assertThat(Temperature.parse("5 degC").kelvins()).isEqualTo(278.15);
        assertThat(TemperatureDifference.parse("5 degC").kelvins()).isEqualTo(5);
        assertThat(Temperature.ofCelsius(12).minus(Temperature.ofCelsius(7)).kelvins())
                .isEqualTo(5);
        assertThat(Temperature.ofCelsius(7).minus(Temperature.ofCelsius(12))).isLessThan(TemperatureDifference.ZERO);
        Object reading = Temperature.ofKelvins(5);
        assertThat(reading).isNotEqualTo(TemperatureDifference.ofKelvins(5));
    }

    @Test
    void differencesMoveAReading() {
        Temperature line = Temperature.ofKelvins(280);
        TemperatureDifference superheat = TemperatureDifference.ofKelvins(6);
        assertThat(line.minus(superheat)).isEqualTo(Temperature.ofKelvins(274));
        assertThat(line.plus(superheat)).isEqualTo(Temperature.ofKelvins(286));
        assertThat(line.plus(superheat.negated())).isEqualTo(line.minus(superheat));
        assertThatThrownBy(() -> line.minus(TemperatureDifference.ofKelvins(280)))
                .hasMessageContaining("absolute zero");
    }

    @Test
    void differencesAddUp() {
        TemperatureDifference five = TemperatureDifference.ofKelvins(5);
        assertThat(five.plus(five)).isEqualTo(TemperatureDifference.ofKelvins(10));
        assertThat(five.minus(five)).isEqualTo(TemperatureDifference.ZERO);
        assertThat(five.negated().abs()).isEqualTo(five);
        // zero has one sign, so that equal differences are equal objects
        assertThat(TemperatureDifference.ZERO.negated()).isEqualTo(TemperatureDifference.ZERO);
    }

    @Test
    void printsHundredths() {
        assertThat(Temperature.ofFahrenheit(130)).hasToString("54.44 degC");
        assertThat(Temperature.ofFahrenheit(130).format(UnitSystem.US)).isEqualTo("130.00 degF");
        assertThat(TemperatureDifference.ofKelvins(5).format(UnitSystem.US)).isEqualTo("9.00 degF");
        assertThat(TemperatureDifference.ofKelvins(5)).hasToString("5.00 K");
        assertThat(Temperature.ofCelsius(-0.001)).hasToString("0.00 degC");
        assertThat(Temperature.ofCelsius(25).in("K", 1)).isEqualTo("298.2 K");
    }
}
