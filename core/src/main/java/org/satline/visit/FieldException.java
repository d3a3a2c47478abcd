package org.satline.visit;

import org.satline.SatlineException;
import org.satline.quantity.Parts;

/** A field of a visit file that cannot be used: which one, what stands there, what is allowed. */
public final class FieldException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /** The field, with dots. */
    private final String path;

    /**
     * A field that cannot be used.
     *
     * @param path of the field, with dots; empty for the visit as a whole
     * @param problem what stands there and what is allowed
     */
    public FieldException(String path, String problem) {
        super(path.isEmpty() ? problem : path + ": " + problem);
        Parts.required("path", path);
        this.path = path;
    }

    /**
     * Which field.
     *
     * @return its path, such as {@code cylinder.hoses[0].port}; empty for the visit as a whole
     */
    public String path() {
        return path;
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}
