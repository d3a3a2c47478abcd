package org.satline.benchmarks;

import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Question: how much longer than an empty main takes a first answer from a cold virtual machine? Whole processes of both in turn, on the
 * same class path.
 *
 * <p>Arguments: the jars of the class path, that of this module without its dependencies among them.
 */
public final class ColdStart {
    private static final int WARM_UP = 3;
    private static final int RUNS = 21;

    private ColdStart() {}

    /**
     * Measures and prints.
     *
     * @param arguments jars
     * @throws IOException if no process can be started
     * @throws InterruptedException if interrupted
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        String classPath = String.join(File.pathSeparator, arguments);
        List<Double> empty = new ArrayList<>();
        List<Double> first = new ArrayList<>();
        for (int i = -WARM_UP; i < RUNS; i++) {
            double emptyMs = run(classPath, EmptyMain.class);
            double firstMs = run(classPath, FirstAnswer.class);
            if (i >= 0) {
                empty.add(emptyMs);
                first.add(firstMs);
            }
        }
        PrintStream out = System.out;
        out.println(line("empty main", empty));
        out.println(line("first answer", first));
        out.println(String.format(Locale.ROOT, "median difference %.0f ms", median(first) - median(empty)));
    }

    private static double run(String classPath, Class<?> main) throws IOException, InterruptedException {
        String java =
                Path.of(System.getProperty("java.home", ""), "bin", "java").toString();
        long start = System.nanoTime();
        int exit = new ProcessBuilder(java, "-cp", classPath, main.getName())
                .inheritIO()
                .start()
                .waitFor();
        double milliseconds = (System.nanoTime() - start) / 1e6;
        if (exit != 0) {
            throw new IllegalStateException(main.getSimpleName() + " ended with " + exit + "; check the class path");
        }
        return milliseconds;
    }

    private static String line(String what, List<Double> milliseconds) {
        return String.format(
                Locale.ROOT,
                "%s: median %.0f ms, least %.0f, most %.0f, of %d processes",
                what,
                median(milliseconds),
                milliseconds.stream().mapToDouble(m -> m).min().orElseThrow(),
                milliseconds.stream().mapToDouble(m -> m).max().orElseThrow(),
                milliseconds.size());
    }

    private static double median(List<Double> values) {
        double[] sorted = values.stream().mapToDouble(v -> v).toArray();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
