package org.satline.resource;

import java.util.Objects;
import org.satline.SatlineException;
import org.satline.quantity.PlainText;

/**
 * A data file is missing or does not have the documented form. The message starts with file and line, as in {@code
 * blends.csv:17: mass_percent "1,0" is not a number; use a point as decimal mark}.
 */
public final class ResourceFormatException extends RuntimeException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /** Name of the file. */
    private final String resource;

    /** Line number, 0 for the whole file. */
    private final int line;

    /**
     * Names the file, the line and what is wrong there.
     *
     * @param resource name of the file
     * @param line number of the line, counted from 1; 0 if the whole file is meant
     * @param problem what is wrong and what to do; lower-case start, no full stop
     */
    public ResourceFormatException(String resource, int line, String problem) {
        super(Objects.requireNonNull(resource, "resource")
                + (line > 0 ? ":" + line : "")
                + ": "
                + PlainText.shown(Objects.requireNonNull(problem, "problem")));
        this.resource = resource;
        this.line = line;
    }

    /**
     * Returns the name of the file.
     *
     * @return name as it was asked for
     */
    public String resource() {
        return resource;
    }

    /**
     * Returns the line that is wrong.
     *
     * @return line number counted from 1; 0 if the whole file is meant
     */
    public int line() {
        return line;
    }

    @Override
    public Origin origin() {
        return Origin.DATA;
    }
}
