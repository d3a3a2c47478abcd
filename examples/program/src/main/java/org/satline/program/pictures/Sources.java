package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.explanation.Figure;
import org.satline.saturation.SaturationCurve;

/** The lines that name the origin of what is drawn. */
final class Sources {
    private Sources() {}

    /** Notes of the picture, then warnings of the model, then the equation with its data version. */
    static List<String> notes(SaturationCurve curve, List<String> own, PictureUnits units) {
        List<String> notes = new ArrayList<>(own);
        curve.warnings()
                .forEach(warning -> notes.add(
                        units.text("warning", Figure.of("warning", units.words().of(warning)))));
        notes.add(units.text(
                "source",
                Figure.of("source", curve.source()),
                Figure.of("engine", units.text("engine." + curve.engine().name().toLowerCase(Locale.ROOT))),
                Figure.of("version", curve.refrigerant().dataVersion())));
        return notes;
    }
}
