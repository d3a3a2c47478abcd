package org.satline.program.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.equilibrium.FluidModel;
import org.satline.json.JsonFields;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.program.drawing.Series;
import org.satline.program.drawing.SvgWriter;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.visit.Visit;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Language;

class PictureTest {
    private static final Path SAMPLE = Path.of("samples", "boathouse.json");
    private static final double ZERO_CELSIUS_K = 273.15;

    static Visit sample() {
        try {
            return VisitFile.read(JsonFields.read(Files.readString(SAMPLE)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static SaturationCurve curve(String name) {
        return SaturationCurves.of(Catalogue.standard().find(name));
    }

    private static Series series(Picture picture, String name) {
        return Optional.ofNullable(picture.chart().series().get(name)).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-410A", "R-407C", "R-744", "R-134a"})
    void linesOfPressureAndTemperatureHoldTheLibrarysNumbers(String name) {
        SaturationCurve curve = curve(name);
        Series dew = series(
                PressureTemperaturePicture.of(curve, PictureUnits.SI),
                curve.refrigerant().isBlend() ? "dew point" : "boiling and condensing");
        double[] t = dew.points().x();
        assertThat(t).hasSizeGreaterThan(100);
        for (int i = 0; i < t.length; i += 13) {
            // the picture goes through degrees and back: some roundings of a double
            assertThat(dew.points().y()[i])
                    .isCloseTo(
                            curve.dewPressurePa(t[i] + ZERO_CELSIUS_K) / 1000,
                            within(1e-9 * dew.points().y()[i]));
        }
    }

    @Test
    void theLineOfR134aPassesThroughAPublishedPoint() {
        // ASHRAE Handbook Fundamentals 2021 (SI), ch. 30: R-134a saturated at -20 degC, 132.73 kPa; on a line between
        // points 0.7 K apart
        Series line = series(PressureTemperaturePicture.of(curve("R-134a"), PictureUnits.SI), "boiling and condensing");
        int i = 0;
        while (line.points().x()[i + 1] < -20) {
            i++;
        }
        double share = (-20 - line.points().x()[i])
                / (line.points().x()[i + 1] - line.points().x()[i]);
        double p = line.points().y()[i]
                + share * (line.points().y()[i + 1] - line.points().y()[i]);
        // a chord lies above the line by p'' d^2 / 8, which is 0.02 kPa here
        assertThat(p).isCloseTo(132.73, within(0.03));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void readingsStandAtTheirPlaceWithTheirSuperheat(UnitSystem system) {
        PictureUnits units = PictureUnits.of(system, Language.ENGLISH);
        Visit visit = sample();
        Picture picture = PressureTemperaturePicture.of(curve("R-410A"), visit.readings(), units)
                .orElseThrow();
        Series suction = series(picture, "suction line");
        boolean us = system == UnitSystem.US;
        // 53 degF = 11.667 degC; 118 psig + 97.656 kPa = 911.24 kPa = 132.16 psia, by hand
        assertThat(suction.points().x()[0]).isCloseTo(us ? 53 : 11.667, within(0.001));
        assertThat(suction.points().y()[0]).isCloseTo(us ? 132.16 : 911.24, within(0.01));
        assertThat(picture.notes().get(0)).startsWith(us ? "superheat 13.4 \u00b0F" : "superheat 7.4 K");
    }

    @Test
    void theDomeAndTheIsothermsHoldTheLibrarysNumbers() {
        Picture picture = PressureEnthalpyPicture.of(curve("R-407C"), PictureUnits.SI);
        FluidModel model = FluidModel.of(Catalogue.standard().find("R-407C"));
        Series liquid = series(picture, "liquid");
        for (int i = 0; i < liquid.points().x().length - 1; i += 20) {
            double p = liquid.points().y()[i] * 1000;
            assertThat(model.bubbleAtPressure(p).saturated().specificEnthalpy() / 1000)
                    .isCloseTo(liquid.points().x()[i], within(1e-5));
        }
        Series isotherms = series(picture, "isotherms, \u00b0C");
        double[] h = isotherms.points().x();
        double[] p = isotherms.points().y();
        int checked = 0;
        for (int i = 0; i < h.length; i += 7) {
            if (!Double.isNaN(p[i])) {
                double t = model.states()
                                .atPressureAndEnthalpy(p[i] * 1000, h[i] * 1000)
                                .temperatureK()
                        - ZERO_CELSIUS_K;
                // every 20 degrees; flat lines near the critical point leave the solver some 1e-4 K
                assertThat(t / 20).isCloseTo(Math.rint(t / 20), within(1e-3));
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(50);
    }

    @Test
    void theCycleOfAVisitHasItsCornersWhereTheReadingsAre() {
        Visit visit = sample();
        Picture picture = PressureEnthalpyPicture.of(curve("R-410A"), visit.readings(), PictureUnits.SI);
        FluidModel model = FluidModel.of(visit.system().refrigerant());
        Series cycle = series(picture, "cycle");
        double[] h = cycle.points().x();
        double[] p = cycle.points().y();
        assertThat(h).hasSize(5);
        assertThat(h[0]).isCloseTo(model.stateAt(284.816667, 911_237).specificEnthalpy() / 1000, within(1e-3));
        assertThat(h[2]).isCloseTo(model.stateAt(309.816667, 2_772_825).specificEnthalpy() / 1000, within(1e-3));
        assertThat(h[3]).isEqualTo(h[2]);
        assertThat(p[3]).isEqualTo(p[0]);
        assertThat(p[1]).isEqualTo(p[2]);
        assertThat(series(picture, "read").points().x()).hasSize(2);
        assertThat(String.join("\n", picture.notes()))
                .contains("1 suction line", "(read)", "constant entropy", "Assumed: no heat is lost");
    }

    @Test
    void aDischargeTemperatureThatWasReadIsDrawnAsRead() {
        Visit visit = sample();
        Picture picture = PressureEnthalpyPicture.of(
                curve("R-410A"),
                visit.readings().toBuilder()
                        .put(Place.DISCHARGE_LINE, Reading.exact(Temperature.ofCelsius(82)))
                        .build(),
                PictureUnits.SI);
        assertThat(series(picture, "read").points().x()).hasSize(3);
        assertThat(String.join("\n", picture.notes())).contains("82.0 \u00b0C").doesNotContain("constant entropy");
    }

    @Test
    void readingsThatDescribeNoCycleSayWhy() {
        Visit visit = sample();
        Picture wet = PressureEnthalpyPicture.of(
                curve("R-410A"),
                visit.readings().toBuilder()
                        .put(Place.SUCTION_LINE, Reading.exact(Temperature.ofCelsius(4.2)))
                        .build(),
                PictureUnits.SI);
        assertThat(wet.chart().series()).doesNotContainKey("cycle");
        assertThat(String.join("\n", wet.notes())).contains("No cycle is drawn: ");
    }

    @Test
    void glideHoldsTheLibrarysNumbersAndIsRefusedForOneSubstance() {
        SaturationCurve curve = curve("R-407C");
        Series glide = series(GlidePicture.of(curve, PictureUnits.US), "glide at one pressure");
        for (int i = 0; i < glide.points().x().length; i += 25) {
            double pascals = Math.min(
                    Pressure.ofPsia(glide.points().x()[i]).pascals(),
                    Math.min(
                            curve.bubblePressureRange().high(),
                            curve.dewPressureRange().high()));
            assertThat(glide.points().y()[i])
                    .isCloseTo(
                            1.8 * (curve.dewTemperatureK(pascals) - curve.bubbleTemperatureK(pascals)), within(1e-4));
        }
        assertThatThrownBy(() -> GlidePicture.of(curve("R-134a"), PictureUnits.SI))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("has no glide");
    }

    @Test
    void theRefrigerantOfAnyDomeReachesItsEnd() {
        for (String name : List.of("R-718", "R-455A", "R-1234yf", "R-717")) {
            Series dome = series(PressureEnthalpyPicture.of(curve(name), PictureUnits.US), "liquid");
            FluidModel model = FluidModel.of(Catalogue.standard().find(name));
            double[] p = dome.points().y();
            assertThat(Pressure.ofPsia(p[p.length - 1]).pascals())
                    .isCloseTo(model.bubblePressureRange().high(), withinPercentage(0.01));
        }
    }

    @Test
    void errorsOfTheTableStayBelowTheBoundDrawn() {
        Picture picture = TableErrorPicture.of(Catalogue.standard().find("R-32"), PictureUnits.SI);
        for (double error : series(picture, "dew point").points().y()) {
            assertThat(error).isBetween(0.0, 1e-6);
        }
        assertThat(series(picture, "certified bound").points().y()).contains(1e-8, 1e-6);
    }

    @Test
    void eachPictureNamesUnitsSourceAndData() throws Exception {
        for (Picture picture : List.of(
                PressureTemperaturePicture.of(curve("R-744"), PictureUnits.SI),
                PressureEnthalpyPicture.of(curve("R-744"), PictureUnits.SI),
                GlidePicture.of(curve("R-407C"), PictureUnits.SI))) {
            assertThat(picture.chart().x().title()).containsPattern(", (\u00b0C|kPa|kJ/kg)$");
            assertThat(picture.chart().y().title()).containsPattern(", (K|kPa)$");
            Svg svg = Svg.of(SvgWriter.file(picture.sheet()));
            assertThat(svg.words()).contains("Source: ", "J. Phys. Chem. Ref. Data", "data 2026");
            assertThat(svg.elements("title").get(0).getTextContent()).isEqualTo(picture.title());
            assertThat(svg.elements("desc").get(0).getTextContent()).isEqualTo(picture.description());
        }
    }

    @Test
    void theSameInputGivesTheSameBytes() {
        assertThat(SvgWriter.file(PressureEnthalpyPicture.of(curve("R-410A"), PictureUnits.SI)
                        .sheet()))
                .isEqualTo(SvgWriter.file(PressureEnthalpyPicture.of(curve("R-410A"), PictureUnits.SI)
                        .sheet()));
    }

    @Test
    void namesInsideTwoPicturesDoNotMeetAndNothingOutsideIsAskedFor() throws Exception {
        Picture picture = PressureTemperaturePicture.of(curve("R-410A"), PictureUnits.SI);
        String first = picture.toSvgElement("first");
        Svg one = Svg.of(first);
        Svg two = Svg.of(picture.toSvgElement("second"));
        assertThat(one.ids()).isNotEmpty().doesNotContainAnyElementsOf(two.ids());
        assertThat(first.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http", "<!DOCTYPE", "xlink");
        assertThatThrownBy(() -> picture.toSvgElement("no name\"")).hasMessageContaining("letters, digits");
    }

    @Test
    void aDashedCurveIsDrawnInOneGoSoThatItsDashesShow() throws Exception {
        Svg svg = Svg.of(SvgWriter.file(
                PressureEnthalpyPicture.of(curve("R-134a"), PictureUnits.SI).sheet()));
        assertThat(svg.elements("polyline").stream()
                        .filter(line -> line.getAttribute("style").contains("dasharray:10,5")))
                .anyMatch(line -> line.getAttribute("points").split(" ", -1).length > 100);
    }
}
