package org.satline.program.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.program.drawing.Box;
import org.satline.program.drawing.Drawing;
import org.satline.program.drawing.Series;
import org.satline.program.drawing.Shape;
import org.satline.program.drawing.SvgWriter;
import org.satline.program.print.PictureFile;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.wording.Language;
import org.w3c.dom.Element;

/**
 * Pictures of twenty refrigerants as a reader finds them: nothing clipped, nothing crossed out, every drawn point where the equation has
 * it.
 */
class PictureSheetsTest {
    private static final List<String> TWENTY = List.of(
            "R-12",
            "R-22",
            "R-23",
            "R-32",
            "R-123",
            "R-134a",
            "R-152a",
            "R-227ea",
            "R-245fa",
            "R-290",
            "R-404A",
            "R-407C",
            "R-410A",
            "R-448A",
            "R-454B",
            "R-513A",
            "R-600a",
            "R-717",
            "R-744",
            "R-1234yf");
    private static final int POINTS = 200;
    private static final double ZERO_CELSIUS_K = 273.15;

    @TempDir
    Path folder;

    private static SaturationCurve curve(String name) {
        return SaturationCurves.of(Catalogue.standard().find(name));
    }

    private static List<Picture> all(String name, PictureUnits units) {
        List<Picture> pictures = new ArrayList<>();
        SaturationCurve curve = curve(name);
        pictures.add(PressureTemperaturePicture.of(curve, units));
        pictures.add(PressureEnthalpyPicture.of(curve, units));
        pictures.add(TemperatureEntropyPicture.of(curve, units));
        if (curve.refrigerant().isBlend()) {
            pictures.add(GlidePicture.of(curve, units));
        }
        return pictures;
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void noTextLeavesThePictureOrMeetsAnother(UnitSystem system) {
        noTextLeavesOrMeetsAnother(TWENTY, PictureUnits.of(system, Language.ENGLISH));
    }

    /** Spanish words are longer. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void noSpanishTextLeavesThePictureOrMeetsAnother(UnitSystem system) {
        noTextLeavesOrMeetsAnother(List.of("R-410A", "R-407C", "R-134a"), PictureUnits.of(system, Language.SPANISH));
    }

    private static void noTextLeavesOrMeetsAnother(List<String> names, PictureUnits units) {
        for (String name : names) {
            for (Picture picture : all(name, units)) {
                Drawing drawing = picture.sheet();
                List<Box> seen = new ArrayList<>();
                drawing.forEach(shape -> {
                    if (shape instanceof Shape.Text text) {
                        Box box = measured(text);
                        assertThat(box.left())
                                .as("%s: %s", picture.title(), text.words())
                                .isGreaterThanOrEqualTo(0);
                        assertThat(box.right())
                                .as("%s: %s", picture.title(), text.words())
                                .isLessThanOrEqualTo(drawing.width());
                        assertThat(box.top()).isGreaterThanOrEqualTo(0);
                        assertThat(box.bottom()).isLessThanOrEqualTo(drawing.height());
                        assertThat(seen)
                                .as("%s: %s", picture.title(), text.words())
                                .noneMatch(other -> meets(box, other));
                        seen.add(box);
                    }
                });
            }
        }
    }

    /** The ink of a text in the face of this Java. */
    private static Box measured(Shape.Text text) {
        Font font = new Font(Font.SANS_SERIF, text.weight() == Shape.Weight.BOLD ? Font.BOLD : Font.PLAIN, text.size());
        var bounds = new TextLayout(text.words(), font, new FontRenderContext(null, true, true)).getBounds();
        double before = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> bounds.getWidth() / 2;
            case END -> bounds.getWidth();
        };
        double x = text.at().x();
        double y = text.at().y();
        return text.turn() == Shape.Turn.LEVEL
                ? new Box(x - before, y + bounds.getY(), bounds.getWidth(), bounds.getHeight())
                : new Box(x + bounds.getY(), y - bounds.getWidth() + before, bounds.getHeight(), bounds.getWidth());
    }

    private static boolean meets(Box one, Box other) {
        return one.left() < other.right()
                && other.left() < one.right()
                && one.top() < other.bottom()
                && other.top() < one.bottom();
    }

    /** An axis read back from its printed ticks: those of its own margin, two of them. */
    private record Read(double at0, double value0, double at1, double value1, boolean logarithmic) {
        double value(double at) {
            double share = (at - at0) / (at1 - at0);
            return logarithmic ? value0 * Math.pow(value1 / value0, share) : value0 + (value1 - value0) * share;
        }

        static Read of(Svg svg, boolean horizontal, boolean logarithmic) {
            List<Element> ticks = svg.elements("text").stream()
                    .filter(text -> text.getTextContent().matches("-?\\d+(\\.\\d+)?"))
                    .filter(text -> !text.getAttribute("style").contains("paint-order"))
                    .filter(text -> text.getAttribute("text-anchor").equals(horizontal ? "middle" : "end"))
                    .toList();
            Element first = ticks.get(0);
            Element last = ticks.get(ticks.size() - 1);
            String at = horizontal ? "x" : "y";
            // the base line of a tick lies 0.27 of its size, 16, below what it names
            double down = horizontal ? 0 : 0.27 * 16;
            return new Read(
                    Double.parseDouble(first.getAttribute(at)) - down,
                    Double.parseDouble(first.getTextContent()),
                    Double.parseDouble(last.getAttribute(at)) - down,
                    Double.parseDouble(last.getTextContent()),
                    logarithmic);
        }
    }

