package org.satline.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.ledger.LedgerTarget;
import org.satline.tables.TableTarget;

/**
 * Replays the corpus of each target and small changes of it, for a second or two in all. The fuzzer itself, which is led by the coverage,
 * runs in the profile {@code fuzz}; what it finds goes into the corpus.
 */
class FuzzCorpusTest {
    static final Path CORPUS = Path.of("src/test/resources/org/satline/fuzz");
    private static final long NANOSECONDS_EACH = 400_000_000;

    static Stream<Class<?>> targets() {
        return Stream.of(
                QuantityTarget.class,
                DesignationTarget.class,
                StampTarget.class,
                VisitTarget.class,
                KitTarget.class,
                RowsTarget.class,
                ResourceTarget.class,
                JsonTarget.class,
                LedgerTarget.class,
                TableTarget.class);
    }

    private static List<byte[]> corpus(Class<?> target) throws IOException {
        List<byte[]> inputs = new ArrayList<>();
        try (Stream<Path> files = Files.list(CORPUS.resolve(target.getSimpleName()))) {
            for (Path file : files.sorted().toList()) {
                inputs.add(Files.readAllBytes(file));
            }
        }
        return inputs;
    }

    private static void run(Method entry, byte[] input) {
        try {
            entry.invoke(null, (Object) input);
        } catch (InvocationTargetException e) {
            throw new AssertionError(entry.getDeclaringClass().getSimpleName() + " on " + Target.text(input), e);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("targets")
    void theCorpusAndSmallChangesOfItAreReadOrRefused(Class<?> target) throws IOException, NoSuchMethodException {
        Method entry = target.getMethod("fuzzerTestOneInput", byte[].class);
        List<byte[]> inputs = corpus(target);
        assertThat(inputs).isNotEmpty();
        inputs.forEach(input -> run(entry, input));
        Random random = new Random(1);
        long end = System.nanoTime() + NANOSECONDS_EACH;
        while (System.nanoTime() < end) {
            run(entry, changed(inputs.get(random.nextInt(inputs.size())), random));
        }
    }

    /** One to three bytes changed, removed or doubled. */
    private static byte[] changed(byte[] input, Random random) {
        byte[] bytes = input;
        for (int changes = 1 + random.nextInt(3); changes > 0 && bytes.length > 0; changes--) {
            int at = random.nextInt(bytes.length);
            int length = 1 + random.nextInt(Math.min(8, bytes.length - at));
            switch (random.nextInt(3)) {
                case 0 -> {
                    bytes = bytes.clone();
                    bytes[at] = (byte) random.nextInt(256);
                }
                case 1 -> bytes = joined(bytes, at, at + length);
                default -> bytes = joined(bytes, at + length, at);
            }
        }
        return bytes;
    }

    /** The bytes up to one place, and from another on. */
    private static byte[] joined(byte[] bytes, int to, int from) {
        byte[] made = new byte[to + bytes.length - from];
        System.arraycopy(bytes, 0, made, 0, to);
        System.arraycopy(bytes, from, made, to, bytes.length - from);
        return made;
    }

    @Test
    void eachFolderOfTheCorpusHasItsTarget() throws IOException {
        try (Stream<Path> folders = Files.list(CORPUS)) {
            assertThat(folders.map(folder -> String.valueOf(folder.getFileName())))
                    .containsExactlyInAnyOrderElementsOf(
                            targets().map(Class::getSimpleName).toList());
        }
    }
}
