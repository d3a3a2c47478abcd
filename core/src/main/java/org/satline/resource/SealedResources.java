package org.satline.resource;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/**
 * The data files of one jar, and the manifest that holds the digests of all of them. Immutable, thread-safe.
 *
 * <p>Each file is held against its CRC-32 whenever it is read, so that no damage of up to 32 bits in a row passes, and other damage with a chance of one in
 * four thousand million. {@link #verify} holds all files against their SHA-256 as well, as the build does: that costs a cold virtual machine more than
 * the whole first answer, so it is not done at each reading. The manifest finds damage of its own by a CRC-32 over itself. None of this protects against
 * somebody who puts another manifest into the jar; sign the jar for that.
 *
 * <p>Form of the manifest: a line for each file, sorted, of CRC-32 (8 hexadecimal digits), SHA-256 (64) and path in the jar, with one blank between;
 * a last line with the CRC-32 of all lines before it.
 */
public final class SealedResources {
    private static final int CRC_DIGITS = 8;
    private static final int SHA_DIGITS = 64;
    private static final int PATH_AT = CRC_DIGITS + 1 + SHA_DIGITS + 1;
    private static final int CHUNK = 16384;

    private static final OnDemand<SealedResources> CORE = new OnDemand<>() {
        @Override
        protected SealedResources read() {
            return of(SealedResources.class, "core.digests");
        }
    };

    private final Class<?> anchor;
    private final String manifest;
    private final byte[] lines;
    /** Where the line of each path begins. */
    private final Map<String, Integer> lineOf = new HashMap<>();

    SealedResources(Class<?> anchor, String manifest, byte[] bytes) {
        this.anchor = anchor;
        this.manifest = manifest;
        this.lines = bytes;
        int end = bytes.length - CRC_DIGITS - 1;
        if (end < 0 || bytes[bytes.length - 1] != '\n' || crc32(bytes, end) != hexadecimal(end)) {
            throw damaged(manifest);
        }
        for (int at = 0; at < end; ) {
            int stop = at + PATH_AT;
            while (stop < end && bytes[stop] != '\n') {
                stop++;
            }
            if (stop >= end) {
                throw damaged(manifest);
            }
            // one byte is one character: the paths are ASCII
            lineOf.put(new String(bytes, at + PATH_AT, stop - at - PATH_AT, StandardCharsets.ISO_8859_1), at);
            at = stop + 1;
        }
    }

    /**
     * Returns the files of the core jar.
     *
     * @return the files
     * @throws ResourceFormatException if their manifest is missing or damaged
     */
    public static SealedResources core() {
        return CORE.get();
    }

    /**
     * Reads the manifest of a jar.
     *
     * @param anchor a class in the jar, in the package of the manifest
     * @param manifest file name of the manifest
     * @return the files of that jar
     * @throws ResourceFormatException if the manifest is missing or damaged
     */
    public static SealedResources of(Class<?> anchor, String manifest) {
        Objects.requireNonNull(anchor, "anchor");
        Objects.requireNonNull(manifest, "manifest");
        byte[] bytes = raw(anchor, manifest, manifest);
        if (bytes == null) {
            throw new ResourceFormatException(
                    manifest, 0, "not found beside " + anchor.getName() + "; get the whole jar");
        }
        return new SealedResources(anchor, manifest, bytes);
    }

    /**
     * Reads a file that lies beside a class and holds it against the manifest. A file that the manifest does not list is none of this jar's, a caller's own
     * for instance, and comes back as it is.
     *
     * @param neighbour a class in the package of the file
     * @param name file name, relative to that package
     * @return its bytes
     * @throws ResourceFormatException if the file is missing, cannot be read or is damaged
     */
    public byte[] bytes(Class<?> neighbour, String name) {
        byte[] bytes = find(neighbour, name);
        if (bytes == null) {
            throw new ResourceFormatException(name, 0, "not found beside " + neighbour.getName());
        }
        return bytes;
    }

    /**
     * Same where the file may be missing.
     *
     * @param neighbour a class in the package of the file
     * @param name file name, relative to that package
     * @return its bytes, or null if there is none and the manifest lists none
     * @throws ResourceFormatException if the file is listed but missing, cannot be read or is damaged
     */
    public byte @Nullable [] find(Class<?> neighbour, String name) {
        Objects.requireNonNull(neighbour, "neighbour");
        Objects.requireNonNull(name, "name");
        String type = neighbour.getName();
        String path =
                type.substring(0, type.lastIndexOf('.') + 1).replace('.', '/').concat(name);
        byte[] bytes = raw(neighbour, name, name);
        if (bytes == null) {
            if (lineOf.containsKey(path)) {
                throw new ResourceFormatException(name, 0, "is missing, though " + manifest + " lists it");
            }
            return null;
        }
        check(path, name, bytes);
        return bytes;
    }

