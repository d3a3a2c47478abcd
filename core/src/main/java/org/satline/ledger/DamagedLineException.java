package org.satline.ledger;

import org.satline.ledger.LedgerReading.Damage.Kind;

/** A line that is no whole entry. */
final class DamagedLineException extends Exception {
    private static final long serialVersionUID = 1L;

    private final Kind kind;
    private final boolean cutShort;

    private DamagedLineException(Kind kind, boolean cutShort, String reason) {
        super(reason);
        this.kind = kind;
        this.cutShort = cutShort;
    }

    static DamagedLineException unreadable(String reason) {
        return new DamagedLineException(Kind.UNREADABLE, false, reason);
    }

    static DamagedLineException cutShort(String reason) {
        return new DamagedLineException(Kind.UNREADABLE, true, reason);
    }

    static DamagedLineException wrongDigest(String reason) {
        return new DamagedLineException(Kind.WRONG_DIGEST, false, reason);
    }

    Kind kind() {
        return kind;
    }

    /** Whether the line is the beginning of one, right as far as it goes. */
    boolean isCutShort() {
        return cutShort;
    }
}
