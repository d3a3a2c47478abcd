package org.satline.json;

/** Tells whether Jackson is there, without touching it. */
final class JsonLibrary {
    private static final String LIBRARY = "com.fasterxml.jackson.core:jackson-databind";

    private JsonLibrary() {}

    /** Refuses to go on without Jackson, by its name. */
    static void require() {
        try {
            Class.forName("com.fasterxml.jackson.databind.ObjectMapper", false, JsonLibrary.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new MissingLibraryException(LIBRARY, e);
        }
    }
}
