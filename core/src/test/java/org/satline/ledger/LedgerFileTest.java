package org.satline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerFileTest {
    private static final Instant NOON = Instant.parse("2030-05-01T12:00:00Z");
    private static final Party SUPPLIER = Party.outside("supplier");
    private static final Party COLD_ROOM = Party.system("cold room");

    @TempDir
    private Path folder = Path.of("");

    private static LedgerEntry delivery(long milligrams) {
        return new LedgerEntry.Transfer(SUPPLIER, COLD_ROOM, "R-404A", milligrams, 10, "dairy", NOON, "badge 3");
    }

    private Path fiveEntries() throws IOException {
        Path file = folder.resolve("ledger.jsonl");
        try (LedgerFile ledger = LedgerFile.open(file)) {
            for (int i = 1; i <= 5; i++) {
                assertThat(ledger.append(delivery(i))).isEqualTo(new Ledger.Decision.Entered(i));
            }
            assertThat(ledger.balanceMilligrams(COLD_ROOM)).isEqualTo(15);
        }
        return file;
    }

    @Test
    void oneLineAnEntry() throws IOException {
        List<String> lines = Files.readAllLines(fiveEntries());
        assertThat(lines).hasSize(5);
        assertThat(lines.get(0))
                .matches("\\{\"crc32\":\"[0-9a-f]{8}\",\"entry\":\\{\"number\":1,\"kind\":\"transfer\",.*}}")
                .contains("\"mass_mg\":1", "\"owner\":\"dairy\"", "\"time\":\"2030-05-01T12:00:00Z\"");
    }

    @Test
    void aFileCutAtEveryByteIsReadUpToItsLastWholeEntryAndGoesOn() throws IOException {
        byte[] whole = Files.readAllBytes(fiveEntries());
        Path cutFile = folder.resolve("cut.jsonl");
        for (int cut = 0; cut < whole.length; cut++) {
            Files.write(cutFile, Arrays.copyOf(whole, cut));
            LedgerReading reading = LedgerFile.read(cutFile);
            String text = new String(whole, 0, cut, StandardCharsets.UTF_8);
            long feeds = text.chars().filter(c -> c == '\n').count();
            // the tail is whole when only its line feed is missing
            long entries = feeds + (whole[cut] == '\n' ? 1 : 0);
            assertThat(reading.ledger().entries()).hasSize((int) entries);
            assertThat(reading.damages()).isEmpty();
            assertThat(reading.tornTail()).isEqualTo(whole[cut] != '\n' && !text.isEmpty() && !text.endsWith("\n"));
            try (LedgerFile ledger = LedgerFile.open(cutFile)) {
                assertThat(ledger.append(delivery(100))).isEqualTo(new Ledger.Decision.Entered(entries + 1));
            }
            LedgerReading after = LedgerFile.read(cutFile);
            assertThat(after.damages()).isEmpty();
            assertThat(after.ledger().entries()).hasSize((int) entries + 1);
        }
    }

    @Test
    void aDamagedLineIsReportedWithItsNumberAndTheRestIsRead() throws IOException {
        Path file = fiveEntries();
        String text = Files.readString(file);
        Files.writeString(file, text.replace("\"mass_mg\":3", "\"mass_mg\":8"));
        LedgerReading reading = LedgerFile.read(file);
        assertThat(reading.ledger().entries())
                .extracting(Ledger.Numbered::number)
                .containsExactly(1L, 2L, 4L, 5L);
        assertThat(reading.damages()).extracting(LedgerReading.Damage::line).containsExactly(3L, 4L);
        assertThat(reading.damages().get(0)).hasToString("line 3 does not match its checksum");
        assertThat(reading.damages().get(1).reason()).contains("holds entry 4 after entry 2");
        try (LedgerFile ledger = LedgerFile.open(file)) {
            assertThat(ledger.append(delivery(1)))
                    .isInstanceOfSatisfying(
                            Ledger.Decision.Refused.class,
                            refused -> assertThat(refused.reason()).contains("line 3", "copy"));
        }
    }

    @Test
    void rubbishIsDamageAndNoException() throws IOException {
        Path file = folder.resolve("rubbish.jsonl");
        Files.write(file, new byte[] {(byte) 0xff, 0, '\n', '\n', '{', '}', '\n'});
        assertThat(LedgerFile.read(file).damages()).hasSize(3);
    }

    @Test
    void contradictionsAreRefusedAndLeaveNoTrace() throws IOException {
        Path file = fiveEntries();
        long before = Files.size(file);
        try (LedgerFile ledger = LedgerFile.open(file)) {
            Ledger.Decision decision = ledger.append(new LedgerEntry.Transfer(
                    COLD_ROOM, Party.outside("reclaimer"), "R-404A", 1000, 0, "dairy", NOON, ""));
            assertThat(decision).isInstanceOf(Ledger.Decision.Refused.class);
        }
        assertThat(Files.size(file)).isEqualTo(before);
    }

    @Test
    void twoWritersAreRefused() throws IOException {
        Path file = fiveEntries();
        try (LedgerFile ledger = LedgerFile.open(file)) {
            assertThat(ledger.found().ledger().entries()).hasSize(5);
            assertThatThrownBy(() -> LedgerFile.open(file))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("open already");
        }
    }

    @Test
    void aClosedLedgerTakesNothing() throws IOException {
        LedgerFile ledger = LedgerFile.open(folder.resolve("closed.jsonl"));
        ledger.close();
        assertThatThrownBy(() -> ledger.append(delivery(1))).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> ledger.append(delivery(1)))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("open it anew");
    }
}
