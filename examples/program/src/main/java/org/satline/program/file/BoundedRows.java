package org.satline.program.file;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Stops at a row without end before it fills the memory. */
final class BoundedRows extends FilterInputStream {
    private static final int LONGEST_ROW = 100_000;

    private int length;
    private boolean quoted;

    BoundedRows(InputStream in) {
        super(in);
    }

    @Override
    public int read() throws IOException {
        int next = super.read();
        if (next >= 0) {
            take(next);
        }
        return next;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        int read = super.read(bytes, from, length);
        for (int i = from; i < from + read; i++) {
            take(bytes[i]);
        }
        return read;
    }

    private void take(int next) throws IOException {
        if (next == '"') {
            quoted = !quoted;
        }
        length = (next == '\n' || next == '\r') && !quoted ? 0 : length + 1;
        if (length > LONGEST_ROW) {
            throw new IOException("a row has more than " + LONGEST_ROW + " bytes; is a quote left open?");
        }
    }
}
