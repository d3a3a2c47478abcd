package org.satline.ledger;

import java.nio.charset.StandardCharsets;
import org.satline.fuzz.Target;

/** Ledger files from any bytes: never an exception, and what is read without damage is what the ledger would have written. */
public final class LedgerTarget {
    private LedgerTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        LedgerReading reading = LedgerReading.of(bytes);
        if (!reading.damages().isEmpty()) {
            return;
        }
        StringBuilder written = new StringBuilder();
        String digest = LedgerLine.NOTHING_BEFORE;
        for (Ledger.Numbered each : reading.ledger().entries()) {
            LedgerLine.Encoded line = LedgerLine.encode(each, digest);
            written.append(line.line()).append('\n');
            digest = line.digest();
        }
        String whole = written.toString();
        String text = new String(bytes, StandardCharsets.UTF_8);
        Target.require(
                text.startsWith(whole) || (text + "\n").equals(whole), "reads otherwise than it would have written");
        Target.require(reading.tornTail() || text.length() <= whole.length(), "bytes that are nothing");
    }
}
