package org.satline.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.charge.belief.ChargeEstimate;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;

/** The response before any step; constants of Li and Braun from memory. */
class ExpectedResponseTest {
    /** k_ch = 5.6 K / (0.25 x 0.73) = 30.7 K; at a fixed orifice 30.7 / (sqrt 2 x 0.4) = 54.2 K, by hand. */
    @ParameterizedTest
    @CsvSource({"EXPANSION_VALVE, 30.7", "FIXED_ORIFICE, 54.2"})
    void fittedConstantsAreTakenAsTheyAre(MeteringDevice metering, double kelvins) {
        ChargeEstimate.Constants constants = new ChargeEstimate.Constants(0.4, 5.6 / (0.25 * 0.73), true);
        ExpectedResponse fitted = ExpectedResponse.fitted(metering, constants);
        assertThat(fitted.kelvins()).isCloseTo(kelvins, within(0.05)); // half of the last digit worked
        assertThat(fitted.kelvins(-3)).isEqualTo(fitted.kelvins(3));
    }

    @Test
    void refusesConstantsThatWereNotFitted() {
        assertThatThrownBy(() ->
                        ExpectedResponse.fitted(MeteringDevice.EXPANSION_VALVE, ChargeEstimate.Constants.typical(5.6)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("fitted on this unit");
        assertThatThrownBy(() -> StepAdvisor.fitted(
                        Mass.ofKilograms(3), MeteringDevice.EXPANSION_VALVE, 1, ChargeEstimate.Constants.typical(5.6)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ExpectedResponse.fitted(
                        MeteringDevice.FIXED_ORIFICE, new ChargeEstimate.Constants(0, 30, true)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("above 0");
    }

    @Test
    void subcoolingLevelsOffEvenlyAcrossTheBand() {
        ExpectedResponse typical = ExpectedResponse.typical(MeteringDevice.EXPANSION_VALVE);
        assertThat(typical.kelvins(-5)).isEqualTo(typical.kelvins(-1)).isGreaterThan(typical.kelvins(0));
        assertThat(typical.kelvins(5)).isEqualTo(typical.kelvins(1)).isLessThan(typical.kelvins(0));
        assertThat(typical.kelvins(1e-9)).isCloseTo(typical.kelvins(-1e-9), within(1e-6));
    }

    /** The typical response lies between those of the typical constants at rated subcoolings of 4 and 8 K (22 to 44 K; 27 to 110 K). */
    @ParameterizedTest
    @EnumSource(MeteringDevice.class)
    void typicalResponseIsOfTheOrderOfTheTypicalConstants(MeteringDevice metering) {
        boolean valve = metering == MeteringDevice.EXPANSION_VALVE;
        double least = 4 / (0.25 * 0.73) / (valve ? 1 : 2 * 0.4);
        double most = 8 / (0.25 * 0.73) / (valve ? 1 : 0.4);
        assertThat(ExpectedResponse.typical(metering).kelvins()).isBetween(least, most);
    }
}
