package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import org.satline.saturation.SaturationCurve;

/** The lines that name the origin of what is drawn. */
final class Sources {
    private Sources() {}

    /** Notes of the picture, then warnings of the model, then the equation with its data version. */
    static List<String> notes(SaturationCurve curve, List<String> own) {
        List<String> notes = new ArrayList<>(own);
        curve.warnings().forEach(warning -> notes.add("Warning: " + warning + "."));
        notes.add("Source: " + curve.source() + "; " + curve.engine().words() + "; data "
                + curve.refrigerant().dataVersion() + ".");
        return notes;
    }
}
