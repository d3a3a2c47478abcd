package org.satline.program.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.satline.program.file.Sheet.Spot;
import org.satline.program.pictures.CylinderPicture;
import org.satline.program.pictures.GlidePicture;
import org.satline.program.pictures.Picture;
import org.satline.program.pictures.PictureUnits;
import org.satline.program.pictures.PressureEnthalpyPicture;
import org.satline.program.pictures.PressureTemperaturePicture;
import org.satline.program.visit.ExplainPage;
import org.satline.program.visit.VisitPage;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.visit.PressureReadout;
import org.satline.visit.VisitReport;

/** Lays out the report of a visit as one HTML document that stands alone: pictures and style inside, no script, nothing fetched. */
public final class VisitHtml {
    /** A glide worth a picture: that of pressure gauges and clamps cannot be seen below. */
    private static final double GLIDE_SHOWN_K = 0.5;

    private static final String STYLE = "report.css";

    private VisitHtml() {}

    /**
     * Lays out a report.
     *
     * @param report the report
     * @param units units of the pictures; the text gives both
     * @return the document; it is well-formed XML too
     */
    public static String of(VisitReport report, PictureUnits units) {
        Map<Spot, String> pictures = new EnumMap<>(Spot.class);
        pictures.put(Spot.SYSTEM, figures(systemPictures(report, units), "system"));
        pictures.put(
                Spot.CYLINDER,
                figures(CylinderPicture.of(report, units).stream().toList(), "cylinder"));
        HtmlSheet sheet = new HtmlSheet(VisitSummary.of(report), pictures);
        VisitPage.write(report, sheet);
        ExplainPage.write(report.steps(), sheet);
        return """
                <!DOCTYPE html>
                <html lang="en" xmlns="http://www.w3.org/1999/xhtml">
                <head>
                <meta charset="utf-8"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'"/>
                <title>%s</title>
                <style>
                %s</style>
                </head>
                <body>
                <main>
                %s</main>
                </body>
                </html>
                """.formatted(Html.escaped(report.input().title()), style(), sheet.finished());
    }

    private static List<Picture> systemPictures(VisitReport report, PictureUnits units) {
        SaturationCurve curve = SaturationCurves.of(report.input().system().refrigerant());
        List<Picture> pictures = new ArrayList<>();
        PressureTemperaturePicture.of(curve, report.input().readings(), units).ifPresent(pictures::add);
        if (!report.pressures().isEmpty()) {
            pictures.add(PressureEnthalpyPicture.of(curve, report.input().readings(), units));
        }
        if (report.pressures().stream()
                .map(PressureReadout::glide)
                .anyMatch(glide -> glide.kelvins() > GLIDE_SHOWN_K)) {
            pictures.add(GlidePicture.of(curve, units));
        }
        return pictures;
    }

    private static String figures(List<Picture> pictures, String name) {
        StringBuilder html = new StringBuilder();
        for (int i = 0; i < pictures.size(); i++) {
            Picture picture = pictures.get(i);
            html.append("<figure>\n")
                    .append(picture.toSvgElement(name + "-" + (i + 1)))
                    .append("\n<figcaption>\n");
            for (String note : picture.notes()) {
                html.append("<p>").append(Html.escaped(note)).append("</p>\n");
            }
            html.append("</figcaption>\n</figure>\n");
        }
        return html.toString();
    }

    private static String style() {
        try (InputStream stream = Objects.requireNonNull(VisitHtml.class.getResourceAsStream(STYLE), STYLE)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
