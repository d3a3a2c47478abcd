package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AtmosphereTest {

    @Test
    void standardIsTheSeaLevelOfTheFormula() {
        // 10th CGPM (1954): 101 325 Pa
        assertThat(Atmosphere.standard().pressure()).isEqualTo(Pressure.ofPascals(101325));
        assertThat(Atmosphere.atAltitude(Length.ofMetres(0)).pressure())
                .isEqualTo(Atmosphere.standard().pressure());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-500.01, 11000.01, 1e9, -1e9})
    void refusesAltitudesOutsideTheLayer(double metres) {
        assertThatThrownBy(() -> Atmosphere.atAltitude(Length.ofMetres(metres)))
                .isInstanceOfSatisfying(OutOfValidityException.class, e -> {
                    assertThat(e.low()).isEqualTo(-500);
                    assertThat(e.high()).isEqualTo(11000);
                    assertThat(e.value()).isEqualTo(metres);
                    assertThat(e.what()).isEqualTo("altitude");
                    assertThat(e.unit()).isEqualTo("m");
                })
                .hasMessageContaining("altitude " + metres + " m is outside [-500.0, 11000.0] m of")
                .hasMessageContaining("ISO 2533");
    }

    @Test
    void takesTheEndsOfItsRanges() {
        assertThat(Atmosphere.atAltitude(Length.ofMetres(-500)).pressure()).isGreaterThan(Pressure.ofKilopascals(107));
        assertThat(Atmosphere.atAltitude(Length.ofMetres(11000)).pressure()).isLessThan(Pressure.ofKilopascals(23));
        assertThat(Atmosphere.measured(Pressure.ofKilopascals(50)).pressure()).isEqualTo(Pressure.ofKilopascals(50));
        assertThat(Atmosphere.measured(Pressure.ofKilopascals(110)).pressure()).isEqualTo(Pressure.ofKilopascals(110));
    }

    @ParameterizedTest
    @ValueSource(strings = {"49.9 kPa", "110.1 kPa", "14.7 kPa", "0 Pa", "2 atm"})
    void refusesImplausibleBarometers(String text) {
        assertThatThrownBy(() -> Atmosphere.measured(Pressure.parse(text)))
                .isInstanceOf(OutOfValidityException.class)
                .hasMessageContaining("[50.0, 110.0] kPa of plausible station pressures; check the unit");
    }

    @Test
    void tellsWhereItComesFrom() {
        assertThat(Atmosphere.standard()).hasToString("standard atmosphere of 101.325 kPa");
        assertThat(Atmosphere.measured(Pressure.ofKilopascals(98.2)).description())
                .isEqualTo("measured atmosphere of 98.2 kPa");
        assertThat(Atmosphere.atAltitude(Length.ofMetres(1000)).description())
                .isEqualTo("standard atmosphere at 1000 m (ISO 2533) of 89.8763 kPa");
    }

    @Test
    void equalsByPressureAndOrigin() {
        Atmosphere measured = Atmosphere.measured(Pressure.ofPascals(101325));
        assertThat(measured)
                .isEqualTo(Atmosphere.measured(Pressure.ofPascals(101325)))
                .hasSameHashCodeAs(Atmosphere.measured(Pressure.ofPascals(101325)))
                .isNotEqualTo(Atmosphere.standard());
    }
}
