package org.satline.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Runs the fuzzer on each target in a process of its own, for so many seconds each; the profile {@code fuzz} starts it. */
final class FuzzRun {
    private FuzzRun() {}

    /**
     * Runs all targets.
     *
     * @param args how many seconds each
     * @throws IllegalStateException if a target fell; the input lies beside the log
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        List<String> fallen = new ArrayList<>();
        for (Class<?> target : FuzzCorpusTest.targets().toList()) {
            Path folder = Files.createDirectories(Path.of("target", "fuzz", target.getSimpleName(), "found"));
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            "com.code_intelligence.jazzer.Jazzer",
                            "--target_class=" + target.getName(),
                            "--instrumentation_includes=org.satline.**",
                            "--reproducer_path=" + folder.getParent(),
                            "-artifact_prefix=" + folder.getParent() + "/",
                            "-max_total_time=" + args[0],
                            "-timeout=120",
                            folder.toString(),
                            FuzzCorpusTest.CORPUS
                                    .resolve(target.getSimpleName())
                                    .toString())
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolveSibling("log.txt").toFile())
                    .start();
            int status = process.waitFor();
            System.out.println(target.getSimpleName() + ": " + (status == 0 ? "stands" : "FELL, status " + status));
            if (status != 0) {
                fallen.add(target.getSimpleName());
            }
        }
        if (!fallen.isEmpty()) {
            throw new IllegalStateException("fell: " + fallen + "; see target/fuzz, and put the input into the corpus");
        }
    }
}
