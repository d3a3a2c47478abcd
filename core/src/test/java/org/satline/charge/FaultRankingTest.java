package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.margin.MeteringDevice;

/** Rows of the rule table of Rossi and Braun 1997, HVAC&R Research 3(1):19-37: each pattern must lead to its own fault. */
class FaultRankingTest {
    @ParameterizedTest
    @CsvSource({
        "UNDERCHARGE, -+--+--",
        "COMPRESSOR_VALVE_LEAKAGE, +------",
        "LIQUID_LINE_RESTRICTION, -+-++--",
        "CONDENSER_FOULING, +-+-++-",
        "LOW_EVAPORATOR_AIRFLOW, ------+",
    })
    void aPrintedPatternLeadsToItsFault(Fault fault, String signs) {
        List<Residual> residuals = new ArrayList<>();
        for (Symptom symptom : Symptom.values()) { // declared in the order of the printed columns
            double size = symptom.typicalK() * (signs.charAt(residuals.size()) == '+' ? 1 : -1);
            residuals.add(new Residual(symptom, size, symptom.noneK() / 2));
        }
        List<FaultLikelihood> ranking = FaultRanking.of(MeteringDevice.FIXED_ORIFICE, residuals);
        assertThat(ranking.get(0).fault()).isEqualTo(fault);
        assertThat(ranking.get(0).readingsAgainst()).isEmpty();
        assertThat(ranking.stream().mapToDouble(FaultLikelihood::probability).sum())
                .isCloseTo(1, within(1e-12));
    }

    /** Subcooling separates a restriction from a leak where superheat is high in both. */
    @ParameterizedTest
    @CsvSource({"-4, UNDERCHARGE", "6, LIQUID_LINE_RESTRICTION"})
    void subcoolingSeparatesLeakAndRestriction(double subcoolingK, Fault fault) {
        List<FaultLikelihood> ranking = FaultRanking.of(
                MeteringDevice.FIXED_ORIFICE,
                List.of(new Residual(Symptom.SUPERHEAT, 8, 0.5), new Residual(Symptom.SUBCOOLING, subcoolingK, 0.8)));
        assertThat(ranking.get(0).fault()).isEqualTo(fault);
    }
}
