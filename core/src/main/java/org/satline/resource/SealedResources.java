package org.satline.resource;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.function.Predicate;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/**
 * The data files of one jar, and the manifest that holds the digests of all of them. Immutable, thread-safe.
 *
 * <p>Each file is held against its CRC-32 whenever it is read, so that no damage of up to 32 bits in a row passes, and other damage with a
 * chance of one in four thousand million. {@link #verify} holds all files against their SHA-256 as well, as the build does: that costs a
 * cold virtual machine more than the whole first answer, so it is not done at each reading. The manifest finds damage of its own by a
 * CRC-32 over itself. None of this protects against somebody who puts another manifest into the jar; sign the jar for that.
 *
 * <p>Form of the manifest: a line for each file, sorted by path, of CRC-32 (8 hexadecimal digits), SHA-256 (64), length of the path (4) and
 * path in the jar, with one blank between; a last line with the CRC-32 of all lines before it. A path is found by bisection: putting all of
 * them into a map would cost a cold virtual machine milliseconds.
 */
public final class SealedResources {
    private static final int CRC_DIGITS = 8;
    private static final int SHA_DIGITS = 64;
    private static final int LENGTH_DIGITS = 4;
    private static final int LENGTH_AT = CRC_DIGITS + 1 + SHA_DIGITS + 1;
    private static final int PATH_AT = LENGTH_AT + LENGTH_DIGITS + 1;
    private static final int ABSENT = -1;
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
    /** Where each line begins. */
    private final int[] starts;

    SealedResources(Class<?> anchor, String manifest, byte[] bytes) {
        this.anchor = anchor;
        this.manifest = manifest;
        this.lines = bytes;
        int end = bytes.length - CRC_DIGITS - 1;
        if (end < 0 || bytes[bytes.length - 1] != '\n' || crc32(bytes, end) != figure(end)) {
            throw damaged(manifest);
        }
        int[] found = new int[end / PATH_AT];
        int count = 0;
        for (int at = 0; at < end; ) {
            long length = at + PATH_AT < end ? figure(at + LENGTH_AT, LENGTH_DIGITS) : ABSENT;
            long stop = at + PATH_AT + length;
            if (length < 0 || stop >= end || bytes[(int) stop] != '\n') {
                throw damaged(manifest);
            }
            found[count++] = at;
            at = (int) stop + 1;
        }
        starts = Arrays.copyOf(found, count);
    }

    /** Where the line of a path begins, or {@link #ABSENT}. */
    private int lineOf(String path) {
        if (path.indexOf('\n') >= 0) {
            return ABSENT; // it would run on into the next line
        }
        int low = 0;
        int high = starts.length - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int order = compare(path, starts[middle]);
            if (order == 0) {
                return starts[middle];
            }
            if (order < 0) {
                high = middle - 1;
            } else {
                low = middle + 1;
            }
        }
        return ABSENT;
    }

    /** Compares a path with that of a line, character by character; one byte is one character, since the paths are ASCII. */
    private int compare(String path, int line) {
        int at = line + PATH_AT;
        for (int i = 0; i < path.length(); i++) {
            int there = lines[at + i] & 0xFF;
            // the line feed that ends a line lies below every character of a path
            if (path.charAt(i) != there) {
                return path.charAt(i) - there;
            }
        }
        return lines[at + path.length()] == '\n' ? 0 : -1;
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
     * Reads a file that lies beside a class and holds it against the manifest. A file that the manifest does not list is none of this
     * jar's, a caller's own for instance, and comes back as it is.
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
            if (lineOf(path) != ABSENT) {
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
        return lineOf(type.substring(0, type.lastIndexOf('.') + 1)
                        .replace('.', '/')
                        .concat(Objects.requireNonNull(name, "name")))
                != ABSENT;
    }

    /** Holds bytes against the manifest, as {@link #find} does. */
    void check(String path, String name, byte[] bytes) {
        int line = lineOf(path);
        if (line != ABSENT && crc32(bytes, bytes.length) != figure(line)) {
            throw damaged(name);
        }
    }

    /**
     * Returns the paths of all files in the manifest.
     *
     * @return paths in the jar, sorted
     */
    public List<String> paths() {
        List<String> paths = new ArrayList<>();
        for (int at : starts) {
            int length = (int) figure(at + LENGTH_AT, LENGTH_DIGITS);
            paths.add(new String(lines, at + PATH_AT, length, StandardCharsets.ISO_8859_1));
        }
        return List.copyOf(paths);
    }

    /**
     * One figure for many files: it changes where one of them does, is added or goes.
     *
     * @param counts which files, by path in the jar
     * @return CRC-32 of their lines in the manifest, 8 hexadecimal digits
     */
    public String digest(Predicate<String> counts) {
        CRC32 crc = new CRC32();
        for (int at : starts) {
            int length = (int) figure(at + LENGTH_AT, LENGTH_DIGITS);
            if (counts.test(new String(lines, at + PATH_AT, length, StandardCharsets.ISO_8859_1))) {
                crc.update(lines, at, PATH_AT + length);
            }
        }
        return hexadecimal((int) crc.getValue(), CRC_DIGITS);
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
            int at = lineOf(path) + CRC_DIGITS + 1;
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
                .append(hexadecimal(path.length(), LENGTH_DIGITS))
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
    private long figure(int at) {
        long value = figure(at, CRC_DIGITS);
        return value < 0 ? value : (int) value;
    }

    /** The figure that stands in the manifest at a position; below every figure if there is none. */
    private long figure(int at, int digits) {
        long value = 0;
        for (int i = at; i < at + digits; i++) {
            int digit = Character.digit((char) (lines[i] & 0xFF), 16);
            if (digit < 0) {
                return Long.MIN_VALUE;
            }
            value = (value << 4) | digit;
        }
        return value;
    }
}
