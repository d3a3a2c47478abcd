package org.satline.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;

/** Limits of error by the named standards; arithmetic by hand. */
class InstrumentTest {
    /** EN 837-1: class 1.6, span 0 to 35 bar, limit 0.56 bar, u = 0.56 / sqrt(3) bar. */
    @Test
    void aClassGaugeErrsByAShareOfItsSpan() {
        DialGauge gauge = new DialGauge(
                "dial", GaugeClass.named("en-837-1.6"), GaugePressure.ofBars(0), GaugePressure.ofBars(35));
        Reading<Pressure> reading = gauge.read(GaugePressure.ofBars(24), Atmosphere.standard());
        assertThat(reading.standardUncertainty()).isCloseTo(56_000 / Math.sqrt(3), within(1e-6));
        assertThat(reading.value().pascals()).isCloseTo(2_501_325, within(1e-6));
        assertThatThrownBy(() -> gauge.permittedError(GaugePressure.ofBars(36))).hasMessageContaining("dial");
        assertThatThrownBy(() -> GaugeClass.named("en-837-9")).hasMessageContaining("en-837-1.6");
    }

    /** ASME B40.100 grade B (from memory): 3 % of span in the outer quarters, 2 % in the middle half. */
    @ParameterizedTest
    @CsvSource({"10, 3", "50, 2", "90, 3"})
    void aGradedGaugeIsBetterInTheMiddle(double percentOfScale, double percent) {
        DialGauge gauge =
                new DialGauge("dial", GaugeClass.named("asme-b"), GaugePressure.ofPsig(0), GaugePressure.ofPsig(500));
        assertThat(gauge.permittedError(GaugePressure.ofPsig(5 * percentOfScale))
                        .psi())
                .isCloseTo(5 * percent, within(1e-9));
    }

    /** IEC 60584-1 (from memory): type K class 1, greater of 1.5 K and 0.4 %; IEC 60751 (from memory): class B, 0.30 + 0.005 t. */
    @ParameterizedTest
    @CsvSource({"thermocouple-k-class-1, 40, 1.5", "thermocouple-k-class-1, 500, 2.0", "platinum-class-b, 40, 0.5"})
    void thermometerClassesGiveTheirLimit(String name, double celsius, double limit) {
        assertThat(ThermometerClass.named(name).permittedErrorK(Temperature.ofCelsius(celsius)))
                .isCloseTo(limit, within(1e-9));
    }

    @Test
    void calibrationErrorIsSharedAndContactErrorIsNot() {
        Thermometer thermometer = new Thermometer("T", ThermometerClass.named("platinum-class-a"), 0.1);
        Reading<Temperature> returned = thermometer.read(Temperature.ofCelsius(24), "return");
        Reading<Temperature> supply = thermometer.read(Temperature.ofCelsius(24), "supply");
        // only the two roundings of the display are left in a split, JCGM 100:2008, 5.2.2
        assertThat(returned.budget().minus(supply.budget()).combined())
                .isCloseTo(Math.sqrt(2) * 0.1 / (2 * Math.sqrt(3)), within(1e-12));
        assertThat(thermometer
                        .readOnPipe(Temperature.ofCelsius(24), "suction", 1)
                        .standardUncertainty())
                .isGreaterThan(1 / Math.sqrt(3));
    }

    @Test
    void digitalGaugeAndScale() {
        DigitalGauge gauge = new DigitalGauge("digital", 0.5, PressureDifference.ofPsi(1));
        assertThat(gauge.permittedError(GaugePressure.ofPsig(200)).psi()).isCloseTo(2, within(1e-9));
        WeighingScale scale = new WeighingScale("scale", Mass.ofGrams(10), 0.1);
        double rounding = 0.01 / (2 * Math.sqrt(3));
        assertThat(scale.standardUncertaintyOfChangeKg(Mass.ofKilograms(10), Mass.ofKilograms(12)))
                .isCloseTo(Math.sqrt(0.002 * 0.002 / 3 + 2 * rounding * rounding), within(1e-12));
    }

    /** JCGM 100:2008, 7.2.6: two digits of uncertainty, the value to the same place. */
    @ParameterizedTest
    @CsvSource({"5.8374, 0.6412, 5.8, 1.3", "5.8374, 0.0498, 5.84, 0.10", "123.4, 30, 123, 60"})
    void roundsAsTheGuideAsks(double value, double u, String roundedValue, String expanded) {
        ReportedValue reported = ReportedValue.of(value, u, "K");
        assertThat(reported.value().toPlainString()).isEqualTo(roundedValue);
        assertThat(reported.expanded().toPlainString()).isEqualTo(expanded);
    }
}
