package org.satline.page;

import org.satline.charge.margin.ChargeLevel;
import org.satline.visit.VisitReport;

/** What one may do beside a running unit; each action of the library is one of them. */
enum Reply {
    PUT_IN,
    TAKE_OUT,
    DONE,
    MEND_FIRST,
    READ_AGAIN,
    MAKE_SAFE;

    /** What the library does; to prepare for moving refrigerant counts as moving it. */
    static Reply of(VisitReport report) {
        return switch (report.action().kind()) {
            case MAKE_SAFE -> MAKE_SAFE;
            case MEND_FIRST -> MEND_FIRST;
            case READ_AGAIN -> READ_AGAIN;
            case TAKE_OUT -> TAKE_OUT;
            case PUT_IN -> PUT_IN;
            case DONE -> DONE;
            case PREPARE ->
                report.level()
                        .map(level -> level == ChargeLevel.LOW ? PUT_IN : level == ChargeLevel.HIGH ? TAKE_OUT : DONE)
                        .orElse(READ_AGAIN);
        };
    }

    String key() {
        return "reply." + PageTexts.word(this);
    }
}
