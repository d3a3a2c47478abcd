package org.satline.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;

class ReadingTest {
    /** U = k u with k = 2 for about 95 % (JCGM 100:2008, 6.2.1 and 6.3.3). */
    @Test
    void aStatedExpandedUncertaintyComesBack() {
        Reading<MassDifference> given = Reading.ofExpanded(MassDifference.ofKilograms(-0.28), 0.02, "scale");
        assertThat(given.standardUncertainty()).isEqualTo(0.01);
        assertThat(given.expandedUncertainty()).isEqualTo(0.02);
        assertThatThrownBy(() -> Reading.ofExpanded(Temperature.ofCelsius(20), -1, "probe"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void independentErrorsAddInSquares() {
        Reading<Temperature> read =
                Reading.of(Temperature.ofCelsius(20), 0.3, "probe").withError("contact", 0.4);
        assertThat(read.standardUncertainty()).isCloseTo(0.5, within(1e-15)); // 3, 4, 5
        assertThat(Reading.exact(Temperature.ofCelsius(20)).expandedUncertainty())
                .isZero();
    }

    @Test
    void instrumentsSayWhatTheyShowed() {
        GaugePressure psig = GaugePressure.ofPsig(118);
        PressureInstrument gauge = new DigitalGauge("digital", 0.5, PressureDifference.ofPsi(1));
        Reading<Pressure> pressure = gauge.read(psig, Atmosphere.standard());
        assertThat(pressure.shown()).contains(new Shown(gauge.name(), psig));
        assertThat(pressure.withError("drift", 10).shown()).isEqualTo(pressure.shown());
    }
}
