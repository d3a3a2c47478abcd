package org.satline.program.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.satline.program.drawing.Series;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.visit.VisitReporter;

class CylinderPictureTest {
    private static SaturationCurve curve(String name) {
        return SaturationCurves.of(Catalogue.standard().find(name));
    }

    private static Series series(Picture picture, String name) {
        return Optional.ofNullable(picture.chart().series().get(name)).orElseThrow();
    }

    @Test
    void anOverfilledCylinderIsShownLiquidFullWithItsCaution() {
        Picture picture = CylinderPicture.of(
                curve("R-134a"),
                FilledCylinder.stamped(Mass.ofPounds(47.7), Mass.ofPounds(53), Optional.empty()),
                PictureUnits.SI);
        Series level = series(picture, "liquid level (right)");
        assertThat(level.points().y()).contains(100.0);
        // 53 lb in 47.7 lb of water at 999 kg/m3 (60 degF) is 1110 kg/m3; saturated liquid of R-134a has 1102.3 at 50
        // degC and 1146.7 at 40 degC
        // (ASHRAE Handbook Fundamentals, from memory), so it is full between the two
        Series full = series(picture, "full");
        assertThat(full.points().x()[0]).isBetween(40.0, 50.0);
        assertThat(String.join("\n", picture.notes())).contains("CAUTION: LIQUID-FULL", "local codes");
    }

    @Test
    void aboveTheCriticalTemperatureThereIsNoLevelToDraw() {
        Picture picture = CylinderPicture.of(
                curve("R-744"),
                FilledCylinder.stamped(Mass.ofKilograms(13.4), Mass.ofKilograms(9), Optional.empty()),
                PictureUnits.SI);
        // critical temperature 304.1282 K = 30.978 degC (Span and Wagner 1996)
        assertThat(Arrays.stream(
                        series(picture, "liquid level (right)").points().x()))
                .allMatch(t -> t < 30.979);
        assertThat(Arrays.stream(series(picture, "pressure (left)").points().x()))
                .anyMatch(t -> t > 35);
        assertThat(String.join("\n", picture.notes())).contains("CAUTION: LIQUID-FULL");
    }

    @Test
    void aMarkAboveThePressuresStaysInThePicture() {
        Picture picture = CylinderPicture.of(
                curve("R-134a"),
                FilledCylinder.stamped(
                        Mass.ofKilograms(20), Mass.ofKilograms(6), Optional.of(Pressure.ofKilopascals(2857))),
                PictureUnits.SI);
        double mark = series(picture, "service pressure").points().y()[0];
        assertThat(picture.chart().y().high()).isGreaterThan(1.1 * mark);
    }

    @Test
    void theCylinderOfAVisitStandsWhereItsReportSays() {
        var report = VisitReporter.report(PictureTest.sample());
        Picture picture = CylinderPicture.of(report, PictureUnits.US).orElseThrow();
        Series now = series(picture, "now");
        var vessel = report.connected().orElseThrow().vessel().orElseThrow().now();
        assertThat(now.points().x()[0]).isEqualTo(vessel.temperature().fahrenheit());
        assertThat(now.points().y()[0]).isEqualTo(vessel.pressure().psia());
    }
}