    /**
     * Tells whether the manifest lists a file beside a class.
     *
     * @param neighbour a class in the package of the file
     * @param name file name, relative to that package
     * @return true if it does
     */
    public boolean lists(Class<?> neighbour, String name) {
        String type = neighbour.getName();
        return lineOf.containsKey(type.substring(0, type.lastIndexOf('.') + 1)
                .replace('.', '/')
                .concat(Objects.requireNonNull(name, "name")));
    }

    /** Holds bytes against the manifest, as {@link #find} does. */
    void check(String path, String name, byte[] bytes) {
        Integer line = lineOf.get(path);
        if (line != null && crc32(bytes, bytes.length) != hexadecimal(line)) {
            throw damaged(name);
        }
    }

    /**
     * Returns the paths of all files in the manifest.
     *
     * @return paths in the jar, sorted
     */
    public List<String> paths() {
        List<String> paths = new ArrayList<>(lineOf.keySet());
        paths.sort(null);
        return List.copyOf(paths);
    }

    /**
     * Holds every file of the jar against its SHA-256.
     *
     * @throws ResourceFormatException if one is missing, cannot be read or is not the file that was released; it names the first such file
     */
    public void verify() {
        for (String path : paths()) {
            byte[] bytes = raw(anchor, "/".concat(path), path);
            if (bytes == null) {
                throw new ResourceFormatException(path, 0, "is missing, though " + manifest + " lists it");
            }
            check(path, path, bytes);
            int at = Objects.requireNonNull(lineOf.get(path), path) + CRC_DIGITS + 1;
            if (!sha256(bytes).equals(new String(lines, at, SHA_DIGITS, StandardCharsets.ISO_8859_1))) {
                throw damaged(path);
            }
        }
    }

    /**
     * Writes a manifest.
     *
     * @param files content of each file by its path in the jar, in ASCII
     * @return the text, to be stored as it is
     */
    public static String manifest(SortedMap<String, byte[]> files) {
        StringBuilder text = new StringBuilder();
        files.forEach((path, bytes) -> text.append(hexadecimal(crc32(bytes, bytes.length), CRC_DIGITS))
                .append(' ')
                .append(sha256(bytes))
                .append(' ')
                .append(path)
                .append('\n'));
        byte[] lines = text.toString().getBytes(StandardCharsets.ISO_8859_1);
        return text.append(hexadecimal(crc32(lines, lines.length), CRC_DIGITS))
                .append('\n')
                .toString();
    }

    private static ResourceFormatException damaged(String name) {
        return new ResourceFormatException(
                name, 0, "is damaged: it is not the file that was released; get an undamaged jar");
    }

    private static byte @Nullable [] raw(Class<?> neighbour, String resource, String name) {
        try (InputStream in = neighbour.getResourceAsStream(resource)) {
            if (in == null) {
                return null;
            }
            ByteArrayOutputStream all = new ByteArrayOutputStream(CHUNK);
            byte[] chunk = new byte[CHUNK];
            for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
                all.write(chunk, 0, read);
            }
            return all.toByteArray();
        } catch (IOException e) {
            ResourceFormatException broken = new ResourceFormatException(name, 0, "cannot be read: " + e.getMessage());
            broken.initCause(e);
            throw broken;
        }
    }

    private static int crc32(byte[] bytes, int length) {
        CRC32 crc = new CRC32();
        crc.update(bytes, 0, length);
        return (int) crc.getValue();
    }

    private static String sha256(byte[] bytes) {
        try {
            StringBuilder text = new StringBuilder(SHA_DIGITS);
            for (byte b : MessageDigest.getInstance("SHA-256").digest(bytes)) {
                text.append(hexadecimal(b, 2));
            }
            return text.toString();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static String hexadecimal(int value, int digits) {
        char[] text = new char[digits];
        for (int i = 0; i < digits; i++) {
            text[i] = Character.forDigit((value >>> (4 * (digits - 1 - i))) & 0xF, 16);
        }
        return new String(text);
    }

    /** The CRC-32 that stands in the manifest at a position; a figure that no file has if it is not one. */
    private long hexadecimal(int at) {
        long value = 0;
        for (int i = at; i < at + CRC_DIGITS; i++) {
            int digit = Character.digit((char) (lines[i] & 0xFF), 16);
            if (digit < 0) {
                return Long.MIN_VALUE;
            }
            value = (value << 4) | digit;
        }
        return (int) value;
    }
}
