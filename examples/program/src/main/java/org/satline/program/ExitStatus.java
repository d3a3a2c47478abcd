package org.satline.program;

/** What the exit status of the program tells a script. */
final class ExitStatus {
    /** All was computed. */
    static final int DONE = 0;

    /** The output is whole, but some rows of it could not be computed. */
    static final int SOME_ROWS_REFUSED = 1;

    /** The command line or a file cannot be used; nothing was written. */
    static final int BAD_INPUT = 2;

    /** A fault of the program itself. */
    static final int INTERNAL_FAULT = 3;

    /** An audit found answers outside their tolerance. */
    static final int ANSWERS_OUTSIDE = 4;

    private ExitStatus() {}
}
