package org.teavm.classlib.java.lang;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;
import org.teavm.jso.JSBody;
import org.teavm.jso.typedarrays.Int8Array;

/**
 * Stands in for {@link ClassLoader} in the page: resources come from what the page has unpacked before it started, since the compiler's own would put
 * them into the script at a third more than their size. Immutable.
 */
public abstract class TClassLoader extends TObject {
    @SuppressWarnings("ClassInitializationDeadlock") // a page has one thread
    private static final TSystemClassLoader SYSTEM = new TSystemClassLoader();

    /** For the one subclass. */
    protected TClassLoader() {}

    /**
     * The only loader.
     *
     * @return it
     */
    public static TClassLoader getSystemClassLoader() {
        return SYSTEM;
    }

    /**
     * A resource by its path.
     *
     * @param name path from the root
     * @return its bytes, or null if there is none
     */
    public @Nullable InputStream getResourceAsStream(String name) {
        Int8Array found = unpacked(name);
        return found == null ? null : new ByteArrayInputStream(found.copyToJavaArray());
    }

    /**
     * Same without a loader.
     *
     * @param name path from the root
     * @return its bytes, or null if there is none
     */
    public static @Nullable InputStream getSystemResourceAsStream(String name) {
        return SYSTEM.getResourceAsStream(name);
    }

    @JSBody(params = "name", script = "return globalThis.satlineFiles.get(name) || null;")
    private static native @Nullable Int8Array unpacked(String name);
}
