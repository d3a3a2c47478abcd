package org.satline.refrigerant;

import java.util.List;
import org.satline.SatlineException;
import org.satline.quantity.PlainText;

/** A name is not in the catalogue, or stands for more than one entry. */
public final class UnknownRefrigerantException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /** Designations, nearest first. */
    private final String[] suggestions;

    UnknownRefrigerantException(String text, String problem, List<String> suggestions) {
        super("refrigerant " + PlainText.quoted(text) + " " + problem
                + (suggestions.isEmpty()
                        ? "; give an ISO 817 designation such as R-134a"
                        : "; did you mean " + String.join(", ", suggestions) + "?"));
        this.suggestions = suggestions.toArray(new String[0]);
    }

    /**
     * Returns what may have been meant.
     *
     * @return designations, nearest first; may be empty
     */
    public List<String> suggestions() {
        return List.of(suggestions);
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}
