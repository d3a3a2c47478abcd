package org.satline.ledger;

import java.util.List;
import java.util.Objects;

/**
 * What was found in a ledger file: every whole entry, and the lines that are none.
 *
 * @param ledger the entries and balances
 * @param damages the damaged lines, by rising number
 * @param tornTail whether the last line was cut short, as by a crash before it was acknowledged; it is then not among the damages
 */
public record LedgerReading(Ledger ledger, List<Damage> damages, boolean tornTail) {
    /**
     * A line that is no whole entry.
     *
     * @param line its number, counted from 1
     * @param reason what is wrong with it
     */
    public record Damage(long line, String reason) {
        /** {@inheritDoc} */
        public Damage {
            Objects.requireNonNull(reason, "reason");
        }

        @Override
        public String toString() {
            return "line " + line + " " + reason;
        }
    }

    /** {@inheritDoc} */
    public LedgerReading {
        Objects.requireNonNull(ledger, "ledger");
        damages = List.copyOf(damages);
    }

    /** Reads the bytes of a file. */
    static LedgerReading of(byte[] bytes) {
        Ledger ledger = new Ledger();
        List<Damage> damages = new java.util.ArrayList<>();
        boolean torn = false;
        long line = 0;
        int start = 0;
        while (start < bytes.length) {
            int end = start;
            while (end < bytes.length && bytes[end] != '\n') {
                end++;
            }
            line++;
            try {
                Ledger.Numbered numbered = LedgerLine.decode(java.util.Arrays.copyOfRange(bytes, start, end));
                if (numbered.number() != ledger.lastNumber() + 1) {
                    damages.add(new Damage(
                            line,
                            "holds entry " + numbered.number() + " after entry " + ledger.lastNumber()
                                    + ": entries between them are missing"));
                }
                ledger.post(numbered.number(), numbered.entry());
            } catch (LedgerLine.DamagedLineException e) {
                if (end == bytes.length) {
                    torn = true; // no line feed: it was never acknowledged
                } else {
                    damages.add(new Damage(line, String.valueOf(e.getMessage())));
                }
            }
            start = end + 1;
        }
        return new LedgerReading(ledger, damages, torn);
    }
}
