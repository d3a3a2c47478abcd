package org.satline.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.measurement.ReportedValue;
import org.satline.quantity.Mass;
import org.satline.quantity.Quantity;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.UnitSystem;

/** Printers and readers do not look at the locale of the machine: one with a decimal comma, one with other digits and letters. */
class CommaLocaleTest {
    private final Locale before = Locale.getDefault();

    @BeforeEach
    void comma() {
        Locale.setDefault(Locale.GERMANY);
    }

    @AfterEach
    void back() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @EnumSource
    void everyQuantityIsPrintedWithAPointAndReadAgain(PrintedQuantities kind) {
        for (UnitSystem system : UnitSystem.values()) {
            Quantity<?> quantity = kind.of(1234.5678);
            String printed = NumberPrinter.of(system).print(quantity);
            assertThat(printed).doesNotContain(",");
            assertThat(PrintedQuantities.lead(NumberPrinter.of(system).down(kind.readLead(printed))))
                    .isEqualTo(PrintedQuantities.lead(printed));
            assertThat(quantity.format(system)).doesNotContain(",");
            assertThat(kind.of(1234.5678)).isEqualTo(quantity);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva", "fa-IR"})
    void wordsAndNumbersAreTheSameEverywhere(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        NumberPrinter printer = NumberPrinter.of(UnitSystem.US);
        assertThat(printer.print(Mass.ofPounds(14.3))).isEqualTo("14.30 lb (6.49 kg)");
        assertThat(printer.within(Temperature.ofFahrenheit(53), TemperatureDifference.ofKelvins(1)))
                .isEqualTo("53.0 +/- 1.8 degF (11.7 +/- 1.0 degC)");
        assertThat(printer.percent(0.995)).isEqualTo("99.5 %");
        assertThat(printer.print(0.125, "1")).isEqualTo("0.125");
        assertThat(printer.duration(7500)).isEqualTo("2 h 5 min");
        assertThat(Wording.of(Language.ENGLISH, UnitSystem.US).message("finding.IDLE-TIDE"))
                .isEqualTo("i d l e  t i d e");
    }

    @Test
    void theResultsThemselvesCarryPoints() {
        assertThat(Mass.ofPounds(14.3).in("kg", 3)).isEqualTo("6.486 kg");
        assertThat(ReportedValue.of(5.81, 0.63, "K").toString()).startsWith("5.8 K");
    }
}
