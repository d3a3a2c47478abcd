package org.satline.json;

import org.satline.SatlineException;

/** A library that this package needs, and that a program must bring itself, is not there. */
public final class MissingLibraryException extends IllegalStateException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /** Maven coordinates. */
    private final String library;

    MissingLibraryException(String library, Throwable cause) {
        super(
                library
                        + " is missing: org.satline.json writes and reads JSON with it; add it to the dependencies of your program (the rest of the"
                        + " library works without)",
                cause);
        this.library = library;
    }

    /**
     * Returns what is missing.
     *
     * @return group and artifact, such as {@code com.fasterxml.jackson.core:jackson-databind}
     */
    public String library() {
        return library;
    }

    @Override
    public Origin origin() {
        return Origin.INSTALLATION;
    }
}
