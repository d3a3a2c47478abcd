package org.satline.program.ask;

import java.io.Serial;

/** The person broke off, or the input ended. */
public final class BrokenOffException extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param how what happened, in words
     */
    public BrokenOffException(String how) {
        super(how);
    }
}
