package org.satline.program.exercise;

import java.util.Objects;

/**
 * A figure that the question states. The value is read back from the text, so that the printed question alone leads to the printed answer.
 *
 * @param name what it is
 * @param text as the sheet prints it, unit included
 * @param value what the text says
 * @param <T> kind of quantity
 */
record Given<T>(String name, String text, T value) {
    Given {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(value, "value");
    }

    /** A given that is said in words. */
    static Given<String> words(String name, String text) {
        return new Given<>(name, text, text);
    }
}
