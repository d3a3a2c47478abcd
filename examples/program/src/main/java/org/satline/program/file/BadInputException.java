package org.satline.program.file;

import java.io.Serial;

/** Input that cannot be used. The message is one line that names file, place, value and what is allowed. Immutable. */
public final class BadInputException extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message one line: file, line or field, value, what is allowed
     */
    public BadInputException(String message) {
        super(message);
    }
}
