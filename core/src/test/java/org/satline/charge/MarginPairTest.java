package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.margin.MeteringDevice;

/**
 * Superheat and subcooling together: alike for faults other than the charge, opposite for the charge (Rossi and Braun 1997, rule table of
 * the fixed orifice; Li and Braun, virtual refrigerant charge sensor, constants from memory).
 */
class MarginPairTest {
    @ParameterizedTest
    @CsvSource({
        "10, -5, UNDERCHARGE",
        "10, 5, LIQUID_LINE_RESTRICTION",
        "-6, 6, OVERCHARGE",
        "-6, -3, COMPRESSOR_VALVE_LEAKAGE"
    })
    void theirSignsTellTheChargeFromTheOthers(double superheatK, double subcoolingK, Fault fault) {
        MarginPair pair = new MarginPair(
                new Residual(Symptom.SUPERHEAT, superheatK, 0.5), new Residual(Symptom.SUBCOOLING, subcoolingK, 1.5));
        String signs = subcoolingK > 0 ? "+" : "-";
        double low = pair.likelihood(Fault.UNDERCHARGE, "-");
        double high = pair.likelihood(Fault.OVERCHARGE, "+");
        double other = pair.likelihood(Fault.LIQUID_LINE_RESTRICTION, signs);
        if (fault.ofCharge()) {
            assertThat(fault == Fault.UNDERCHARGE ? low : high).isGreaterThan(other);
        } else {
            assertThat(other).isGreaterThan(Math.max(low, high));
        }
    }

    @Test
    void needsBoth() {
        assertThat(MarginPair.of(List.of(new Residual(Symptom.SUPERHEAT, 1, 1))))
                .isEmpty();
    }

    /** Common practice: the rest test tells foreign gas from too much refrigerant. */
    @Test
    void thePressureAtRestSpeaksForOrAgainstForeignGas() {
        List<Residual> residuals =
                List.of(new Residual(Symptom.SUBCOOLING, 4, 0.5), new Residual(Symptom.CONDENSING, 4, 2.5));
        double unread = gas(residuals, Optional.empty());
        assertThat(gas(residuals, Optional.of(new RestEvidence(0, 0.5)))).isLessThan(unread / 2);
        assertThat(gas(residuals, Optional.of(new RestEvidence(3, 0.5)))).isGreaterThan(0.9);
        assertThat(new RestEvidence(3, 0).ratio()).isEqualTo(1);
    }

    private static double gas(List<Residual> residuals, Optional<RestEvidence> rest) {
        return FaultRanking.of(MeteringDevice.EXPANSION_VALVE, residuals, rest).stream()
                .filter(f -> f.fault() == Fault.NON_CONDENSABLE_GAS)
                .mapToDouble(FaultLikelihood::probability)
                .sum();
    }
}
