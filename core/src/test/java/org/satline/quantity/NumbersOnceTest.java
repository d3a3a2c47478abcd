package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Conversion factors are written down in this package alone; elsewhere the quantities convert. Comments may name them. */
class NumbersOnceTest {
    private static final Path PROJECT = Path.of("..");

    private static final Pattern FACTOR =
            Pattern.compile("273\\.15|6_?894\\.7|0\\.4535|101_?325(?!\\d)|\\b101\\.325|459\\.67|\\b1\\.8\\b");

    /** A line that may hold such a number, with the reason. */
    private record Allowed(String file, String part, String reason) {}

    private static final List<Allowed> ALLOWED = List.of(
            new Allowed("quantity/", "", "the home of the factors"),
            new Allowed(
                    "DensitySolver.java", "new double[] {1, 1.1,", "multiples of a starting density, no conversion"),
            new Allowed("ReferenceState.java", "at 101.325 kPa\"", "name of a reference state, printed"),
            new Allowed("KnownDifference.java", "at 101.325 kPa", "words of a message"),
            new Allowed("BudgetBuilder.java", "at 101.325 kPa", "words of a derivation"),
            new Allowed("Site.java", "p_0 = 101.325 kPa", "the constants of ISO 2533, printed"),
            new Allowed("Working.java", "1.8", "formula as printed for pupils"),
            new Allowed("FillLimitMaker.java", "1 lb = 0.45359237 kg.", "given as printed for pupils"),
            new Allowed(
                    "FillRulesExercise.java", "The standard atmosphere is 101.325 kPa", "given as printed for pupils"),
            new Allowed("AltitudeMaker.java", "101.325 kPa", "law of ISO 2533 as printed for pupils"),
            new Allowed("Readout.java", "\"101.325 kPa\"", "given as printed for pupils"),
            new Allowed("GlidePicture.java", "at 101.325 kPa it is", "words below a picture"),
            new Allowed("OwnBlend.java", "at 101.325 kPa%n", "words of an example"));

    private record Line(String file, int number, String text) {
        boolean isAllowed() {
            return ALLOWED.stream().anyMatch(this::matches);
        }

        boolean matches(Allowed each) {
            return file.contains(each.file()) && text.contains(each.part());
        }
    }

    @Test
    void noConversionFactorOutsideTheQuantities() throws IOException {
        List<Line> lines = lines();
        assertThat(lines).anyMatch(line -> line.file().contains("quantity/Factors.java"));
        assertThat(lines.stream().filter(line -> !line.isAllowed()))
                .as("convert by a quantity, such as Temperature.ofCelsius or Atmosphere.standard()")
                .isEmpty();
    }

    private static List<Line> lines() throws IOException {
        List<Line> found = new ArrayList<>();
        for (Path source : sources()) {
            String file = PROJECT.relativize(source).toString().replace('\\', '/');
            List<String> text = Files.readAllLines(source);
            for (int i = 0; i < text.size(); i++) {
                String line = text.get(i).strip();
                boolean comment = line.startsWith("*") || line.startsWith("/*") || line.startsWith("//");
                if (!comment && FACTOR.matcher(line).find()) {
                    found.add(new Line(file, i + 1, line));
                }
            }
        }
        return found;
    }

    /** Main sources of every module; where core stands alone, its own. */
    private static List<Path> sources() throws IOException {
        List<Path> found = new ArrayList<>();
        Files.walkFileTree(PROJECT, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
                String name = directory.getFileName().toString();
                boolean hidden = name.startsWith(".") && !directory.equals(PROJECT);
                return hidden || name.equals("target") || name.equals("test") || name.equals("resources")
                        ? FileVisitResult.SKIP_SUBTREE
                        : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (file.toString().endsWith(".java")) {
                    found.add(file);
                }
                return FileVisitResult.CONTINUE;
            }
        });
        return found;
    }
}
