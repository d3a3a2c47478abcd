package org.satline.program;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/** Standard output that tells a reader who had enough, such as {@code head}, from a disk that is full. For one thread. */
final class StandardOutput extends OutputStream {
    private final OutputStream out;
    private boolean readerGone;
    private boolean failed;

    private StandardOutput(OutputStream out) {
        this.out = out;
    }

    static StandardOutput ofProcess() {
        return new StandardOutput(new FileOutputStream(FileDescriptor.out));
    }

    static StandardOutput to(OutputStream out) {
        return new StandardOutput(out);
    }

    /** Whether something that was printed did not arrive, though somebody waited for it. */
    boolean isIncomplete() {
        return failed;
    }

    @Override
    public void write(int single) {
        write(new byte[] {(byte) single}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
        if (readerGone || failed) {
            return;
        }
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            // the one sign that Java hands on of EPIPE, and of its counterparts on Windows
            String message = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
            readerGone = message.contains("pipe");
            failed = !readerGone;
        }
    }
}
