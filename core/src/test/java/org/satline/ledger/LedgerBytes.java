package org.satline.ledger;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

/** The bytes that a ledger file has. */
final class LedgerBytes {
    private LedgerBytes() {}

    static byte[] of(Ledger ledger) {
        return join(lines(ledger.entries()));
    }

    /** The lines of some entries, right in themselves and chained, whether the entries fit or not. */
    static List<byte[]> lines(List<Ledger.Numbered> entries) {
        List<byte[]> lines = new ArrayList<>();
        String before = LedgerLine.NOTHING_BEFORE;
        for (Ledger.Numbered entry : entries) {
            LedgerLine.Encoded line = LedgerLine.encode(entry, before);
            lines.add(line.bytes());
            before = line.digest();
        }
        return lines;
    }

    static byte[] join(List<byte[]> lines) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        for (byte[] line : lines) {
            file.writeBytes(line);
            file.write('\n');
        }
        return file.toByteArray();
    }
}
