package org.satline.quantity;

import java.util.List;
import java.util.Objects;

/** The one place where the parts of a record are held against null. Only functions, thread-safe. */
public final class Parts {
    private Parts() {}

    /**
     * Refuses a record of which a part is missing.
     *
     * @param names the names of the parts, parted by single spaces
     * @param parts the parts, in the order of their names
     * @throws NullPointerException if a part is null; the message names it
     */
    public static void required(String names, Object... parts) {
        for (int i = 0; i < parts.length; i++) {
            if (parts[i] == null) {
                throw new NullPointerException(names.split(" ", -1)[i]);
            }
        }
    }

    /**
     * Copies a list and refuses one that is missing or lacks an element.
     *
     * @param <T> what it holds
     * @param name the name of the part
     * @param part the list
     * @return an unmodifiable copy
     * @throws NullPointerException if the list or an element is null; the message names the part
     */
    public static <T> List<T> list(String name, List<T> part) {
        if (part == null || part.stream().anyMatch(Objects::isNull)) {
            throw new NullPointerException(name);
        }
        return List.copyOf(part);
    }

    /**
     * Refuses numbers of which one is not a number.
     *
     * @param names the names of the parts, parted by single spaces
     * @param parts the parts, in the order of their names
     * @throws IllegalArgumentException if a part is NaN; the message names it
     */
    public static void numbers(String names, double... parts) {
        for (int i = 0; i < parts.length; i++) {
            if (Double.isNaN(parts[i])) {
                throw new IllegalArgumentException(
                        names.split(" ", -1)[i] + " is not a number; give one, or leave out what holds it");
            }
        }
    }
}
