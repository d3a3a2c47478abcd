package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.quantity.PlainText;

class MainTest {
    @ParameterizedTest
    @ValueSource(strings = {"--help", "visit --help", "points --help"})
    void helpNamesTheExitOrTheUse(String line) {
        ProgramRun run = ProgramRun.of((Object[]) line.split(" ", -1));
        assertThat(run.status()).isZero();
        assertThat(run.out()).startsWith("Usage: satline");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void versionIsOneLine() {
        assertThat(ProgramRun.of("--version").out()).startsWith("satline ").hasLineCount(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "points a.csv --out b.csv --engine #",
                "#",
                "visit #",
                "pressure # 20degC",
                "visit a.json --units #"
            })
    void whatIsRepeatedOfACommandLineIsShortAndPlain(String line) {
        for (String endless : new String[] {"x".repeat(5000), "x\u001b[2K\u202ex", "x ".repeat(5000)}) {
            Object[] words = line.split(" ", -1);
            for (int i = 0; i < words.length; i++) {
                words[i] = words[i].equals("#") ? endless : words[i];
            }
            ProgramRun run = ProgramRun.of(words);
            assertThat(run.status()).isEqualTo(2);
            assertThat(run.err()).hasLineCount(1).hasSizeLessThan(2500).doesNotContain("x".repeat(61));
            assertThat(run.err().codePoints().filter(c -> c != '\n')).noneMatch(PlainText::isHidden);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        ''                                  | no command given
        --wrong                             | "--wrong"
        prints                              | "prints"
        points                              | Missing required
        points --wrong                      | "--wrong"
        points a.csv --out b.csv c.csv      | "c.csv"
        points a.csv --out b.csv --engine x | allowed: equation, table
        points missing.csv --out b.csv      | missing.csv: cannot be read (no such file)
        visit                               | Missing required
        visit missing.json                  | missing.json: cannot be read (no such file)
        visit missing.json --loud           | "--loud"
        """)
    void wrongUseIsOneLineAndStatusTwo(String line, String part) {
        ProgramRun run = ProgramRun.of((Object[]) (line.isEmpty() ? new String[0] : line.split(" +", -1)));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("satline: ").contains(part).hasLineCount(1);
    }
}
