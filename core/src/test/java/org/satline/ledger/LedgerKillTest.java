package org.satline.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** A process that appends to a ledger is killed at random moments; whatever it acknowledged must be there afterwards. */
class LedgerKillTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void nothingAcknowledgedIsLostByAKill() throws IOException, InterruptedException {
        kill(6);
    }

    /** The same many times: {@code mvn -pl core test -Dtest=LedgerKillTest -Dsatline.slow=true}. */
    @Test
    @Tag("slow")
    @EnabledIfSystemProperty(named = "satline.slow", matches = "true")
    void nothingAcknowledgedIsLostByManyKills() throws IOException, InterruptedException {
        kill(300);
    }

    private void kill(int times) throws IOException, InterruptedException {
        Path file = folder.resolve("ledger.jsonl");
        Random random = new Random(5);
        long acknowledged = 0;
        for (int i = 0; i < times; i++) {
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-Xshare:auto",
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path")
                                    + System.getProperty("path.separator")
                                    + System.getProperty("jdk.module.path", ""),
                            Appender.class.getName(),
                            file.toString())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            try (BufferedReader reader =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
                String first = reader.readLine();
                assertThat(first).isNotNull();
                TimeUnit.MICROSECONDS.sleep(random.nextInt(60_000));
                process.toHandle().destroyForcibly(); // unlike the method of Process, leaves the report readable
                String last = first;
                for (String line = first; line != null; line = reader.readLine()) {
                    last = line.endsWith(".") ? line : last; // the kill may cut the report itself
                }
                acknowledged = Long.parseLong(last.substring(0, last.length() - 1));
            }
            process.waitFor();
            LedgerReading reading = LedgerFile.read(file);
            assertThat(reading.damages()).isEmpty();
            assertThat(reading.ledger().lastNumber()).isGreaterThanOrEqualTo(acknowledged);
            assertThat(reading.ledger().entries())
                    .hasSize((int) reading.ledger().lastNumber());
        }
        assertThat(acknowledged).isGreaterThan(times);
    }

    /** Appends for ever and says each number after it was acknowledged. */
    static final class Appender {
        private Appender() {}

        public static void main(String[] args) throws IOException {
            try (LedgerFile ledger = LedgerFile.open(Path.of(args[0]))) {
                while (true) {
                    Ledger.Decision decision = ledger.append(new LedgerEntry.Transfer(
                            Party.outside("supplier"),
                            Party.system("cold room"),
                            "R-404A",
                            1,
                            0,
                            "dairy",
                            Instant.EPOCH,
                            "x".repeat(200)));
                    System.out.print(((Ledger.Decision.Entered) decision).number() + ".\n");
                    System.out.flush();
                }
            }
        }
    }
}
