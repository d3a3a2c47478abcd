package org.satline.program.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.satline.program.words.ProgramWordingTest.ENGLISH;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.satline.program.file.BadInputException;
import org.satline.visit.file.FieldValue;

@Timeout(120)
class KitTest {
    @TempDir
    Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void copyTheSample() throws IOException {
        file = folder.resolve("kit.json");
        Files.copy(Path.of("samples", "kit.json"), file);
    }

    /** FIPS 180-4, the example of one block: SHA-256 of abc. */
    @Test
    void digestIsThatOfThePublishedExample() {
        assertThat(VisitStore.digest("abc".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void itsInstrumentsAreNotAskedForAndItsHoseStandsAsDefault() {
        Map<String, List<String>> rules = new LinkedHashMap<>();
        rules.put("Altitude", List.of("310 m"));
        rules.put("Refrigerant on the nameplate", List.of("R-410A"));
        rules.put("Metering", List.of("expansion-valve"));
        rules.put("Day of", List.of(""));
        rules.put("Time of", List.of(""));
        Path visit = folder.resolve("visit.json");
        Kit kit = Kit.read(file);
        try (Typed typed = new Typed(rules)) {
            VisitAsk.ask(visit, Optional.of(kit), typed.prompt(), LocalDateTime.of(2026, 7, 14, 14, 35), ENGLISH);
            assertThat(typed.asked()).noneMatch(line -> line.contains("gauge,") || line.contains("thermometer"));
        }
        FieldValue.Fields fields = VisitStore.read(visit);
        assertThat(FieldTree.text(fields, "kit.sha256")).contains(kit.digest());
        assertThat(FieldTree.get(fields, "instruments")).isEqualTo(FieldTree.get(kit.fields(), "instruments"));
        assertThat(kit.standing("cylinder.hoses[0].length")).isPresent();
        assertThat(kit.cylinder(kit.cylinders().get(0))).isPresent();
    }

    @Test
    void missingOrChangedIsSaid() throws IOException {
        FieldValue.Fields visit = Kit.read(file).applied(FieldTree.EMPTY);
        Path beside = folder.resolve("visit.json");
        assertThat(Kit.difference(visit, beside, Optional.empty(), ENGLISH)).isEmpty();
        Files.writeString(file, Files.readString(file) + "\n");
        assertThat(Kit.difference(visit, beside, Optional.empty(), ENGLISH))
                .get()
                .asString()
                .contains("changed");
        assertThat(Kit.difference(visit, beside, Optional.of(Kit.read(file)), ENGLISH))
                .isPresent();
        Files.delete(file);
        assertThat(Kit.difference(visit, beside, Optional.empty(), ENGLISH))
                .get()
                .asString()
                .contains("missing");
    }

    @Test
    void whatNoVisitTakesIsRefusedWithItsField() throws IOException {
        Files.writeString(file, "{ \"hoses\": [ { \"port\": \"low-side\", \"systemEnd\": \"knot\" } ] }");
        assertThatThrownBy(() -> Kit.read(file))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("knot");
        Files.writeString(file, "{ \"van\": 3 }");
        assertThatThrownBy(() -> Kit.read(file))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("van");
    }
}
