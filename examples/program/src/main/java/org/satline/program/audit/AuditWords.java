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

    /** The kind, then the mistake; then the other one where two were made together. */
    static String of(Mistake mistake) {
        return one(mistake)
                + mistake.besides().map(other -> "; and at once " + one(other)).orElse("");
    }

    private static String one(Mistake mistake) {
        return WORDING.name(mistake.kind()) + ": " + WORDING.name(mistake.code(), mistake.figures());
    }

    static String of(AuditTolerance.Origin origin) {
        return WORDING.name(origin);
    }
}
