package org.satline.cylinder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.satline.filling.Samples.curve;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.cylinder.ContentsFinding.Outcome;
import org.satline.explanation.Figure;
import org.satline.filling.Samples;
import org.satline.measurement.Reading;
import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

class ContentsCheckTest {
    private static final List<SaturationCurve> OTHERS = Stream.of(
                    "R-22", "R-134a", "R-407C", "R-410A", "R-404A", "R-32")
            .map(Samples::curve)
            .toList();

    private static ContentsReading reading(double kilopascals, double celsius, double gaugeKilopascals) {
        return new ContentsReading(
                Reading.ofExpanded(Pressure.ofKilopascals(kilopascals), 1000 * gaugeKilopascals, "gauge"),
                Reading.ofExpanded(Temperature.ofCelsius(celsius), 0.2, "thermometer"),
                true,
                Optional.empty());
    }

    private static ContentsReading weighed(ContentsReading it, double density) {
        return new ContentsReading(
                it.pressure(), it.temperature(), it.settled(), Optional.of(Density.ofKilogramsPerCubicMetre(density)));
    }

    /** R-134a at 25 degC has about 665 kPa; 1.5 % of non-condensables makes about 10 kPa: arithmetic on AHRI 700, Dalton's law. */
    @Test
    void aServiceGaugeCannotResolveTheLimitAndAFineOneCan() {
        SaturationCurve r134a = curve("R-134a");
        ContentsFinding coarse = ContentsCheck.check(r134a, List.of(), reading(666, 25, 15));
        assertThat(coarse.outcome()).isEqualTo(Outcome.CONSISTENT);
        assertThat(coarse.limitResolvable()).isFalse();
        assertThat(coarse.cautions())
                .filteredOn(each -> each.code() == CylinderCode.AIR_NOT_RESOLVED)
                .singleElement()
                .satisfies(
                        each -> assertThat(((Figure.Amount) each.figure("rise").orElseThrow())
                                        .value()
                                        .si())
                                .isCloseTo(10_100, within(100.0))); // "about 10 kPa"
        ContentsFinding fine = ContentsCheck.check(r134a, List.of(), reading(666, 25, 1));
        assertThat(fine.limitResolvable()).isTrue();
    }

    /** The limit itself: p = p_sat / (1 - 0.015) = 1.0152 p_sat. */
    @Test
    void theMoleFractionFollowsDalton() {
        SaturationCurve r134a = curve("R-134a");
        double saturation = r134a.bubblePressurePa(298.15) / 1000;
        ContentsFinding finding = ContentsCheck.check(r134a, List.of(), reading(saturation / 0.985, 25, 1));
        assertThat(finding.outcome()).isEqualTo(Outcome.NON_CONDENSABLES_SUSPECTED);
        assertThat(finding.nonCondensables()).isCloseTo(0.015, within(1e-9)); // round-off
        assertThat(finding.limitResolvable()).isTrue();
        assertThat(finding.cautions().get(0).code()).isEqualTo(CylinderCode.AIR_SUSPECTED);
    }

    @Test
    void anotherRefrigerantIsRankedByHowWellItFits() {
        double p = curve("R-410A").bubblePressurePa(298.15) / 1000;
        ContentsFinding finding = ContentsCheck.check(curve("R-22"), OTHERS, reading(p, 25, 20));
        assertThat(finding.outcome()).isEqualTo(Outcome.ANOTHER_MORE_LIKELY);
        assertThat(finding.candidates().get(0).designation()).isEqualTo("R-410A");
        assertThat(finding.candidates())
                .noneMatch(candidate -> candidate.designation().equals("R-22"));
        assertThat(finding.cautions().get(0).code()).isEqualTo(CylinderCode.ANOTHER_LIKELIER);
    }

    /** R-407C: bubble pressure about 1186 kPa, dew pressure about 1020 kPa at 25 degC; between them the level of the liquid decides. */
    @Test
    void aBlendFitsBetweenDewAndBubble() {
        ContentsFinding finding = ContentsCheck.check(curve("R-407C"), OTHERS, reading(1100, 25, 5));
        assertThat(finding.outcome()).isEqualTo(Outcome.CONSISTENT);
        double r22 = curve("R-22").bubblePressurePa(298.15) / 1000;
        ContentsFinding close = ContentsCheck.check(curve("R-407C"), OTHERS, reading(r22, 25, 5));
        assertThat(close.candidates())
                .anyMatch(candidate -> candidate.designation().equals("R-22"));
    }

    @Test
    void belowSaturationTheLiquidIsGoneUnlessTheScaleSaysOtherwise() {
        SaturationCurve r32 = curve("R-32");
        ContentsReading low = reading(500, 25, 5);
        assertThat(ContentsCheck.check(r32, List.of(), low).outcome()).isEqualTo(Outcome.LIQUID_GONE);
        assertThat(ContentsCheck.check(r32, List.of(), weighed(low, 10)).outcome())
                .isEqualTo(Outcome.LIQUID_GONE);
        ContentsFinding heavy = ContentsCheck.check(r32, List.of(), weighed(low, 400));
        assertThat(heavy.outcome()).isEqualTo(Outcome.NOT_SETTLED);
        assertThat(heavy.cautions().get(0).code()).isEqualTo(CylinderCode.COLDER_THAN_READ);
    }

    @Test
    void anUnsettledCylinderSaysNothing() {
        ContentsReading it = reading(666, 25, 5);
        ContentsReading unsettled = new ContentsReading(it.pressure(), it.temperature(), false, Optional.empty());
        assertThat(ContentsCheck.check(curve("R-134a"), OTHERS, unsettled).outcome())
                .isEqualTo(Outcome.NOT_SETTLED);
    }

    @Test
    void uncertaintiesHaveAnAmount() {
        assertThatThrownBy(() -> reading(666, 25, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> reading(0, 25, 1)).hasMessageContaining("not above zero");
    }
}
