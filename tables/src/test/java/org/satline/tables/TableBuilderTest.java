package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationProperty;

class TableBuilderTest {
    /** Twice the tightest bound of a table: both may differ from the equation by it. */
    private static final double TWO_BOUNDS = 2e-8;

    @Test
    void generatorRepeatsItselfAndTheStoredTable(@TempDir Path directory) throws IOException {
        generate(directory, "R-134a");
        byte[] first = Files.readAllBytes(directory.resolve("r134a.saturation"));
        Files.write(directory.resolve("r134a.saturation"), new byte[] {1, 2, 3});
        generate(directory, "R-134a", "R-410A");
        assertThat(Files.readAllBytes(directory.resolve("r134a.saturation"))).isEqualTo(first);
        TableData made = TableReader.read("r134a.saturation", first);
        TableCurve stored = Tables.of("R-134a");
        for (double t = 180; t < 370; t += 7) {
            TableCurve curve = new TableCurve(Catalogue.standard().find("R-134a"), made);
            double p = stored.value(SaturationProperty.DEW_PRESSURE, t);
            assertThat(Math.abs(curve.dewPressurePa(t) / p - 1)).isLessThan(TWO_BOUNDS);
        }
    }

    @Test
    void generatorTellsOfEachTableAndPrintsNothing(@TempDir Path directory) throws IOException {
        PrintStream console = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            assertThat(generate(directory, "R-32")).singleElement().asString().startsWith("R-32: ");
        } finally {
            System.setOut(console);
        }
        assertThat(printed.size()).isZero();
    }

    private static List<String> generate(Path directory, String... designations) throws IOException {
        List<String> told = Collections.synchronizedList(new ArrayList<>());
        List<Refrigerant> wanted =
                Stream.of(designations).map(Catalogue.standard()::find).toList();
        TableGenerator.generate(directory, wanted, told::add);
        return List.copyOf(told);
    }

    @Test
    void generatorAsksForADirectory() {
        assertThatThrownBy(() -> RegeneratedTables.main(new String[0]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("directory");
    }
}