    /** What SVG rounds, a hundredth of a unit of some 400, is 0.005 % of a decade axis over three decades: below 0.2 %. */
    @ParameterizedTest
    @FieldSource("TWENTY")
    void linesReadBackFromTheSvgLieWhereTheEquationHasThem(String name) throws Exception {
        SaturationCurve curve = curve(name);
        Svg svg = Svg.of(SvgWriter.file(
                PressureTemperaturePicture.of(curve, PictureUnits.SI).sheet()));
        Read t = Read.of(svg, true, false);
        Read p = Read.of(svg, false, true);
        Element line = svg.elements("polyline").stream()
                .filter(each -> each.getAttribute("points").split(" ", -1).length > 100)
                .findFirst()
                .orElseThrow();
        double[][] drawn = points(line);
        double first = drawn[0][0];
        double last = drawn[drawn.length - 1][0];
        for (int i = 1; i < POINTS; i++) {
            double x = first + (last - first) * i / POINTS;
            double kelvins = t.value(x) + ZERO_CELSIUS_K;
            double pascals = 1000 * p.value(between(drawn, x));
            double exact = curve.bubblePressurePa(
                    Math.min(kelvins, curve.bubbleTemperatureRange().high()));
            assertThat(pascals / exact).as("%s at %.2f K", name, kelvins).isBetween(0.998, 1.002);
        }
    }

    private static double[][] points(Element line) {
        String[] pairs = line.getAttribute("points").split(" ", -1);
        double[][] points = new double[pairs.length][];
        for (int i = 0; i < pairs.length; i++) {
            String[] pair = pairs[i].split(",", -1);
            points[i] = new double[] {Double.parseDouble(pair[0]), Double.parseDouble(pair[1])};
        }
        return points;
    }

    private static double between(double[][] points, double x) {
        int i = 0;
        while (i < points.length - 2 && points[i + 1][0] < x) {
            i++;
        }
        double share = (x - points[i][0]) / (points[i + 1][0] - points[i][0]);
        return points[i][1] + share * (points[i + 1][1] - points[i][1]);
    }

    /** In the middle between two drawn points the straight line is off by the bend between them: 0.2 % of the width at most. */
    @ParameterizedTest
    @ValueSource(strings = {"R-134a", "R-407C", "R-744", "R-717"})
    void linesOfConstantEntropyAndDensityAreSmooth(String name) {
        Picture picture = PressureEnthalpyPicture.of(curve(name), PictureUnits.SI);
        FluidModel model = FluidModel.of(Catalogue.standard().find(name));
        Series lines = Objects.requireNonNull(
                picture.chart().series().get("constant entropy, " + PictureUnits.SI.entropyUnit()));
        double width = picture.chart().x().high() - picture.chart().x().low();
        double[] h = lines.points().x();
        double[] p = lines.points().y();
        int checked = 0;
        for (int i = 0; i + 1 < h.length; i++) {
            if (!Double.isNaN(p[i]) && !Double.isNaN(p[i + 1])) {
                PhaseSplit here = model.states().atPressureAndEnthalpy(1000 * p[i], 1000 * h[i]);
                double middle = Math.sqrt(p[i] * p[i + 1]);
                double exact = model.states()
                                .atPressureAndEntropy(1000 * middle, here.specificEntropy())
                                .specificEnthalpy()
                        / 1000;
                assertThat(Math.abs((h[i] + h[i + 1]) / 2 - exact)).isLessThan(0.002 * width);
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(100);
    }

    @Test
    void theSameDrawingComesAsPixelsAndAsAPageWithSearchableText() throws Exception {
        Drawing drawing =
                PressureEnthalpyPicture.of(curve("R-454B"), PictureUnits.US).sheet();
        Path png = folder.resolve("p.PNG");
        PictureFile.write(png, drawing);
        assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(3 * drawing.width());
        Path pdf = folder.resolve("p.pdf");
        PictureFile.write(pdf, drawing);
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(document))
                    .contains("R-454B: pressure and enthalpy", "specific enthalpy, Btu/lb", "Source: ");
        }
    }

    @Test
    void aGaugeScaleCountsFromTheAirOfThePlace() {
        var air = org.satline.quantity.Atmosphere.atAltitude(org.satline.quantity.Length.ofMetres(1200));
        Picture picture = PressureTemperaturePicture.of(curve("R-134a"), PictureUnits.SI, air);
        List<Shape.Text> zero = new ArrayList<>();
        picture.sheet().forEach(shape -> {
            if (shape instanceof Shape.Text text && text.words().equals("0") && text.anchor() == Shape.Anchor.START) {
                zero.add(text);
            }
        });
        assertThat(zero).as("the zero of the gauge scale").hasSize(1);
    }
}
