package org.satline.program.file;

import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/** Tells how far a long run is: nothing for two seconds, then a line every two seconds. For one thread. */
public final class Progress {
    private static final long INTERVAL_NS = TimeUnit.SECONDS.toNanos(2);
    private static final long LOOK_EVERY = 256;

    private final PrintWriter err;
    private final LongSupplier clock;
    private final long start;
    private String doing = "";
    private long next;
    private long rows;

    /**
     * Starts the clock.
     *
     * @param err where to tell
     */
    public Progress(PrintWriter err) {
        this(err, System::nanoTime);
    }

    Progress(PrintWriter err, LongSupplier clock) {
        this.err = err;
        this.clock = clock;
        this.start = clock.getAsLong();
        this.next = start + INTERVAL_NS;
    }

    /**
     * Begins a pass over rows.
     *
     * @param what what happens to them, such as {@code compared}
     */
    public void begin(String what) {
        doing = what;
        rows = 0;
    }

    /** Counts a row. */
    public void row() {
        rows++;
        if (rows % LOOK_EVERY != 0) {
            return;
        }
        long now = clock.getAsLong();
        if (now - next >= 0) {
            err.println("satline: " + rows + " rows " + doing + " after " + TimeUnit.NANOSECONDS.toSeconds(now - start)
                    + " s");
            err.flush();
            next = now + INTERVAL_NS;
        }
    }
}
