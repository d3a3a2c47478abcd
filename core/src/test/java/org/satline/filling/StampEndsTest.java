package org.satline.filling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.satline.filling.Samples.against;

import org.junit.jupiter.api.Test;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;

/** Stamps at the exact ends of what they allow. */
class StampEndsTest {
    private static final FillAssessor ASSESSOR = FillAssessor.standard();

    private static FillAssessment assessed(CylinderStamps stamps, java.time.LocalDate day) {
        return ASSESSOR.assess(Samples.question(stamps, "R-410A").on(day));
    }

    /** 49 CFR 180.205(c) (from memory): no filling after the day on which the retest is due. */
    @Test
    void theDueDayItselfIsStillGood() {
        assertThat(against(assessed(Samples.recovery(), Samples.RETEST))).doesNotContain(FillingCode.RETEST_PAST);
        assertThat(against(assessed(Samples.recovery(), Samples.RETEST.plusDays(1))))
                .contains(FillingCode.RETEST_PAST);
        // no rule lets 15 years pass between two tests: a day beyond was misread
        assertThat(assessed(Samples.recovery(), Samples.RETEST.minusYears(15)))
                .isNotInstanceOf(FillAssessment.Open.class);
        assertThat(assessed(Samples.recovery(), Samples.RETEST.minusYears(15).minusDays(1)))
                .isInstanceOf(FillAssessment.Open.class);
    }

    /** Tare over water capacity of a welded cylinder from 0.3 to 1; common practice, no source. */
    @Test
    void tareAndCapacityBelongTogether() {
        double capacity = 16;
        for (double inside : new double[] {0.3 * capacity, capacity}) {
            assertThat(against(assessed(with(inside, capacity), Samples.TODAY)))
                    .doesNotContain(FillingCode.TARE_MISFITS_CAPACITY);
        }
        for (double outside : new double[] {Math.nextDown(0.3 * capacity) - 1e-9, capacity + 1e-9}) {
            assertThat(against(assessed(with(outside, capacity), Samples.TODAY)))
                    .contains(FillingCode.TARE_MISFITS_CAPACITY);
        }
    }

    private static CylinderStamps with(double tareKg, double capacityKg) {
        return Samples.recovery()
                .with(Stamp.TARE, Mass.ofKilograms(tareKg))
                .with(Stamp.WATER_CAPACITY, Mass.ofKilograms(capacityKg));
    }

    /** 49 CFR 178.35(f): one pressure within the mark and another one beside it contradict each other; 1 psi is their rounding. */
    @Test
    void theServicePressureIsThatOfTheMark() {
        assertThat(against(assessed(service(400.99), Samples.TODAY)))
                .doesNotContain(FillingCode.SERVICE_PRESSURE_MISFITS_MARK);
        assertThat(against(assessed(service(401.01), Samples.TODAY)))
                .contains(FillingCode.SERVICE_PRESSURE_MISFITS_MARK);
        assertThat(against(assessed(service(398.99), Samples.TODAY)))
                .contains(FillingCode.SERVICE_PRESSURE_MISFITS_MARK);
        CylinderStamps tested = service(400).with(Stamp.TEST_PRESSURE, GaugePressure.ofPsig(400));
        assertThat(against(assessed(tested, Samples.TODAY))).doesNotContain(FillingCode.TEST_BELOW_SERVICE);
        assertThat(against(assessed(tested.with(Stamp.TEST_PRESSURE, GaugePressure.ofPsig(399.99)), Samples.TODAY)))
                .contains(FillingCode.TEST_BELOW_SERVICE);
    }

    private static CylinderStamps service(double psig) {
        return Samples.recovery().with(Stamp.SERVICE_PRESSURE, GaugePressure.ofPsig(psig));
    }
}
