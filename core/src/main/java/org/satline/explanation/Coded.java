package org.satline.explanation;

/**
 * Something that files, programs and texts know by one word. Constants of an enum have the word of their name: {@code DANGER_NOW} is
 * {@code dangerNow}.
 */
public interface Coded {
    /**
     * The word.
     *
     * @return camel case, stable between releases
     */
    default String word() {
        if (!(this instanceof Enum<?> constant)) {
            throw new IllegalStateException(getClass().getName() + " is no enum and states no word");
        }
        StringBuilder word = new StringBuilder();
        boolean upper = false;
        for (char c : constant.name().toCharArray()) {
            if (c == '_') {
                upper = true;
            } else {
                word.append(upper ? c : Character.toLowerCase(c));
                upper = false;
            }
        }
        return word.toString();
    }
}
