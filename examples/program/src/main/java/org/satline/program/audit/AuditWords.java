package org.satline.program.audit;

import org.satline.audit.AuditTolerance;
import org.satline.audit.LikelyCause;
import org.satline.audit.Mistake;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Mistakes and tolerances in words. */
final class AuditWords {
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.SI);

    private AuditWords() {}

    /** What went wrong; both where two mistakes were made in the same rows. */
    static String of(LikelyCause cause) {
        return of(cause.mistake())
                + cause.besides().map(other -> "; and at once " + of(other)).orElse("");
    }

    /** The kind, then the mistake. */
    static String of(Mistake mistake) {
        return WORDING.name(mistake.kind()) + ": " + WORDING.name(mistake.code(), mistake.figures());
    }

    static String of(AuditTolerance.Origin origin) {
        return WORDING.name(origin);
    }
}
