package org.satline.refrigerant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.refrigerant.GlobalWarmingPotential.Report;

@Tag("reference")
class WarmingPotentialReferenceTest {
    private static final Catalogue CATALOGUE = Catalogue.standard();

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            # values used with Regulation (EU) No 517/2014 (annexes I and IV: IPCC AR4, blends by mass), from memory
            R-23,   14800
            R-32,   675
            R-125,  3500
            R-134a, 1430
            R-143a, 4470
            R-404A, 3922
            R-407A, 2107
            R-407C, 1774
            R-407F, 1825
            R-410A, 2088
            R-507A, 3985
            R-508B, 13396
            """)
    void agreesWithTheRoundedValueOfTheRegulation(String designation, int printed) {
        GlobalWarmingPotential gwp = CATALOGUE.find(designation).gwp(Report.AR4).orElseThrow();
        assertThat(gwp.value()).isCloseTo(printed, within(0.5)); // whole numbers are printed
        assertThat(gwp.isUpperBound()).isFalse();
    }

    @Test
    void blendIsLabelledAsComputedAndSubstanceAsPublished() {
        assertThat(CATALOGUE.find("R-410A").gwp(Report.AR5).orElseThrow().basis())
                .contains("computed");
        assertThat(CATALOGUE.find("R-32").gwp(Report.AR5).orElseThrow().basis()).doesNotContain("computed");
    }

    @Test
    void boundOfAComponentMakesABoundOfTheBlend() {
        // IPCC AR5 WG1 (2013) table 8.A.1 prints "<1" for R-1234yf
        assertThat(CATALOGUE.find("R-1234yf").gwp(Report.AR5).orElseThrow().isUpperBound())
                .isTrue();
        GlobalWarmingPotential blend = CATALOGUE.find("R-454B").gwp(Report.AR5).orElseThrow();
        assertThat(blend.isUpperBound()).isTrue();
        assertThat(blend.value()).isCloseTo(0.689 * 677 + 0.311, within(1e-9));
    }

    @Test
    void blendWithAnUnknownComponentHasNone() {
        // no AR5 value of R-1336mzz(E) is on record here
        assertThat(CATALOGUE.find("R-471A").gwp(Report.AR5)).isEmpty();
    }
}
