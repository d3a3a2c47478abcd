package org.satline.tables;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import org.satline.equation.MissingEquationException;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.ResourceFormatException;
import org.satline.saturation.SaturationProperty;

/**
 * Makes tables and certificates from the equations of core and writes them where they differ from what is there. On one JDK the files come
 * out the same to the last bit. It prints nothing.
 */
final class TableGenerator {
    private final Path directory;

    private TableGenerator(Path directory) {
        this.directory = directory;
    }

    /**
     * Generates tables.
     *
     * @param directory holds the tables; made where it is missing
     * @param wanted refrigerants whose tables are made
     * @param told receives one line for each, as soon as it is done, from any thread
     * @throws IOException if the directory cannot be made
     */
    static void generate(Path directory, List<Refrigerant> wanted, Consumer<String> told) throws IOException {
        TableGenerator generator = new TableGenerator(Files.createDirectories(directory));
        wanted.parallelStream().map(generator::generate).forEach(told);
    }

    private String generate(Refrigerant refrigerant) {
        String name = refrigerant.designation();
        if (!refrigerant.hasComposition()) {
            return name + ": no table, it has no fixed composition";
        }
        try {
            GeneratedTable made = GeneratedTable.of(FluidModel.of(refrigerant));
            byte[] table = made.toBytes();
            Certificate certificate = made.certificate();
            String difference = write(TableFormat.fileName(name), table, made.data());
            Files.write(
                    directory.resolve(Certificate.fileName(name)),
                    certificate.toCsv().getBytes(StandardCharsets.UTF_8));
            return name + ": " + table.length + " bytes, " + difference + missed(certificate)
                    + (made.shortOfBound().isEmpty() ? "" : "; aims missed: " + made.shortOfBound());
        } catch (MissingEquationException | ConvergenceException | IllegalStateException e) {
            return name + ": no table, " + e.getMessage();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String missed(Certificate certificate) {
        StringBuilder text = new StringBuilder();
        for (Certificate.Entry entry : certificate.entries()) {
            if (!entry.keepsBound()) {
                text.append(String.format(
                        Locale.ROOT,
                        "; %s %s: %.2e",
                        entry.property().words(),
                        entry.region().words(),
                        entry.largestError()));
            }
        }
        return text.toString();
    }

    private String write(String fileName, byte[] table, TableData made) throws IOException {
        Path file = directory.resolve(fileName);
        if (!Files.exists(file)) {
            Files.write(file, table);
            return "new";
        }
        byte[] before = Files.readAllBytes(file);
        if (Arrays.equals(before, table)) {
            return "unchanged";
        }
        Files.write(file, table);
        try {
            return "changed, " + difference(TableReader.read(fileName, before), made);
        } catch (ResourceFormatException e) {
            return "replaces a file that could not be read (" + e.getMessage() + ")";
        }
    }

    private static String difference(TableData before, TableData after) {
        SaturationProperty worst = SaturationProperty.BUBBLE_PRESSURE;
        double largest = 0;
        int steps = 500;
        for (SaturationProperty property : SaturationProperty.values()) {
            Column a = Objects.requireNonNull(before.columns().get(property), property.words());
            Column b = Objects.requireNonNull(after.columns().get(property), property.words());
            double low = Math.max(a.low, b.low);
            double high = Math.min(a.high, b.high);
            for (int i = 0; i <= steps; i++) {
                double x = Math.min(high, low + (high - low) * i / steps);
                double difference = Math.abs(a.at(x) - b.at(x)) / Math.abs(a.at(x));
                if (difference > largest) {
                    largest = difference;
                    worst = property;
                }
            }
        }
        return String.format(Locale.ROOT, "by %.2e of the value at most (%s)", largest, worst.words());
    }
}
