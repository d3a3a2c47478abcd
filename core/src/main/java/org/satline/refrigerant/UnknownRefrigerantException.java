package org.satline.refrigerant;

import java.util.List;

/** A name is not in the catalogue, or stands for more than one entry. */
public final class UnknownRefrigerantException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> suggestions;

    UnknownRefrigerantException(String text, String problem, List<String> suggestions) {
        super("refrigerant \"" + text + "\" " + problem + "; did you mean " + String.join(", ", suggestions) + "?");
        this.suggestions = List.copyOf(suggestions);
    }

    /**
     * Returns the nearest entries.
     *
     * @return designations, nearest first
     */
    public List<String> suggestions() {
        return suggestions;
    }
}
