package org.satline.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;

/** Readings by place: each of the type of its kind, and found under its word. */
class SystemReadingsTest {
    private static final Reading<Pressure> PRESSURE = Reading.exact(Pressure.ofKilopascals(900));
    private static final Reading<Temperature> TEMPERATURE = Reading.exact(Temperature.ofCelsius(12));
    private static final Reading<PressureDifference> DROP = Reading.exact(PressureDifference.ofKilopascals(15));

    private static Reading<?> fitting(Place place) {
        return switch (place.kind()) {
            case PRESSURE -> PRESSURE;
            case PIPE, AIR -> TEMPERATURE;
            case DROP -> DROP;
        };
    }

    @ParameterizedTest
    @EnumSource(Place.class)
    void aPlaceTakesItsKindOnlyAndIsFoundByItsWord(Place place) {
        assertThat(SystemReadings.builder().put(place, fitting(place)).build().all())
                .containsOnlyKeys(place);
        Reading<?> other = place.kind() == Place.Kind.PRESSURE ? TEMPERATURE : PRESSURE;
        assertThatThrownBy(() -> SystemReadings.builder().put(place, other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(place.field());
        assertThat(Place.of(place.field())).isEqualTo(Optional.of(place));
        assertThat(place.path()).isEqualTo("readings." + place.field());
    }

    /** The example of a page is a text that is read. */
    @ParameterizedTest
    @EnumSource(Place.class)
    void theExampleOfAPlaceIsReadable(Place place) {
        switch (place.kind()) {
            case PRESSURE ->
                assertThat(Pressure.parse(place.example(), Atmosphere.standard()))
                        .isNotNull();
            case PIPE, AIR -> assertThat(Temperature.parse(place.example())).isNotNull();
            case DROP -> assertThat(PressureDifference.parse(place.example())).isNotNull();
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Place.class,
            names = {"SUCTION_DROP", "LIQUID_DROP"})
    void aDropBelowZeroIsRefusedAndAMissingOneIsZero(Place place) {
        assertThatThrownBy(
                        () -> SystemReadings.builder().put(place, Reading.exact(PressureDifference.ofKilopascals(-1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(place.field())
                .hasMessageContaining("below zero");
        assertThat(SystemReadings.builder().build().drop(place)).isEqualTo(PressureDifference.ZERO);
    }

    @Test
    void readingsDoNotChangeWithTheirBuilder() {
        SystemReadings.Builder builder = SystemReadings.builder().suction(PRESSURE, TEMPERATURE);
        SystemReadings readings = builder.build();
        builder.without(Place.SUCTION_LINE);
        assertThat(readings.temperature(Place.SUCTION_LINE)).isPresent();
        assertThat(readings.toBuilder().build()).isEqualTo(readings).hasSameHashCodeAs(readings);
        assertThatThrownBy(() -> readings.pressure(Place.SUCTION_LINE)).isInstanceOf(IllegalArgumentException.class);
    }
}
