package org.satline.filling;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.explanation.Finding;

/** ADR 2025, 4.1.4.1, P200(5)(c): for low-pressure liquefied gases the test pressure is at least 10 bar (1 MPa), gauge. */
class LeastTestPressureTest {
    private static final FillAssessor ASSESSOR = FillAssessor.standard();

    @ParameterizedTest
    @CsvSource({"10, true, 0", "9.99, false, -1000", "12, true, 200000", "1, false, -900000"})
    void tenBarAndNotAPascalLess(double bar, boolean passed, double marginPa) {
        FillAssessment assessment = ASSESSOR.assess(Samples.question(Samples.european(bar), "R-600a")
                .under(ASSESSOR.rules().jurisdiction("adr")));
        RuleOutcome outcome = assessment.answers().outcomeOf(ASSESSOR.rules().rule("test-pressure-10bar"));
        assertThat(outcome).isInstanceOfSatisfying(RuleOutcome.PressureTest.class, test -> {
            assertThat(test.passed()).isEqualTo(passed);
            assertThat(test.margin().pascals())
                    .isCloseTo(marginPa, org.assertj.core.data.Offset.offset(1e-6)); // round-off
        });
        assertThat(assessment.objections().stream().map(Finding::code).anyMatch(FillingCode.PRESSURE_TOO_LOW::equals))
                .isEqualTo(!passed);
    }
}
