package org.satline.wording;

/** The words of a key, for the reader to whom nothing better can be said. */
final class KeyWords {
    private KeyWords() {}

    /** {@code finding.liquidFull} becomes {@code liquid full}; what holds a blank is a text already. */
    static String ofLast(String key) {
        if (key.indexOf(' ') >= 0) {
            return key.substring(key.indexOf('.') + 1);
        }
        return of(key.substring(key.lastIndexOf('.') + 1));
    }

    static String of(String word) {
        if (word.indexOf(' ') >= 0) {
            return word;
        }
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            if (c >= 'A' && c <= 'Z') {
                words.append(' ').append((char) (c - 'A' + 'a'));
            } else {
                words.append(c == '-' || c == '_' ? ' ' : c);
            }
        }
        String spaced = words.toString().strip();
        return spaced.isEmpty() ? "..." : spaced;
    }
}
