package org.satline.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.satline.quantity.Parts;

/**
 * What was found in a ledger file: every whole entry that fits, and the lines that are none.
 *
 * @param ledger the entries and balances
 * @param damages what is wrong, by rising line number; a ledger with damage takes no entry
 * @param tornTail whether the last line is the beginning of an entry without a line feed, as a crash leaves it before the entry is
 *     acknowledged; it is then not among the damages
 * @param digest the SHA-256 digest of the last entry, 64 hexadecimal digits, all 0 for a ledger without entries; kept elsewhere with the
 *     number of that entry, it proves later that nothing up to there was changed
 */
public record LedgerReading(Ledger ledger, List<Damage> damages, boolean tornTail, String digest) {
    /**
     * A line that is no whole entry or does not fit those before it.
     *
     * @param line its number, counted from 1
     * @param kind what sort of damage
     * @param reason what is wrong with it, as the message of an exception would say it
     */
    public record Damage(long line, Kind kind, String reason) {
        /** Sorts of damage. */
        public enum Kind {
            /** The line is not written as the ledger writes. */
            UNREADABLE,
            /** The line is written well and its bytes do not match its digest. */
            WRONG_DIGEST,
            /** The line does not name the digest of the line before: lines were changed, removed, put in or moved. */
            BROKEN_CHAIN,
            /** The entry has another number than the next. */
            OUT_OF_ORDER,
            /** The entry contradicts those before it; it would have been refused. */
            CONTRADICTION
        }

        /** {@inheritDoc} */
        public Damage {
            Parts.required("kind reason", kind, reason);
        }

        @Override
        public String toString() {
            return "line " + line + " " + reason;
        }
    }

    /** {@inheritDoc} */
    public LedgerReading {
        Parts.required("ledger digest", ledger, digest);
        damages = Parts.list("damages", damages);
    }

    /** Reads the bytes of a file. */
    static LedgerReading of(byte[] bytes) {
        Reader reader = new Reader();
        int start = 0;
        while (start < bytes.length) {
            int end = start;
            while (end < bytes.length && bytes[end] != '\n') {
                end++;
            }
            reader.line(Arrays.copyOfRange(bytes, start, end), end < bytes.length);
            start = end + 1;
        }
        return new LedgerReading(reader.ledger, reader.damages, reader.torn, reader.before.orElse(""));
    }

    /** Goes through the lines. */
    private static final class Reader {
        private final Ledger ledger = new Ledger();
        private final List<Damage> damages = new ArrayList<>();
        private Optional<String> before = Optional.of(LedgerLine.NOTHING_BEFORE);
        private long line;
        private long next = 1;
        private boolean torn;

        void line(byte[] bytes, boolean hasFeed) {
            line++;
            try {
                take(LedgerLine.decode(bytes));
            } catch (DamagedLineException e) {
                if (e.isCutShort() && !hasFeed) {
                    torn = true;
                    return;
                }
                damage(e.kind(), String.valueOf(e.getMessage()));
                before = Optional.empty();
                next++;
            }
        }

        private void take(LedgerLine.Decoded decoded) {
            Ledger.Numbered numbered = decoded.numbered();
            // behind an unreadable line there is no digest to compare with, and that line is reported already
            if (before.isPresent() && !before.get().equals(decoded.before())) {
                String fault = "does not carry the digest of the line before it";
                damage(Damage.Kind.BROKEN_CHAIN, fault);
            }
            before = Optional.of(decoded.digest());
            long expected = next;
            next = numbered.number() + 1;
            if (numbered.number() != expected) {
                String fault = "holds entry " + numbered.number() + " where entry " + expected
                        + " belongs: entries are missing, doubled or moved";
                damage(Damage.Kind.OUT_OF_ORDER, fault);
                if (numbered.number() <= ledger.lastNumber()) {
                    return;
                }
            }
            if (ledger.decide(numbered.entry()) instanceof Ledger.Decision.Refused refused) {
                String fault = "contradicts the entries before it: " + refused.reason();
                damage(Damage.Kind.CONTRADICTION, fault);
                return;
            }
            ledger.post(numbered.number(), numbered.entry());
        }

        private void damage(Damage.Kind kind, String reason) {
            damages.add(new Damage(line, kind, reason));
        }
    }
}
