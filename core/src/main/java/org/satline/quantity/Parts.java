package org.satline.quantity;

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
}
