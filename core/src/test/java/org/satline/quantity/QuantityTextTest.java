package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {
    static final List<Quantities.Textual> ALL = Quantities.ALL;

    @ParameterizedTest
    @FieldSource("ALL")
    void refusesWhatIsNoDecimalNumberWithAUnit(Quantities.Textual quantity) {
        String unit = Quantities.units(quantity).get(0);
        for (String text : List.of(
                "",
                "   ",
                unit,
                "NaN " + unit,
                "Infinity " + unit,
                "-Infinity " + unit,
                "inf " + unit,
                "0x1p3 " + unit,
                "1f " + unit,
                "1d" + unit,
                "1,5 " + unit,
                "1,234.5 " + unit,
                ",5 " + unit,
                "1.2.3 " + unit,
                "1 2 " + unit,
                "--1 " + unit,
                "1/2 " + unit,
                "\u0661 " + unit,
                "1e " + unit,
                "1 " + unit + " " + unit,
                "1 furlong",
                "1")) {
            assertThatExceptionOfType(QuantityFormatException.class)
                    .as(text)
                    .isThrownBy(() -> quantity.parse(text))
                    .satisfies(e -> assertThat(e.text()).isEqualTo(text))
                    .satisfies(e -> assertThat(e.getMessage())
                            .contains(e.quantity(), e.acceptedUnits().get(0)));
        }
    }

    @ParameterizedTest
    @FieldSource("ALL")
    void refusesNumbersBeyondDoubles(Quantities.Textual quantity) {
        String unit = Quantities.units(quantity).get(0);
        assertThatThrownBy(() -> quantity.parse("1e999 " + unit))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not a finite number");
    }

    @ParameterizedTest
    @FieldSource("ALL")
    void refusesNull(Quantities.Textual quantity) {
        assertThatNullPointerException().isThrownBy(() -> quantity.parse(absent()));
        assertThatNullPointerException()
                .isThrownBy(() -> Quantities.sample(quantity).in(absent(), 1));
    }

    @SuppressWarnings({"NullAway", "TypeParameterUnusedInFormals"}) // what a careless caller can do
    private static String absent() {
        return null;
    }

    @Test
    void saysWhatToDo() {
        assertThatThrownBy(() -> Pressure.parse("68"))
                .hasMessage(
                        "absolute pressure \"68\" has no unit; write one after the number; accepted units: kPa, Pa, MPa, bar,"
                                + " mbar, psia, micron, mmHg, inHg absolute, torr, atm");
        assertThatThrownBy(() -> Pressure.parse("1,5 bar"))
                .hasMessageStartingWith(
                        "absolute pressure \"1,5 bar\" has a comma in its number; use a point as decimal mark");
        assertThatThrownBy(() -> Mass.parse("3 stone"))
                .hasMessage(
                        "mass \"3 stone\" has the unknown unit \"stone\"; use one of the accepted units; accepted units: kg, g,"
                                + " lb, oz");
    }

    @Test
    void unitsOfAnotherQuantityAreUnknown() {
        assertThatThrownBy(() -> Temperature.parse("68 psig")).hasMessageContaining("accepted units: degC, K, degF");
        assertThatThrownBy(() -> Mass.parse("3 L")).isInstanceOf(QuantityFormatException.class);
        assertThatThrownBy(() -> Mass.ofKilograms(1).valueIn("kPa")).isInstanceOf(QuantityFormatException.class);
    }

    @Test
    void letterCaseDoesNotMatterExceptBetweenMilliAndMega() {
        assertThat(Pressure.parse("5 KPA")).isEqualTo(Pressure.ofKilopascals(5));
        assertThat(Pressure.parse("5 PSIA")).isEqualTo(Pressure.ofPsia(5));
        assertThat(Pressure.parse("500 Microns")).isEqualTo(Pressure.ofMicrons(500));
        assertThatThrownBy(() -> Pressure.parse("5 mPa")).hasMessageContaining("unknown unit \"mPa\"");
        assertThatThrownBy(() -> Pressure.parse("5 Mbar")).hasMessageContaining("unknown unit \"Mbar\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 m\u00B3", "1 m^3", "1m3"})
    void cubesAreReadAsPeopleTypeThem(String text) {
        assertThat(Volume.parse(text)).isEqualTo(Volume.ofCubicMetres(1));
    }

    @Test
    void spacesInsideAUnitCount() {
        // else a slip of the finger would turn a metre into a millimetre
        assertThatThrownBy(() -> Length.parse("1 m m")).hasMessageContaining("unknown unit \"m m\"");
        assertThat(SpecificEntropy.parse("1 kJ/(kg  K)")).isEqualTo(SpecificEntropy.ofKilojoulesPerKilogramKelvin(1));
    }

    @Test
    void messagesStayShortAndPrintable() {
        String hostile = "9 \u001b[31m\r\n" + "x".repeat(300);
        assertThatThrownBy(() -> Mass.parse(hostile))
                .message()
                .hasSizeLessThan(300)
                .doesNotContain("\u001b", "\n", "\r");
        assertThatThrownBy(() -> Mass.parse("9".repeat(100_000))).message().hasSizeLessThan(300);
    }

    /** A mass of 1.7e308 kg would be infinite in pounds. */
    @ParameterizedTest
    @FieldSource("ALL")
    void noUnitTurnsAValueInfinite(Quantities.Textual quantity) {
        List<String> units = Quantities.units(quantity);
        String si = quantity.parse("300 " + units.get(0)).siUnit();
        assertThatThrownBy(() -> quantity.parse("1.7e308 " + si)).isInstanceOf(IllegalArgumentException.class);
        Quantity<?> largest = quantity.parse("1e300 " + si);
        assertThat(units).allSatisfy(unit -> assertThat(largest.valueIn(unit)).isFinite());
    }

    @Test
    void textIsTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(Temperature.ofCelsius(1234.5)).hasToString("1234.50 degC");
                assertThat(Pressure.parse("14.7 PSIA")).isEqualTo(Pressure.ofPsia(14.7));
                assertThat(GaugePressure.parse("14.2 INHG VACUUM"))
                        .isEqualTo(GaugePressure.ofInchesOfMercuryVacuum(14.2));
                assertThatThrownBy(() -> Temperature.ofCelsius(-300)).hasMessageContaining("-300.0 degC");
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void refusesOddNumbersOfDecimals() {
        assertThatThrownBy(() -> Mass.ofKilograms(1).in("kg", -1))
                .hasMessage("number of decimals -1 is outside [0, 15]");
        assertThatThrownBy(() -> Mass.ofKilograms(1).in("kg", 16)).hasMessageContaining("[0, 15]");
    }

    @Test
    void printsReadableNumbers() {
        assertThat(Mass.ofKilograms(9.5)).hasToString("9.5 kg");
        assertThat(Mass.ofPounds(20).format(UnitSystem.US)).isEqualTo("20 lb");
        assertThat(Mass.ZERO).hasToString("0 kg");
        assertThat(Length.ofMetres(1500)).hasToString("1500 m");
        assertThat(Length.ofInches(0.25).format(UnitSystem.US)).isEqualTo("0.25 in");
        assertThat(Length.ofInches(0.25)).hasToString("6.35 mm");
        assertThat(Length.ofMetres(0)).hasToString("0 m");
        assertThat(Length.ofFeet(5000).format(UnitSystem.US)).isEqualTo("5000 ft");
        assertThat(Power.ofTonsOfRefrigeration(3).format(UnitSystem.US)).isEqualTo("36000 Btu/h");
        assertThat(Power.parse("3 tons of refrigeration")).isEqualTo(Power.ofTonsOfRefrigeration(3));
        assertThat(VolumeFlow.ofCubicFeetPerMinute(1200).format(UnitSystem.US)).isEqualTo("1200 cfm");
        assertThat(Speed.ofMetresPerSecond(1e12)).hasToString("1E+12 m/s");
    }
}
