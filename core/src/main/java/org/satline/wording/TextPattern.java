package org.satline.wording;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A text with places for figures: {@code {name}}, {@code {name:down}}. Immutable.
 *
 * @param parts literal text and places, in order
 */
record TextPattern(List<Part> parts) {
    /** Ways to print a figure. */
    enum Manner {
        NEAREST(""),
        DOWN("down"),
        UP("up"),
        PERCENT("percent"),
        DURATION("duration"),
        POUNDS_AND_OUNCES("ounces"),
        WORD("word"),
        WITHIN("within");

        private final String word;

        Manner(String word) {
            this.word = word;
        }
    }

    /** A piece of a text. */
    sealed interface Part {
        /** As it stands. */
        record Literal(String text) implements Part {}

        /** A figure; the doubt is the name of its uncertainty, empty where the manner asks for none. */
        record Place(String figure, Manner manner, String doubt) implements Part {}
    }

    /** Reads a pattern; the exception says what is wrong with it. */
    static TextPattern parse(String text) {
        List<Part> parts = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            int open = text.indexOf('{', at);
            int end = open < 0 ? text.length() : open;
            String literal = text.substring(at, end);
            if (literal.indexOf('}') >= 0) {
                throw new IllegalArgumentException("a brace closes that was not opened; leave it out");
            }
            if (!literal.isEmpty()) {
                parts.add(new Part.Literal(literal));
            }
            if (open < 0) {
                break;
            }
            int close = text.indexOf('}', open);
            if (close < 0) {
                throw new IllegalArgumentException("a brace is never closed; write {name}");
            }
            parts.add(place(text.substring(open + 1, close)));
            at = close + 1;
        }
        return new TextPattern(List.copyOf(parts));
    }

    private static Part.Place place(String inside) {
        int colon = inside.indexOf(':');
        String figure = colon < 0 ? inside : inside.substring(0, colon);
        if (!isName(figure)) {
            throw new IllegalArgumentException("{" + inside + "} names no figure; write it as in {limit}");
        }
        if (colon < 0) {
            return new Part.Place(figure, Manner.NEAREST, "");
        }
        String rest = inside.substring(colon + 1);
        int second = rest.indexOf(':');
        String word = second < 0 ? rest : rest.substring(0, second);
        for (Manner manner : Manner.values()) {
            boolean isIt = manner != Manner.NEAREST && manner.word.equals(word);
            if (isIt && (manner == Manner.WITHIN) == (second >= 0)) {
                String doubt = second < 0 ? "" : rest.substring(second + 1);
                if (manner != Manner.WITHIN || isName(doubt)) {
                    return new Part.Place(figure, manner, doubt);
                }
            }
        }
        throw new IllegalArgumentException("{" + inside
                + "} is printed in no known manner; write down, up, percent, duration, ounces, word or within:name");
    }

    private static boolean isName(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
            if (!(letter || (i > 0 && c >= '0' && c <= '9'))) {
                return false;
            }
        }
        return !text.isEmpty();
    }

    /** Names of the figures that the text asks for. */
    Set<String> figures() {
        Set<String> names = new LinkedHashSet<>();
        for (Part part : parts) {
            if (part instanceof Part.Place place) {
                names.add(place.figure());
                if (!place.doubt().isEmpty()) {
                    names.add(place.doubt());
                }
            }
        }
        return names;
    }
}
