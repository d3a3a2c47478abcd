package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

class ChargeScreenTest {
    private static final Refrigerant R410A = Case.R410A.refrigerant();
    private static final ChargeScreen SCREEN = ChargeScreen.of(Case.R410A);

    /** A row like that of the Javadoc: some 6 K of superheat and 8 K of subcooling. */
    private static ChargeRow.Builder row() {
        return ChargeRow.of(R410A, MeteringDevice.EXPANSION_VALVE)
                .suction(915_000, 285.2)
                .liquid(2_618_000, 306.4)
                .read(Place.OUTDOOR_AIR, 302.6)
                .target(5.6);
    }

    private static ScreenReason reason(ChargeRow.Builder row) {
        return ((ScreenedCharge.NoLevel) SCREEN.screen(row.build())).reason();
    }

    @Test
    void aBadRowStopsNoOther() {
        List<ScreenedCharge> answers = SCREEN.screen(List.of(
                row().build(),
                row().read(Place.LIQUID_PRESSURE, -1).build(),
                row().read(Place.LIQUID_PRESSURE, 1e9).build(),
                row().build()));
        assertThat(answers).hasSize(4);
        assertThat(answers.get(0)).isInstanceOf(ScreenedCharge.Level.class).isEqualTo(answers.get(3));
        assertThat(answers.get(1))
                .isEqualTo(new ScreenedCharge.NoLevel(
                        java.util.OptionalDouble.empty(),
                        java.util.OptionalDouble.empty(),
                        ScreenReason.NOT_A_READING,
                        Optional.of(Place.LIQUID_PRESSURE)));
        assertThat(((ScreenedCharge.NoLevel) answers.get(2)).reason()).isEqualTo(ScreenReason.OUT_OF_RANGE);
    }

    @Test
    void aRowOfAnotherRefrigerantIsRefused() {
        Refrigerant other = Catalogue.standard().find("R-32");
        ChargeRow row = ChargeRow.of(other, MeteringDevice.EXPANSION_VALVE)
                .suction(915_000, 285.2)
                .build();
        assertThat(((ScreenedCharge.NoLevel) SCREEN.screen(row)).reason()).isEqualTo(ScreenReason.FOREIGN_REFRIGERANT);
        assertThatThrownBy(() -> row.chargeCase(Case.R410A)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Every place, each with what cannot be a reading. */
    @ParameterizedTest
    @CsvSource({"0", "-1", "Infinity", "-Infinity"})
    void whatCannotBeAReadingIsNone(double si) {
        for (Place place : Place.values()) {
            if (place.kind() == Place.Kind.DROP && si == 0) {
                continue;
            }
            assertThat(reason(row().read(place, si))).as("%s", place).isEqualTo(ScreenReason.NOT_A_READING);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "-0.1, NaN, NaN, NaN",
        "50.1, NaN, NaN, NaN",
        "5, 0, NaN, NaN",
        "5, -1, NaN, NaN",
        "5, Infinity, NaN, NaN",
        "5, 1, -1, 0.1",
        "5, 1, 100, -0.1",
        "5, 1, Infinity, 0.1",
        "5, 1, 100, Infinity"
    })
    void whatCannotBeAQuestionIsNone(double targetK, double toleranceK, double uPa, double uK) {
        assertThat(reason(row().target(targetK).tolerance(toleranceK).uncertainty(uPa, uK)))
                .isEqualTo(ScreenReason.NOT_A_READING);
    }

    @Test
    void permittedErrorsStandInForUncertaintyThatIsNotStated() {
        assertThat(row().build().statesUncertainty()).isFalse();
        assertThat(row().uncertainty(1000, 0.2).build().statesUncertainty()).isTrue();
        assertThat(((ScreenedCharge.Level) SCREEN.screen(row().build())).standardUncertaintyK())
                .isGreaterThan(((ScreenedCharge.Level)
                                SCREEN.screen(row().uncertainty(1000, 0.2).build()))
                        .standardUncertaintyK());
    }

    @Test
    void risksWidenWhatIsDecided() {
        ChargeRow doubtful = row().uncertainty(10_000, 1.2).target(12.5).build();
        ScreenedCharge.Level usual = (ScreenedCharge.Level) SCREEN.screen(doubtful);
        assertThat(usual.level()).isEmpty();
        assertThat(((ScreenedCharge.Level) SCREEN.accepting(0.45, 0.45).screen(doubtful)).level())
                .contains(ChargeLevel.LOW);
    }
}
