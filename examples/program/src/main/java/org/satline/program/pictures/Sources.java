package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import org.satline.quantity.UnitSystem;
import org.satline.saturation.SaturationCurve;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** The lines that name the origin of what is drawn. */
final class Sources {
    private static final Wording WORDS = Wording.of(Language.ENGLISH, UnitSystem.SI);

    private Sources() {}

    /** Notes of the picture, then warnings of the model, then the equation with its data version. */
    static List<String> notes(SaturationCurve curve, List<String> own) {
        List<String> notes = new ArrayList<>(own);
        curve.warnings().forEach(warning -> notes.add("Warning: " + WORDS.of(warning) + "."));
        notes.add("Source: " + curve.source() + "; " + curve.engine().words() + "; data "
                + curve.refrigerant().dataVersion() + ".");
        return notes;
    }
}
