package org.satline.program.audit;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.satline.audit.answer.AuditTolerance;
import org.satline.audit.cause.LikelyCause;
import org.satline.audit.cause.Mistake;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Mistakes and tolerances in words. */
final class AuditWords {
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.SI);

    private AuditWords() {}

    /** What went wrong; both where two mistakes were made in the same rows. */
    static String of(LikelyCause cause) {
        return of(Stream.concat(Stream.of(cause.mistake()), cause.besides().stream())
                .toList());
    }

    /** The same of mistakes made at once; empty text of none. */
    static String of(List<Mistake> mistakes) {
        return mistakes.stream().map(AuditWords::of).collect(Collectors.joining("; and at once "));
    }

    /** The kind, then the mistake. */
    static String of(Mistake mistake) {
        return WORDING.name(mistake.kind()) + ": " + WORDING.name(mistake.code(), mistake.figures());
    }

    static String of(AuditTolerance.Origin origin) {
        return WORDING.name(origin);
    }
}
