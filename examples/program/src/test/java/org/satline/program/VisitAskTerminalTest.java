package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The program in a pseudo-terminal, made by the command {@code script} of util-linux where there is one, and in none. */
@Timeout(120)
class VisitAskTerminalTest {
    private static final Path SCRIPT = Path.of("/usr/bin/script");
    private static final byte[] CTRL_C = {3};

    @TempDir
    Path folder;

    private List<String> program(Path file) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return List.of(
                java,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "visit",
                "--ask",
                file.toString());
    }

    @Test
    void withoutATerminalItSaysSo() throws IOException, InterruptedException {
        Path file = folder.resolve("visit.json");
        Process process =
                new ProcessBuilder(program(file)).redirectErrorStream(true).start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(said).contains("there is no terminal");
        assertThat(file).doesNotExist();
    }

    @Test
    void atAPseudoTerminalItAsksAndKeepsTheAnswersAtCtrlC() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(SCRIPT), "no command script here");
        Path file = folder.resolve("visit.json");
        // without exec a shell between terminal and program dies of Ctrl-C itself, and its status hides the program's
        String command = "exec "
                + String.join(
                        " ",
                        program(file).stream().map(word -> "'" + word + "'").toList());
        Process process = new ProcessBuilder(SCRIPT.toString(), "-qec", command, "/dev/null")
                .redirectErrorStream(true)
                .start();
        OutputStream keys = process.getOutputStream();
        Screen screen = new Screen(process.getInputStream());
        screen.await("Day of the visit");
        // a letter too many, taken back: the line is edited
        type(keys, "2026-07-145\b\r".replace('\b', '\u007f'));
        screen.await("Time of the readings");
        type(keys, "\r");
        screen.await("Altitude");
        type(keys, "310 m\r");
        screen.await("Refrigerant on the nameplate");
        screen.await("> ");
        keys.write(CTRL_C);
        keys.flush();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(ExitStatus.SOME_ROWS_REFUSED);
        assertThat(Files.readString(file)).contains("\"2026-07-14\"", "310 m");
    }

    private static void type(OutputStream keys, String text) throws IOException {
        keys.write(text.getBytes(StandardCharsets.UTF_8));
        keys.flush();
    }

    /** What the terminal shows. For one thread. */
    private static final class Screen {
        private final InputStream in;
        private final StringBuilder shown = new StringBuilder();

        Screen(InputStream in) {
            this.in = in;
        }

        void await(String text) throws IOException {
            byte[] buffer = new byte[4096];
            while (shown.indexOf(text) < 0) {
                int read = in.read(buffer);
                if (read < 0) {
                    throw new AssertionError("the program ended, its screen: " + shown);
                }
                shown.append(new String(buffer, 0, read, StandardCharsets.ISO_8859_1));
            }
            shown.delete(0, shown.indexOf(text) + text.length());
        }
    }
}
