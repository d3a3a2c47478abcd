package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.charge.margin.Margins;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** First-order propagation (JCGM 100:2008) against Monte Carlo (JCGM 101:2008) through the same saturation curve. */
class PropagationTest {
    private static final int TRIALS = 4000;

    @ParameterizedTest
    @ValueSource(strings = {"R-410A", "R-22", "R-407C"})
    void agreesWithMonteCarlo(String designation) {
        SaturationCurve curve = SaturationCurves.solving(Catalogue.standard().find(designation));
        double suctionPa = curve.dewPressurePa(278.15);
        double liquidPa = curve.bubblePressurePa(318.15);
        double uPa = 14_000;
        double uK = 0.4;
        SystemReadings readings = SystemReadings.builder()
                .suction(
                        Reading.of(Pressure.ofPascals(suctionPa), uPa, "gauge"),
                        Reading.of(Temperature.ofKelvins(284), uK, "thermometer"))
                .liquid(
                        Reading.of(Pressure.ofPascals(liquidPa), uPa, "gauge"),
                        Reading.of(Temperature.ofKelvins(312), uK, "thermometer"))
                .build();
        Margins margins = Margins.of(curve, readings);
        SummaryStatistics superheat = new SummaryStatistics();
        SummaryStatistics sum = new SummaryStatistics();
        Random random = new Random(101);
        for (int i = 0; i < TRIALS; i++) {
            double pressureError = uPa * random.nextGaussian();
            double temperatureError = uK * random.nextGaussian();
            double sh = 284 + temperatureError - curve.dewTemperatureK(suctionPa + pressureError);
            double sc = curve.bubbleTemperatureK(liquidPa + pressureError) - 312 - temperatureError;
            superheat.addValue(sh);
            sum.addValue(sh + sc);
        }
        // the standard deviation of 4000 trials has a relative standard error of 1 / sqrt(2 * 4000) = 1.1 %; three of
        // them, and
        // 1 % for the curvature of the line over 14 kPa
        double relative = 0.045;
        double u = margins.superheat().orElseThrow().standardUncertaintyK();
        assertThat(u).isCloseTo(superheat.getStandardDeviation(), within(relative * u));
        // one gauge and one thermometer for both: the thermometer cancels in the sum, the gauge nearly does
        double common = margins.superheat()
                .orElseThrow()
                .budget()
                .plus(margins.subcooling().orElseThrow().budget())
                .combined();
        assertThat(common).isCloseTo(sum.getStandardDeviation(), within(relative * common));
    }
}
