package org.satline;

import java.util.Objects;
import java.util.Optional;

/**
 * The common root of every exception that the library defines: whose turn it is.
 *
 * <p>It is an interface, since Java inherits from one class only and each exception keeps the class that a Java program expects: what was
 * given cannot be used is an {@link IllegalArgumentException}, what is missing around the library an {@link IllegalStateException}. A plain
 * {@link IllegalArgumentException} or {@link NullPointerException} names a single argument that was not looked at any further. A program
 * that answers others asks for the root where it catches:
 *
 * <pre>{@code
 * boolean theirs = false;
 * try {
 *     curve.superheat(Pressure.ofKilopascals(500), Temperature.ofCelsius(12));
 * } catch (RuntimeException thrown) {
 *     theirs = SatlineException.in(thrown)
 *             .map(found -> found.origin() == SatlineException.Origin.QUESTION)
 *             .orElse(thrown instanceof IllegalArgumentException);
 * }
 * }</pre>
 */
public interface SatlineException {
    /** Where the trouble comes from, and so who can do something about it. */
    enum Origin {
        /** What was given cannot be used or has no answer; ask otherwise, as the message says. */
        QUESTION,
        /** A data file, of a jar or of the caller's own, is missing, damaged or not of the documented form. */
        DATA,
        /** Something that the program must bring along is missing. */
        INSTALLATION,
        /** An allowed question to which no answer was found; report it. */
        SOLVER
    }

    /**
     * Where the trouble comes from.
     *
     * @return the origin
     */
    Origin origin();

    /**
     * What is wrong, with the value, its unit and the allowed range where there is one, and what to do.
     *
     * @return one line of plain text
     */
    String getMessage();

    /**
     * The exception of the library in what was thrown, if there is one: that itself, or the nearest among its causes.
     *
     * @param thrown what was caught
     * @return the exception, or empty if none of the library is among them
     */
    static Optional<SatlineException> in(Throwable thrown) {
        Throwable each = Objects.requireNonNull(thrown, "thrown");
        // causes may form a ring; no honest chain is that long
        for (int depth = 0; each != null && depth < 100; depth++) {
            if (each instanceof SatlineException found) {
                return Optional.of(found);
            }
            each = each.getCause();
        }
        return Optional.empty();
    }
}
