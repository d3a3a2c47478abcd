package org.satline.fleet;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Writes the readings of a simulated fleet as files, one for each day of arrival. */
final class FleetWriter {
    private FleetWriter() {}

    static void write(SimulatedFleet fleet, Path folder) throws IOException {
        Files.createDirectories(folder);
        long perDay = fleet.blocks() / fleet.days();
        for (int day = 0; day < fleet.days(); day++) {
            Path file = folder.resolve(
                    String.format(Locale.ROOT, "day-%05d.csv", fleet.plan().firstDay() + day));
            try (BufferedWriter lines = Files.newBufferedWriter(file)) {
                lines.write(ReadingLine.HEAD + "\n");
                for (long block = day * perDay; block < (day + 1) * perDay; block++) {
                    fleet.send(block, one -> line(lines, one));
                }
            }
        }
    }

    private static void line(BufferedWriter lines, ReadingLine.Read one) {
        try {
            if (one instanceof ReadingLine.Good good) {
                lines.write(ReadingLine.of(good.reading()) + "\n");
            } else if (one instanceof ReadingLine.Bad bad) {
                // commas that the list of rejected readings had to give up
                lines.write(bad.rejected().text.replace(';', ',') + "\n");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
