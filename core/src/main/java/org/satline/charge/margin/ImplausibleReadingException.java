package org.satline.charge.margin;

import java.util.List;
import org.satline.SatlineException;

/** Readings that no running system can show, whatever is wrong with it: one of them is read or written down wrongly. */
public final class ImplausibleReadingException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /** A list that can be serialised, as an exception has to. */
    private final java.util.ArrayList<String> fields;

    ImplausibleReadingException(String message, String... fields) {
        super(String.join(", ", fields) + ": " + message);
        this.fields = new java.util.ArrayList<>(List.of(fields));
    }

    /**
     * Which readings contradict each other.
     *
     * @return paths of their fields in a visit file, at least one
     */
    public List<String> fields() {
        return List.copyOf(fields);
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}
