package org.satline.json;

import java.util.Objects;
import org.satline.SatlineException;
import org.satline.quantity.PlainText;

/** JSON that is not what was asked for; says where in the document and what was expected there. */
public final class UnreadableJsonException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /** Where in the document. */
    private final String place;

    UnreadableJsonException(Place place, String problem) {
        super(PlainText.shown("JSON at " + place + ": " + problem));
        this.place = place.toString();
    }

    UnreadableJsonException(Place place, IllegalArgumentException cause) {
        super(
                PlainText.shown(
                        "JSON at " + place + ": " + Objects.requireNonNullElse(cause.getMessage(), "is refused")),
                cause);
        this.place = place.toString();
    }

    UnreadableJsonException(String problem, Throwable cause) {
        super(PlainText.shown("JSON " + problem), cause);
        this.place = "";
    }

    /**
     * Where in the document.
     *
     * @return a path such as {@code /deviation/target}; {@code /} for the whole; empty where the text is no JSON at all
     */
    public String place() {
        return place;
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}
