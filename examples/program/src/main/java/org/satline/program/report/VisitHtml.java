package org.satline.program.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.satline.program.page.Block;
import org.satline.program.page.PageHtml;
import org.satline.program.pictures.CylinderPicture;
import org.satline.program.pictures.GlidePicture;
import org.satline.program.pictures.Picture;
import org.satline.program.pictures.PictureUnits;
import org.satline.program.pictures.PressureEnthalpyPicture;
import org.satline.program.pictures.PressureTemperaturePicture;
import org.satline.program.visit.Detail;
import org.satline.program.visit.VisitPage;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.visit.PressureReadout;
import org.satline.visit.VisitReport;
import org.satline.wording.Wording;

/** Lays out the report of a visit as one HTML document that stands alone: pictures and style inside, no script, nothing fetched. */
public final class VisitHtml {
    /** A glide worth a picture: that of pressure gauges and clamps cannot be seen below. */
    private static final double GLIDE_SHOWN_K = 0.5;

    private VisitHtml() {}

    /**
     * Lays out a report.
     *
     * @param report the report
     * @param wording the reader's language and units
     * @param detail how much is shown
     * @param units units of the pictures; the text gives both
     * @return the document; it is well-formed XML too
     */
    public static String of(VisitReport report, Wording wording, Detail detail, PictureUnits units) {
        Map<Block.Spot, List<Block>> figures = new EnumMap<>(Block.Spot.class);
        figures.put(Block.Spot.SYSTEM, figures(systemPictures(report, units), "system"));
        figures.put(
                Block.Spot.CYLINDER,
                figures(CylinderPicture.of(report, units).stream().toList(), "cylinder"));
        List<Block> filled = VisitPage.blocks(report, wording, detail).stream()
                .flatMap(block -> block instanceof Block.Place place
                        ? figures.getOrDefault(place.spot(), List.of()).stream()
                        : Stream.of(block))
                .toList();
        return PageHtml.of(
                report.visit().title(),
                PageHtml.Style.REPORT,
                wording.language().tag(),
                filled);
    }

    private static List<Picture> systemPictures(VisitReport report, PictureUnits units) {
        SaturationCurve curve = SaturationCurves.of(report.visit().system().refrigerant());
        List<Picture> pictures = new ArrayList<>();
        PressureTemperaturePicture.of(curve, report.visit().readings(), units).ifPresent(pictures::add);
        if (!report.pressures().isEmpty()) {
            pictures.add(PressureEnthalpyPicture.of(curve, report.visit().readings(), units));
        }
        if (report.pressures().stream()
                .map(PressureReadout::glide)
                .anyMatch(glide -> glide.kelvins() > GLIDE_SHOWN_K)) {
            pictures.add(GlidePicture.of(curve, units));
        }
        return pictures;
    }

    private static List<Block> figures(List<Picture> pictures, String name) {
        List<Block> figures = new ArrayList<>();
        for (Picture picture : pictures) {
            figures.add(new Block.Figure(picture.toSvgElement(name + "-" + (figures.size() + 1)), picture.notes()));
        }
        return figures;
    }
}
