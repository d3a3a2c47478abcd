package org.satline.transfer.planner;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The table of plans by kind in the README: written by the run over many hook-ups, held against every run. */
final class HookUpShares {
    private static final Path README = Path.of("README.md");
    private static final String HEAD = "| asked | plans | share |";

    private HookUpShares() {}

    /** The shares that are printed, by kind, in [0, 1]. */
    static Map<String, Double> printed() {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (String row : rows()) {
            String[] cells = row.split(" *\\| *", -1);
            String[] counts = cells[2].split(" of ", -1);
            shares.put(cells[1], Double.parseDouble(counts[0]) / Double.parseDouble(counts[1]));
        }
        return shares;
    }

    private static List<String> rows() {
        List<String> lines = lines();
        int head = lines.indexOf(HEAD);
        if (head < 0) {
            throw new AssertionError("the README has no table of plans: write it by AllHookUps");
        }
        return lines.subList(head + 2, lines.size()).stream()
                .takeWhile(line -> line.startsWith("|"))
                .toList();
    }

    private static List<String> lines() {
        try {
            return Files.readAllLines(README);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The table of a run. */
    static String table(Map<String, int[]> share) {
        StringBuilder table = new StringBuilder(HEAD).append("\n|---|---|---|\n");
        share.forEach((kind, counts) -> table.append(String.format(
                Locale.ROOT, "| %s | %d of %d | %d %% |%n", kind, counts[0], counts[1], 100 * counts[0] / counts[1])));
        return table.toString();
    }

    /** Writes the table of a run in place of the printed one. */
    static void write(Map<String, int[]> share) {
        String text = String.join("\n", lines()) + "\n";
        String old = HEAD + "\n|---|---|---|\n" + String.join("\n", rows()) + "\n";
        try {
            Files.writeString(README, text.replace(old, table(share)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
