package org.satline.saturation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.ChargeRow;
import org.satline.charge.ChargeScreen;
import org.satline.charge.ScreenedCharge;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.ResourceFormatException;

/**
 * A card of R-134a with every other printed row of Cengel and Boles, Thermodynamics, property tables booklet, 6th ed., Table A-11, under
 * a name of its own.
 */
class PrintedCardTest {
    private static final String HEAD = "temperature_degC,bubble_kPa,dew_kPa\n";
    private static final String ROWS = """
            4,337.90,
            8,387.88,
            12,443.31,
            16,504.58,
            20,572.07,
            24,646.18,
            28,727.31,
            32,815.89,
            38,963.68,
            44,1130.7,
            56,1529.1,
            65,1891.0,
            """;
    private static final Refrigerant OWN = Refrigerant.substance("Field 134", "as on the card", 0.10203, "the card");

    private static PrintedCard card(String rows) {
        return PrintedCard.read(OWN, "Table A-11", "card.csv", (HEAD + rows).getBytes(StandardCharsets.UTF_8));
    }

    /** The printed rows between; half of their own last digit is far below the stated limit. */
    @ParameterizedTest
    @CsvSource({"6, 362.23", "10, 414.89", "18, 537.52", "60, 1682.8"})
    void whatIsPrintedBetweenLiesWithinTheStatedLimit(double celsius, double kilopascals) {
        PrintedCard card = card(ROWS);
        assertThat(card.limitOfErrorK()).isBetween(0.005, 0.1);
        assertThat(card.dewTemperature(Pressure.ofKilopascals(kilopascals)).celsius())
                .isCloseTo(celsius, within(card.limitOfErrorK()));
        assertThat(card.bubblePressure(Temperature.ofCelsius(celsius)).kilopascals())
                .isCloseTo(
                        kilopascals, within(kilopascals * card.limitOfErrorK() * 0.04)); // 4 % for each kelvin, at most
    }

    @Test
    void itRisesEverywhereAndIsTheSameLineBothWays() {
        PrintedCard card = card(ROWS);
        double before = 0;
        for (double t = card.minTemperatureK(); t <= card.maxTemperatureK(); t += 0.01) {
            double p = card.dewPressurePa(t);
            assertThat(p).isGreaterThan(before);
            assertThat(card.dewTemperatureK(p)).isCloseTo(t, within(1e-10));
            before = p;
        }
    }

    @Test
    void itAnswersNothingBeyondItsPoints() {
        PrintedCard card = card(ROWS);
        for (double t : new double[] {276, 340, Double.NaN}) {
            assertThatThrownBy(() -> card.dewPressurePa(t)).isInstanceOf(OutOfValidityException.class);
        }
        assertThatThrownBy(() -> card.superheat(Pressure.ofKilopascals(330), Temperature.ofCelsius(12)))
                .isInstanceOf(OutOfValidityException.class);
    }

    /** Its own error widens the doubt of what is judged by it. */
    @Test
    void aScreenReckonsWithTheErrorOfTheCard() {
        ChargeRow row = ChargeRow.of(OWN, MeteringDevice.FIXED_ORIFICE)
                .suction(362_230, 285)
                .liquid(1_130_700, 312)
                .read(Place.OUTDOOR_AIR, 303)
                .target(6)
                .uncertainty(0, 0)
                .build();
        ScreenedCharge.Level found =
                (ScreenedCharge.Level) ChargeScreen.of(card(ROWS)).screen(row);
        assertThat(found.superheatK())
                .hasValueCloseTo(285 - 279.15, within(card(ROWS).limitOfErrorK()));
        assertThat(found.standardUncertaintyK()).isEqualTo(card(ROWS).limitOfErrorK() / Math.sqrt(3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4,337.90,",
                "4,337.90,;8,387.88,",
                "4,337.90,;4,387.88,;12,443.31,",
                "4,337.90,;8,330.88,;12,443.31,",
                "4,337.90,;8,410.88,;12,443.31,"
            })
    void tooFewTwiceFallingOrOutOfLineIsRefused(String rows) {
        assertThatThrownBy(() -> card(rows.replace(';', '\n') + "\n")).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"4,x,", "4,-3,", "4,337.90,340", "x,337.90,"})
    void aRowThatIsNoneIsNamed(String row) {
        assertThatThrownBy(() -> card(row + "\n" + ROWS))
                .isInstanceOfSatisfying(
                        ResourceFormatException.class, e -> assertThat(e.line()).isEqualTo(2));
    }

    @Test
    void anErrorBelowZeroIsRefused() {
        List<PrintedCard.Point> points = List.of();
        assertThatThrownBy(() -> PrintedCard.of(OWN, "a card", PressureDifference.ofPascals(-1), points))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
