package org.satline.program.audit;

import org.satline.audit.AuditTolerance;
import org.satline.audit.Mistake;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Mistakes and tolerances in words. */
final class AuditWords {
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.SI);

    private AuditWords() {}

    /** The kind, then the mistake. */
    static String of(Mistake mistake) {
        return WORDING.name(mistake.kind()) + ": " + WORDING.name(mistake.code(), mistake.figures());
    }

    static String of(AuditTolerance.Origin origin) {
        return WORDING.name(origin);
    }
}
