package org.satline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerFileTest {
    private static final Instant NOON = Instant.parse("2030-05-01T12:00:00Z");
    private static final Party SUPPLIER = Party.outside("supplier");
    private static final Party COLD_ROOM = Party.system("cold room");

    @TempDir
    private Path folder = Path.of("");

    private static LedgerEntry delivery(long milligrams) {
        return new LedgerEntry.Transfer(SUPPLIER, COLD_ROOM, "R-404A", milligrams, 1, "dairy", NOON, "badge 3");
    }

    private Path fiveEntries() throws IOException {
        Path file = folder.resolve("ledger.jsonl");
        try (LedgerFile ledger = LedgerFile.open(file)) {
            for (int i = 1; i <= 5; i++) {
                assertThat(ledger.append(delivery(i))).isEqualTo(new Ledger.Decision.Entered(i, Optional.empty()));
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
                .matches("\\{\"number\":1,\"kind\":\"transfer\",.*,\"before\":\"0{64}\",\"sha256\":\"[0-9a-f]{64}\"}")
                .contains("\"mass_mg\":1", "\"owner\":\"dairy\"", "\"time\":\"2030-05-01T12:00:00Z\"");
    }

    /** In memory, since a real disk takes minutes to force so often; {@link LedgerFaultTest} tells what this one keeps. */
    @Test
    void aFileCutAtEveryByteIsReadUpToItsLastWholeEntryAndGoesOn() throws IOException {
        byte[] whole = Files.readAllBytes(fiveEntries());
        Path file = folder.resolve("cut.jsonl");
        for (int cut = 0; cut < whole.length; cut++) {
            FaultingDisk disk = new FaultingDisk().with(file, Arrays.copyOf(whole, cut));
            String text = new String(whole, 0, cut, StandardCharsets.UTF_8);
            long feeds = text.chars().filter(c -> c == '\n').count();
            // the tail is whole when only its line feed is missing
            long entries = feeds + (whole[cut] == '\n' ? 1 : 0);
            boolean torn = whole[cut] != '\n' && !text.isEmpty() && !text.endsWith("\n");
            try (LedgerFile ledger = LedgerFile.open(file, disk)) {
                LedgerReading reading = ledger.found();
                assertThat(reading.ledger().entries()).hasSize((int) entries);
                assertThat(reading.damages()).isEmpty();
                assertThat(reading.tornTail()).isEqualTo(torn);
                assertThat(ledger.copyOfTail().map(disk::bytes).map(kept -> new String(kept, StandardCharsets.UTF_8)))
                        .isEqualTo(torn ? Optional.of(text.substring(text.lastIndexOf('\n') + 1)) : Optional.empty());
                assertThat(ledger.append(delivery(100)))
                        .isEqualTo(new Ledger.Decision.Entered(entries + 1, Optional.empty()));
            }
            LedgerReading after = LedgerReading.of(disk.bytes(file));
            assertThat(after.damages()).isEmpty();
            assertThat(after.ledger().entries()).hasSize((int) entries + 1);
        }
    }

    @Test
    void aTornTailIsKeptBesideTheLedgerBeforeItIsCut() throws IOException {
        Path file = fiveEntries();
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length - 10));
        try (LedgerFile ledger = LedgerFile.open(file)) {
            assertThat(ledger.found().tornTail()).isTrue();
            Path copy = ledger.copyOfTail().orElseThrow();
            assertThat(copy).isEqualTo(folder.resolve("ledger.jsonl.cut-5"));
            String kept = Files.readString(copy);
            assertThat(Files.readString(file) + kept)
                    .isEqualTo(new String(whole, 0, whole.length - 10, StandardCharsets.UTF_8));
        }
        Files.write(file, Arrays.copyOf(whole, whole.length - 11));
        try (LedgerFile ledger = LedgerFile.open(file)) {
            assertThat(ledger.copyOfTail()).contains(folder.resolve("ledger.jsonl.cut-5-2"));
        }
        try (LedgerFile ledger = LedgerFile.open(file)) {
            assertThat(ledger.copyOfTail()).isEmpty();
        }
    }

    /** Above all the last byte: an acknowledged entry is damaged then, and not cut away as if it had never been. */
    @Test
    void anyFlippedBitIsDamageAndCutsNothingAway() throws IOException {
        byte[] whole = Files.readAllBytes(fiveEntries());
        List<Ledger.Numbered> right = LedgerReading.of(whole).ledger().entries();
        for (int at = 0; at < whole.length; at++) {
            for (int bit = 0; bit < 8; bit++) {
                byte[] flipped = whole.clone();
                flipped[at] ^= (byte) (1 << bit);
                LedgerReading reading = LedgerReading.of(flipped);
                assertThat(reading.damages()).as("bit %s of byte %s", bit, at).isNotEmpty();
                assertThat(reading.tornTail()).isFalse();
                assertThat(right).containsAll(reading.ledger().entries());
            }
        }
        Path file = folder.resolve("flipped.jsonl");
        byte[] flipped = whole.clone();
        flipped[whole.length - 1] ^= 1;
        Files.write(file, flipped);
        try (LedgerFile ledger = LedgerFile.open(file)) {
            assertThat(ledger.copyOfTail()).isEmpty();
            assertThat(refused(ledger.append(delivery(1)))).isEqualTo(Ledger.Cause.DAMAGED);
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(flipped);
    }

    private static Ledger.Cause refused(Ledger.Decision decision) {
        return ((Ledger.Decision.Refused) decision).cause();
    }

    @Test
    void aDamagedLineIsReportedWithItsNumberAndTheRestIsRead() throws IOException {
        Path file = fiveEntries();
        Files.writeString(file, Files.readString(file).replace("\"mass_mg\":3", "\"mass_mg\":8"));
        LedgerReading reading = LedgerFile.read(file);
        assertThat(reading.ledger().entries())
                .extracting(Ledger.Numbered::number)
                .containsExactly(1L, 2L, 4L, 5L);
        assertThat(kinds(reading)).containsExactly("3 WRONG_DIGEST");
        byte[] before = Files.readAllBytes(file);
        try (LedgerFile ledger = LedgerFile.open(file)) {
            assertThat(refused(ledger.append(delivery(1)))).isEqualTo(Ledger.Cause.DAMAGED);
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    private static List<String> kinds(LedgerReading reading) {
        return reading.damages().stream()
                .map(damage -> damage.line() + " " + damage.kind())
                .toList();
    }

    private static List<String> kindsOf(List<byte[]> lines) {
        return kinds(LedgerReading.of(LedgerBytes.join(lines)));
    }

    private static List<Ledger.Numbered> numbered(LedgerEntry... entries) {
        List<Ledger.Numbered> numbered = new ArrayList<>();
        for (LedgerEntry entry : entries) {
            numbered.add(new Ledger.Numbered(numbered.size() + 1, entry));
        }
        return numbered;
    }

    @Test
    void linesRemovedDoubledMovedOrForgedBreakTheChain() {
        List<byte[]> lines = LedgerBytes.lines(numbered(delivery(1), delivery(2), delivery(3), delivery(4)));
        assertThat(kindsOf(lines)).isEmpty();
        assertThat(kindsOf(List.of(lines.get(0), lines.get(2), lines.get(3))))
                .containsExactly("2 BROKEN_CHAIN", "2 OUT_OF_ORDER");
        assertThat(kindsOf(List.of(lines.get(1), lines.get(2)))).containsExactly("1 BROKEN_CHAIN", "1 OUT_OF_ORDER");
        assertThat(kindsOf(List.of(lines.get(0), lines.get(0), lines.get(1))))
                .containsExactly("2 BROKEN_CHAIN", "2 OUT_OF_ORDER");
        assertThat(kindsOf(List.of(lines.get(0), lines.get(2), lines.get(1), lines.get(3))))
                .contains("2 BROKEN_CHAIN", "3 BROKEN_CHAIN", "4 BROKEN_CHAIN");
        // right in itself, made anew with another mass
        List<byte[]> forged = LedgerBytes.lines(numbered(delivery(1), delivery(9)));
        assertThat(kindsOf(List.of(lines.get(0), forged.get(1), lines.get(2)))).containsExactly("3 BROKEN_CHAIN");
    }

    /** What the Javadoc says is not protected: whole entries cut off the end, seen only by who kept the last digest. */
    @Test
    void theLastDigestShowsWhatWasCutOffTheEnd() {
        List<byte[]> lines = LedgerBytes.lines(numbered(delivery(1), delivery(2), delivery(3)));
        LedgerReading all = LedgerReading.of(LedgerBytes.join(lines));
        LedgerReading fewer = LedgerReading.of(LedgerBytes.join(lines.subList(0, 2)));
        assertThat(fewer.damages()).isEmpty();
        assertThat(fewer.digest()).isNotEqualTo(all.digest());
        assertThat(new String(lines.get(2), StandardCharsets.UTF_8)).contains(fewer.digest(), all.digest());
        assertThat(LedgerReading.of(new byte[0]).digest()).isEqualTo("0".repeat(64));
    }

    /** Lines with right digests, as one writes who knows the layout: what would have been refused is damage. */
    @Test
    void whatIsReadIsHeldAgainstTheEntriesBeforeIt() {
        LedgerEntry tooMuch =
                new LedgerEntry.Transfer(COLD_ROOM, Party.outside("reclaimer"), "R-404A", 1000, 0, "dairy", NOON, "");
        LedgerEntry unknown = new LedgerEntry.Weighing("G-17", 5, 1, NOON, "");
        LedgerReading reading =
                LedgerReading.of(LedgerBytes.join(LedgerBytes.lines(numbered(delivery(1), tooMuch, unknown))));
        assertThat(kinds(reading)).containsExactly("2 CONTRADICTION", "3 CONTRADICTION");
        assertThat(reading.ledger().balanceMilligrams(COLD_ROOM)).isEqualTo(1);
    }

    /** The layout is one, byte for byte: what a common JSON writer might write instead is refused. */
    @Test
    void nothingButTheOwnLayoutIsRead() {
        String line = new String(LedgerBytes.lines(numbered(delivery(100))).get(0), StandardCharsets.UTF_8);
        for (String other : List.of(
                " " + line,
                line + " ",
                line + "\r",
                line.replace("\":", "\": "),
                line.replace("{\"number\":1", "{\"number\":01"),
                line.replace("{\"number\":1", "{\"number\":1.0"),
                line.replace("{\"number\":1", "{\"number\":-1"),
                line.replace("{\"number\":1,", "{"),
                line.replace("mass_mg\":100", "mass_mg\":1e2"),
                line.replace("mass_mg\":100", "mass_mg\":99999999999999999999"),
                line.replace("mass_mg\":100", "mass_mg\":0"),
                line.replace("dairy", "d\\u0061iry"),
                line.replace("dairy", "d\\/airy"),
                line.replace("dairy", "d\tairy"),
                line.replace("dairy", "x".repeat(201)),
                line.replace("transfer", "refund"),
                line.replace("outside", "OUTSIDE"),
                line.replace("T12:00:00Z", "T12:00:00.000Z"),
                line.replace("T12:00:00Z", "T12:00Z"),
                line.replace("T12:00:00Z", "T14:00:00+02:00"),
                line.replace("2030-05-01", "2030-02-30"))) {
            assertThat(other).isNotEqualTo(line);
            assertThat(kindsOf(List.of(other.getBytes(StandardCharsets.UTF_8))))
                    .as(other)
                    .containsExactly("1 UNREADABLE");
        }
        byte[] noUtf8 = line.getBytes(StandardCharsets.UTF_8);
        noUtf8[line.indexOf("dairy")] = (byte) 0xff;
        assertThat(kindsOf(List.of(noUtf8))).containsExactly("1 UNREADABLE");
        assertThat(kindsOf(List.of(new byte[LedgerLine.LONGEST + 1]))).containsExactly("1 UNREADABLE");
    }

    @Test
    void theLongestEntryFitsIntoTheLongestLine() {
        String name = "\u2603".repeat(LedgerText.LONGEST);
        LedgerEntry entry = new LedgerEntry.Transfer(
                Party.outside(name),
                Party.released(name),
                name,
                1_000_000_000_000L,
                1_000_000_000_000L,
                name,
                Instant.parse("9999-12-31T23:59:59.999999999Z"),
                name);
        byte[] line = LedgerBytes.lines(List.of(new Ledger.Numbered(1_000_000, entry)))
                .get(0);
        assertThat(line).hasSizeLessThanOrEqualTo(LedgerLine.LONGEST).hasSizeGreaterThan(LedgerLine.LONGEST - 400);
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
    void twoWritersAreRefusedWhateverElseReadsTheFile() throws IOException {
        Path file = fiveEntries();
        try (LedgerFile ledger = LedgerFile.open(file)) {
            assertThat(LedgerFile.read(file).ledger().entries()).hasSize(5);
            assertThatThrownBy(() -> LedgerFile.open(folder.resolve(".").resolve("ledger.jsonl")))
                    .isInstanceOf(IOException.class);
            ledger.append(delivery(1));
        }
        assertThat(LedgerFile.read(file).damages()).isEmpty();
    }

    @Test
    void whatSomethingElseWroteIsNotOverwritten() throws IOException {
        Path file = fiveEntries();
        for (String foreign : List.of("x", "a foreign line\n")) {
            byte[] before = Files.readAllBytes(file);
            try (LedgerFile ledger = LedgerFile.open(file)) {
                Files.writeString(file, foreign, StandardOpenOption.APPEND);
                assertThatThrownBy(() -> ledger.append(delivery(1))).isInstanceOf(IOException.class);
                assertThat(Files.size(file)).isEqualTo(before.length + foreign.length());
                Files.write(file, before);
                assertThatThrownBy(() -> ledger.append(delivery(1))).isInstanceOf(IOException.class);
            }
        }
        try (LedgerFile ledger = LedgerFile.open(file)) {
            Files.write(file, new byte[0]);
            assertThatThrownBy(() -> ledger.append(delivery(1))).isInstanceOf(IOException.class);
        }
    }

    @Test
    void aLedgerOrLockThatIsReplacedOrRemovedTakesNothing() throws IOException {
        Path file = fiveEntries();
        byte[] bytes = Files.readAllBytes(file);
        for (Path gone : List.of(file, folder.resolve("ledger.jsonl.lock"))) {
            for (boolean replaced : new boolean[] {false, true}) {
                Files.write(file, bytes);
                try (LedgerFile ledger = LedgerFile.open(file)) {
                    Path kept = folder.resolve("kept");
                    Files.move(gone, kept); // so that its number is not used again
                    if (replaced) {
                        Files.copy(kept, gone);
                    }
                    assertThatThrownBy(() -> ledger.append(delivery(1))).isInstanceOf(IOException.class);
                    Files.delete(kept);
                }
            }
        }
    }

    @Test
    void anythingButAPlainFileWithOneNameIsRefused() throws IOException, InterruptedException {
        Path file = fiveEntries();
        Path link = Files.createSymbolicLink(folder.resolve("link.jsonl"), file);
        Path nowhere = Files.createSymbolicLink(folder.resolve("nowhere.jsonl"), folder.resolve("none"));
        Path pipe = folder.resolve("pipe.jsonl");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        for (Path path : List.of(link, nowhere, pipe, folder, Path.of("/dev/null"))) {
            assertThatThrownBy(() -> LedgerFile.open(path)).as("%s", path).isInstanceOf(IOException.class);
            assertThatThrownBy(() -> LedgerFile.read(path)).as("%s", path).isInstanceOf(IOException.class);
            assertThat(Files.exists(path.resolveSibling(path.getFileName() + ".lock")))
                    .isFalse();
        }
        assertThat(Files.exists(folder.resolve("none"))).isFalse();
        Path second = Files.createLink(folder.resolve("second.jsonl"), file);
        assertThatThrownBy(() -> LedgerFile.open(file)).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> LedgerFile.open(second)).isInstanceOf(IOException.class);
        Files.delete(second);
        Files.delete(folder.resolve("ledger.jsonl.lock"));
        Files.createSymbolicLink(folder.resolve("ledger.jsonl.lock"), folder.resolve("elsewhere"));
        assertThatThrownBy(() -> LedgerFile.open(file)).isInstanceOf(IOException.class);
        assertThat(Files.exists(folder.resolve("elsewhere"))).isFalse();
        assertThatThrownBy(
                        () -> LedgerFile.open(folder.resolve("no such folder").resolve("ledger.jsonl")))
                .isInstanceOf(IOException.class);
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
