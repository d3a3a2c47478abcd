package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.satline.resource.ResourceFormatException;
import org.satline.resource.SealedResources;

/**
 * Bytes of the resources of both jars are changed on their way through the class loader; what is read is the released file, or nothing. The
 * profile {@code flips} samples 200 000, the usual run few.
 */
class FlippedBytesTest {
    private static final int FLIPS = Integer.getInteger("satline.flips", 3000);

    /** A resource, and what reads it as the library does. */
    @SuppressWarnings("ArrayRecordComponent") // whole files, compared by hand
    private record Read(String path, byte[] bytes, Object manifest, Class<?> neighbour, String name) {}

    /** Loads the library anew, and hands out one resource with one byte changed. */
    private static final class Damaging extends ClassLoader {
        private String path = "";
        private byte[] damaged = {};

        Damaging() {
            super(FlippedBytesTest.class.getClassLoader());
        }

        void damage(String resource, byte[] bytes) {
            path = resource;
            damaged = bytes;
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            synchronized (getClassLoadingLock(name)) {
                Class<?> loaded = findLoadedClass(name);
                if (loaded != null || !name.startsWith("org.satline.")) {
                    return loaded != null ? loaded : super.loadClass(name, resolve);
                }
                byte[] code = whole(getParent(), name.replace('.', '/') + ".class");
                return defineClass(name, code, 0, code.length);
            }
        }

        @Override
        public @Nullable InputStream getResourceAsStream(String name) {
            return name.equals(path) ? new ByteArrayInputStream(damaged) : super.getResourceAsStream(name);
        }
    }

    private static byte[] whole(ClassLoader loader, String name) throws TypeNotPresentException {
        try (InputStream in = loader.getResourceAsStream(name)) {
            if (in == null) {
                throw new TypeNotPresentException(name, null);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Read> reads(Damaging loader) throws ReflectiveOperationException {
        Class<?> sealed = loader.loadClass(SealedResources.class.getName());
        Class<?> provider = loader.loadClass(TableProvider.class.getName());
        List<Read> reads = new ArrayList<>();
        for (Object manifest : new Object[] {
            sealed.getMethod("core").invoke(null),
            provider.getMethod("resources").invoke(null)
        }) {
            for (Object each : (List<?>) sealed.getMethod("paths").invoke(manifest)) {
                String path = each.toString();
                if (path.startsWith("META-INF/")) {
                    continue; // the Java platform reads it and refuses what it cannot load; without it the equations
                    // answer
                }
                String room = path.substring(0, path.indexOf('/', "org/satline/".length()) + 1);
                Class<?> neighbour = loader.loadClass(room.replace('/', '.') + "package-info");
                reads.add(new Read(
                        path, whole(loader.getParent(), path), manifest, neighbour, path.substring(room.length())));
            }
        }
        return reads;
    }

    @Test
    void everyReadIsRightOrRefused() throws ReflectiveOperationException {
        Damaging loader = new Damaging();
        List<Read> reads = reads(loader);
        Method find = loader.loadClass(SealedResources.class.getName()).getMethod("bytes", Class.class, String.class);
        int[] ends = new int[reads.size()];
        int total = 0;
        for (int i = 0; i < ends.length; i++) {
            total += reads.get(i).bytes().length;
            ends[i] = total;
        }
        Random random = new Random(7);
        int refused = 0;
        for (int i = 0; i < FLIPS; i++) {
            // spread evenly over all bytes, so that as many flips as bytes would reach each
            int at = (int) ((long) total * i / FLIPS) + random.nextInt(Math.max(1, total / FLIPS));
            int found = Arrays.binarySearch(ends, at + 1);
            int file = found < 0 ? -found - 1 : found;
            Read read = reads.get(file);
            int place = at - (ends[file] - read.bytes().length);
            byte[] damaged = read.bytes().clone();
            damaged[place] ^= (byte) (1 + random.nextInt(255));
            loader.damage(read.path(), damaged);
            refused += isRefused(find, read) ? 1 : 0;
        }
        System.out.println(
                FLIPS + " bytes changed in " + total + ", in " + reads.size() + " files; refused: " + refused);
        assertThat(refused).isEqualTo(FLIPS);
    }

    private static boolean isRefused(Method find, Read read) throws IllegalAccessException {
        try {
            byte[] found = (byte[]) find.invoke(read.manifest(), read.neighbour(), read.name());
            assertThat(found).as(read.path()).isEqualTo(read.bytes());
            return false;
        } catch (InvocationTargetException e) {
            assertThat(Objects.requireNonNull(e.getCause()).getClass().getName())
                    .isEqualTo(ResourceFormatException.class.getName());
            return true;
        }
    }

    /** A manifest with a byte changed is refused, or says the same: a digit of its own sum in capitals. */
    @Test
    void aManifestIsRightOrRefused() throws ReflectiveOperationException {
        for (Class<?> anchor : List.of(SealedResources.class, TableProvider.class)) {
            Damaging loader = new Damaging();
            Class<?> neighbour = loader.loadClass(anchor.getName());
            String name = anchor == TableProvider.class ? "tables.digests" : "core.digests";
            String path = anchor.getPackageName().replace('.', '/') + "/" + name;
            byte[] bytes = whole(loader.getParent(), path);
            Method of = loader.loadClass(SealedResources.class.getName()).getMethod("of", Class.class, String.class);
            Random random = new Random(8);
            for (int i = 0; i < FLIPS / 10; i++) {
                byte[] damaged = bytes.clone();
                damaged[random.nextInt(bytes.length)] ^= (byte) (1 + random.nextInt(255));
                loader.damage(path, damaged);
                try {
                    of.invoke(null, neighbour, name);
                    assertThat(new String(damaged, StandardCharsets.ISO_8859_1))
                            .isEqualToIgnoringCase(new String(bytes, StandardCharsets.ISO_8859_1));
                } catch (InvocationTargetException e) {
                    assertThat(Objects.requireNonNull(e.getCause()).getClass().getName())
                            .isEqualTo(ResourceFormatException.class.getName());
                }
            }
        }
    }
}
