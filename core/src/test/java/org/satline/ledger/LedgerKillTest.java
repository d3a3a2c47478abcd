package org.satline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** Two processes take turns with one ledger and are killed at random moments; whatever they acknowledged must be there afterwards. */
class LedgerKillTest {
    private static final String HELD = "held";
    /** Each opening reads the whole ledger, so one ledger for all kills would make the time grow with their square. */
    private static final int KILLS_OF_A_LEDGER = 50;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void twoWritersTakingTurnsLoseNothingByKills() throws IOException, InterruptedException {
        kill(24);
    }

    /** The same many times: {@code mvn -B test -P kills -pl core}. */
    @Test
    @Tag("slow")
    @EnabledIfSystemProperty(named = "satline.slow", matches = "true")
    void twoWritersTakingTurnsLoseNothingByAThousandKills() throws IOException, InterruptedException {
        kill(1000);
    }

    private void kill(int times) throws IOException, InterruptedException {
        Random random = new Random(5);
        long acknowledged = 0;
        long unacknowledged = 0;
        for (int done = 0; done < times; done += KILLS_OF_A_LEDGER) {
            Path file = folder.resolve("ledger-" + done + ".jsonl");
            List<Run> runs = kill(file, Math.min(KILLS_OF_A_LEDGER, times - done), random);
            long there = LedgerFile.read(file).ledger().entries().size();
            long told = runs.stream().mapToLong(run -> run.acknowledged).sum();
            acknowledged += told;
            unacknowledged += there - told;
        }
        System.out.printf(
                Locale.ROOT,
                "%d kills: %d entries acknowledged, all there; %d more, whole%n",
                times,
                acknowledged,
                unacknowledged);
        assertThat(acknowledged).isGreaterThan(times);
    }

    /** A process whose lock must hold while others read the file: closing any channel of a file gives up POSIX locks on it. */
    @Test
    void anotherProcessIsRefusedAlthoughThisOneReadTheFile() throws IOException, InterruptedException {
        Path file = folder.resolve("ledger.jsonl");
        try (LedgerFile ledger = LedgerFile.open(file)) {
            ledger.append(Writer.delivery("here", 1));
            assertThat(LedgerFile.read(file).ledger().entries()).hasSize(1);
            assertThat(Files.readAllBytes(file)).isNotEmpty();
            Run other = new Run(file, "there");
            assertThat(other.reader.readLine()).isEqualTo(HELD);
            other.kill();
            assertThat(other.acknowledged).isZero();
            assertThat(ledger.append(Writer.delivery("here", 2))).isInstanceOf(Ledger.Decision.Entered.class);
        }
        assertThatThrownBy(() -> LedgerFile.read(folder.resolve("none"))).isInstanceOf(IOException.class);
    }

    /** Two writers, one of them killed and started anew so many times; and everyone who wrote. */
    private static List<Run> kill(Path file, int times, Random random) throws IOException, InterruptedException {
        Run[] alive = {new Run(file, "run 0"), new Run(file, "run 1")};
        List<Run> runs = new ArrayList<>(List.of(alive));
        for (int i = 0; i < times; i++) {
            int victim = random.nextInt(2);
            alive[victim].awaitFirst();
            TimeUnit.MICROSECONDS.sleep(random.nextInt(20_000));
            alive[victim].kill();
            alive[victim] = new Run(file, "run " + runs.size());
            runs.add(alive[victim]);
        }
        alive[0].kill();
        alive[1].kill();
        try (LedgerFile ledger = LedgerFile.open(file)) {
            check(ledger.found(), runs);
        }
        LedgerReading reading = LedgerFile.read(file);
        check(reading, runs);
        assertThat(reading.tornTail()).isFalse();
        return runs;
    }

    /** Every acknowledged entry is there, whole and in order; of the others at most the last of each killed writer. */
    private static void check(LedgerReading reading, List<Run> runs) {
        assertThat(reading.damages()).isEmpty();
        Map<String, Long> found = new HashMap<>();
        for (Ledger.Numbered each : reading.ledger().entries()) {
            LedgerEntry.Transfer transfer = (LedgerEntry.Transfer) each.entry();
            long count = found.merge(transfer.owner(), 1L, Long::sum);
            assertThat(each.entry()).isEqualTo(Writer.delivery(transfer.owner(), count));
        }
        for (Run run : runs) {
            if (run.killed) {
                assertThat(found.getOrDefault(run.name, 0L))
                        .as(run.name)
                        .isBetween(run.acknowledged, run.acknowledged + 1);
            }
        }
    }

    /** A process that writes, and what it has acknowledged. */
    private static final class Run {
        private final String name;
        private final Process process;
        private final BufferedReader reader;
        private long acknowledged;
        private boolean killed;

        Run(Path file, String name) throws IOException {
            this.name = name;
            this.process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-Xshare:auto",
                            "-XX:TieredStopAtLevel=1",
                            "-XX:+UseSerialGC",
                            "-cp",
                            System.getProperty("java.class.path")
                                    + System.getProperty("path.separator")
                                    + System.getProperty("jdk.module.path", ""),
                            Writer.class.getName(),
                            file.toString(),
                            name)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            this.reader = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        }

        void awaitFirst() throws IOException {
            while (acknowledged == 0) {
                String line = reader.readLine();
                assertThat(line).as("a writer that ended by itself").isNotNull();
                note(line);
            }
        }

        void kill() throws IOException, InterruptedException {
            process.toHandle().destroyForcibly(); // unlike the method of Process, leaves the report readable
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                note(line);
            }
            process.waitFor();
            killed = true;
        }

        private void note(String line) {
            if (line.endsWith(".")) { // the kill may cut the report itself
                acknowledged = Long.parseLong(line.substring(0, line.length() - 1));
            }
        }
    }

    /** Takes the ledger, appends a few entries, says each after it was acknowledged, gives the ledger away, for ever. */
    static final class Writer {
        private Writer() {}

        static LedgerEntry delivery(String owner, long count) {
            return new LedgerEntry.Transfer(
                    Party.outside("supplier"),
                    Party.system("cold room"),
                    "R-404A",
                    count,
                    0,
                    owner,
                    Instant.EPOCH,
                    "x".repeat(200));
        }

        public static void main(String[] args) throws IOException, InterruptedException {
            long count = 0;
            while (true) {
                try (LedgerFile ledger = LedgerFile.open(Path.of(args[0]))) {
                    for (int i = 0; i < 3; i++) {
                        count++;
                        if (!(ledger.append(delivery(args[1], count)) instanceof Ledger.Decision.Entered)) {
                            throw new IllegalStateException("refused");
                        }
                        System.out.print(count + ".\n");
                        System.out.flush();
                    }
                } catch (IOException e) {
                    if (!String.valueOf(e.getMessage()).contains("open in another process")) {
                        throw e;
                    }
                    if (count == 0) {
                        System.out.print(HELD + "\n");
                        System.out.flush();
                    }
                }
                TimeUnit.MILLISECONDS.sleep(4);
            }
        }
    }
}
