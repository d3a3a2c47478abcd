package org.satline.program.ask;

import java.io.Serial;
import java.util.Locale;
import org.satline.wording.Wording;

/** The person broke off, or the input ended. */
public final class BrokenOffException extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    private final How how;

    /** What happened. */
    public enum How {
        /** The person broke off. */
        BROKEN,
        /** The input ended. */
        INPUT,
        /** The terminal is gone. */
        TERMINAL
    }

    /**
     * Makes the exception.
     *
     * @param how what happened
     */
    public BrokenOffException(How how) {
        super("asking ended: " + how);
        this.how = how;
    }

    /**
     * Tells what happened.
     *
     * @param words in which language
     * @return in words
     */
    public String told(Wording words) {
        return words.message("ended." + how.name().toLowerCase(Locale.ROOT));
    }
}
