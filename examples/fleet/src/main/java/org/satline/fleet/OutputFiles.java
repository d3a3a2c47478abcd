package org.satline.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reads what the job wrote: the finished files, never those that are hidden because their checkpoint is not complete.
 */
final class OutputFiles {
    private OutputFiles() {}

    /** All lines of one kind, sorted. */
    static List<String> lines(Path out, String kind) throws IOException {
        List<String> lines = new ArrayList<>();
        Path folder = out.resolve(kind);
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.filter(OutputFiles::isFinished).sorted().toList()) {
                    lines.addAll(Files.readAllLines(file));
                }
            }
        }
        lines.sort(null);
        return lines;
    }

    private static boolean isFinished(Path file) {
        String name = file.getFileName().toString();
        return !name.startsWith(".") && !name.startsWith("_") && Files.isRegularFile(file);
    }
}
