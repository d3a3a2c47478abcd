package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureCommandTest {
    private static final Path SAMPLE = Path.of("samples", "boathouse.json");

    @TempDir
    Path folder;

    private ProgramRun run(String words) {
        List<Object> args = new ArrayList<>(List.of("picture"));
        for (String word : words.split(" ", -1)) {
            args.add(word.equals("SAMPLE") ? SAMPLE : word.replace("_", " "));
        }
        args.add("--out");
        args.add(folder.resolve("out.svg"));
        return ProgramRun.of(args.toArray());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        pressure-temperature R-744                                         | boiling
        pressure-temperature --visit SAMPLE --units US                     | superheat 13.4
        pressure-enthalpy --visit SAMPLE                                   | 1 suction line
        glide R-407C                                                       | Glide of R-407C is largest
        cylinder R-134a --water-capacity 47.7_lb --contents 38_lb          | 17.24 kg (38.00 lb) in 21.66 L
        cylinder --visit SAMPLE                                            | marked service pressure is reached
        table-error R-32                                                   | Largest error of 400 states
        """)
    void drawsEachKindAndSaysWhatItShows(String words, String said) throws IOException {
        ProgramRun run = run(words);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        if (!said.equals("boiling")) {
            assertThat(run.out()).contains(said);
        }
        assertThat(run.out()).contains("written to", "Source: ");
        assertThat(Files.readString(folder.resolve("out.svg")))
                .startsWith("<?xml")
                .endsWith("</svg>\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        pie R-744                                          | there is no picture "pie"; choose one of pressure-temperature
        glide                                              | name either a refrigerant
        glide R-407C --visit SAMPLE                        | name either a refrigerant
        glide R-134a                                       | has no glide
        glide R-41OA                                       | R-41OA
        cylinder R-134a                                    | needs --water-capacity and --contents
        glide R-407C --contents 9_lb                       | leave them out here
        cylinder --visit SAMPLE --contents 9_lb            | leave them out here
        cylinder R-134a --water-capacity 47.7_lb --contents 0_lb | not above zero
        cylinder R-134a --water-capacity 47.7 --contents 9_lb | 47.7
        """)
    void whatCannotBeDrawnIsOneLineAndLeavesNoFile(String words, String message) {
        ProgramRun run = run(words);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).startsWith("satline: ").contains(message).hasLineCount(1);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void theVisitIsNotOverwritten() throws IOException {
        Path visit = Files.copy(SAMPLE, folder.resolve("out.svg"));
        ProgramRun run = ProgramRun.of("picture", "pressure-enthalpy", "--visit", visit, "--out", visit);
        assertThat(run.status()).isEqualTo(2);
        assertThat(visit).hasSameTextualContentAs(SAMPLE);
    }
}
