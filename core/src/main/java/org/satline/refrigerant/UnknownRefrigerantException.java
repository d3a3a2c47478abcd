package org.satline.refrigerant;

import java.util.List;

/** A name is not in the catalogue, or stands for more than one entry. */
public final class UnknownRefrigerantException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private static final int LONGEST_QUOTE = 60;

    /** Designations, nearest first. */
    private final String[] suggestions;

    UnknownRefrigerantException(String text, String problem, List<String> suggestions) {
        super("refrigerant \"" + quote(text) + "\" " + problem
                + (suggestions.isEmpty()
                        ? "; give an ISO 817 designation such as R-134a"
                        : "; did you mean " + String.join(", ", suggestions) + "?"));
        this.suggestions = suggestions.toArray(new String[0]);
    }

    private static String quote(String text) {
        StringBuilder quoted = new StringBuilder();
        text.codePoints()
                .limit(LONGEST_QUOTE)
                .forEach(c -> quoted.appendCodePoint(Character.isISOControl(c) ? '?' : c));
        return text.codePointCount(0, text.length()) > LONGEST_QUOTE ? quoted + "..." : quoted.toString();
    }

    /**
     * Returns what may have been meant.
     *
     * @return designations, nearest first; may be empty
     */
    public List<String> suggestions() {
        return List.of(suggestions);
    }
}
