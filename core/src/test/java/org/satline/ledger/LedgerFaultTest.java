package org.satline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.ledger.FaultingDisk.Survival;

/** The ledger on a disk whose power is cut, that fails or is full, before or within every single step. */
class LedgerFaultTest {
    private static final Path FILE = Path.of("/job/ledger.jsonl").toAbsolutePath();
    private static final Party COLD_ROOM = Party.system("cold room");
    private static final byte[] TORN = "{\"number\":3,\"kind\":\"weigh".getBytes(StandardCharsets.UTF_8);

    private static LedgerEntry delivery() {
        return new LedgerEntry.Transfer(
                Party.outside("supplier"), COLD_ROOM, "R-404A", 1000, 1, "dairy", Instant.EPOCH, "");
    }

    /** Opens the ledger and appends three entries, until something fails; how many were acknowledged. */
    private static int work(Disk disk) {
        int acknowledged = 0;
        try (LedgerFile ledger = LedgerFile.open(FILE, disk)) {
            for (int i = 0; i < 3; i++) {
                assertThat(ledger.append(delivery())).isInstanceOf(Ledger.Decision.Entered.class);
                acknowledged++;
            }
        } catch (IOException e) {
            return acknowledged;
        }
        return acknowledged;
    }

    /** Two acknowledged entries, and the beginning of a third. */
    private static FaultingDisk torn() throws IOException {
        FaultingDisk disk = new FaultingDisk();
        try (LedgerFile ledger = LedgerFile.open(FILE, disk)) {
            ledger.append(delivery());
            ledger.append(delivery());
        }
        byte[] two = disk.bytes(FILE);
        byte[] bytes = Arrays.copyOf(two, two.length + TORN.length);
        System.arraycopy(TORN, 0, bytes, two.length, TORN.length);
        return new FaultingDisk().with(FILE, bytes);
    }

    /** Opens what is there and goes on; how many entries were found. */
    private static int found(FaultingDisk disk) throws IOException {
        try (LedgerFile ledger = LedgerFile.open(FILE, disk)) {
            assertThat(ledger.found().damages()).isEmpty();
            int found = ledger.found().ledger().entries().size();
            assertThat(ledger.append(delivery())).isInstanceOf(Ledger.Decision.Entered.class);
            return found;
        }
    }

    @Test
    void aNewLedgerIsForcedBeforeAnEntryAndEachEntryBeforeItIsAcknowledged() {
        FaultingDisk disk = new FaultingDisk();
        assertThat(work(disk)).isEqualTo(3);
        assertThat(disk.steps())
                .containsExactly(
                        "create ledger.jsonl.lock",
                        "create ledger.jsonl",
                        "force ledger.jsonl",
                        "force folder",
                        "write ledger.jsonl",
                        "force ledger.jsonl",
                        "write ledger.jsonl",
                        "force ledger.jsonl",
                        "write ledger.jsonl",
                        "force ledger.jsonl");
    }

    @Test
    void aTornTailIsCopiedForcedAndNamedBeforeItIsCut() throws IOException {
        FaultingDisk disk = torn();
        try (LedgerFile ledger = LedgerFile.open(FILE, disk)) {
            assertThat(ledger.copyOfTail()).contains(FILE.resolveSibling("ledger.jsonl.cut-3"));
        }
        assertThat(disk.steps())
                .containsExactly(
                        "create ledger.jsonl.lock",
                        "create ledger.jsonl.cut-draft",
                        "write ledger.jsonl.cut-draft",
                        "force ledger.jsonl.cut-draft",
                        "rename ledger.jsonl.cut-draft to ledger.jsonl.cut-3",
                        "force folder",
                        "truncate ledger.jsonl",
                        "force ledger.jsonl",
                        "force folder");
        assertThat(disk.bytes(FILE.resolveSibling("ledger.jsonl.cut-3"))).isEqualTo(TORN);
    }

    @ParameterizedTest
    @EnumSource
    void aPowerCutAtAnyStepLosesNothingAcknowledged(Survival survival) throws IOException {
        FaultingDisk whole = new FaultingDisk();
        work(whole);
        for (int step = 0; step <= whole.steps().size(); step++) {
            FaultingDisk disk = new FaultingDisk().cutAt(step);
            int acknowledged = work(disk);
            assertThat(found(disk.afterPowerCut(survival)))
                    .as("step %s", step)
                    .isBetween(acknowledged, acknowledged + 1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aPowerCutWhileATailIsCutLosesNeitherEntriesNorTail(Survival survival) throws IOException {
        FaultingDisk whole = torn();
        work(whole);
        for (int step = 0; step <= whole.steps().size(); step++) {
            FaultingDisk disk = torn().cutAt(step);
            int acknowledged = work(disk);
            FaultingDisk after = disk.afterPowerCut(survival);
            assertThat(tails(after)).as("step %s", step).contains(new String(TORN, StandardCharsets.UTF_8));
            assertThat(found(after)).as("step %s", step).isBetween(2 + acknowledged, 3 + acknowledged);
        }
    }

    /** What stands in the copies, and behind the last line feed of the ledger. */
    private static List<String> tails(FaultingDisk disk) {
        return disk.files().stream()
                .map(path -> new String(disk.bytes(path), StandardCharsets.UTF_8))
                .map(text -> text.substring(text.lastIndexOf('\n') + 1))
                .toList();
    }

    @Test
    void aFailureAtAnyStepLosesNothingAcknowledged() throws IOException {
        int steps = 20; // more than there are
        for (int step = 0; step <= steps; step++) {
            FaultingDisk disk = new FaultingDisk().failAt(step);
            int acknowledged = work(disk);
            assertThat(found(disk.failAt(Integer.MAX_VALUE)))
                    .as("step %s", step)
                    .isBetween(acknowledged, acknowledged + 1);
            FaultingDisk second = torn().failAt(step);
            int more = work(second);
            assertThat(found(second.failAt(Integer.MAX_VALUE)))
                    .as("step %s", step)
                    .isBetween(2 + more, 3 + more);
        }
    }

    @Test
    void aFullDiskTakesWholeEntriesOnlyAndTheLedgerGoesOnWhenThereIsRoom() throws IOException {
        FaultingDisk whole = new FaultingDisk();
        work(whole);
        int size = whole.bytes(FILE).length;
        for (int room = 0; room <= size; room++) {
            FaultingDisk disk = new FaultingDisk().room(room);
            int acknowledged = work(disk);
            assertThat(disk.bytes(FILE)).isEqualTo(Arrays.copyOf(whole.bytes(FILE), disk.bytes(FILE).length));
            disk.room(Long.MAX_VALUE);
            try (LedgerFile ledger = LedgerFile.open(FILE, disk)) {
                assertThat(ledger.found().tornTail()).isFalse(); // what did not fit was taken back
                assertThat(ledger.found().ledger().entries()).hasSize(acknowledged);
            }
        }
    }

    @Test
    void withoutRoomForACopyNothingIsCut() throws IOException {
        FaultingDisk disk = torn();
        byte[] before = disk.bytes(FILE);
        for (int room = 0; room < TORN.length; room++) {
            disk.room(before.length + room);
            assertThatThrownBy(() -> LedgerFile.open(FILE, disk)).isInstanceOf(IOException.class);
            assertThat(disk.bytes(FILE)).isEqualTo(before);
            disk.room(Long.MAX_VALUE);
        }
        assertThat(found(disk)).isEqualTo(2);
    }

    @Test
    void afterAFailureTheLedgerTakesNothingMore() throws IOException {
        FaultingDisk disk = new FaultingDisk().failAt(5);
        try (LedgerFile ledger = LedgerFile.open(FILE, disk)) {
            assertThatThrownBy(() -> ledger.append(delivery())).isInstanceOf(IOException.class);
            assertThatThrownBy(() -> ledger.append(delivery())).isInstanceOf(IOException.class);
            assertThat(disk.steps()).hasSize(6);
        }
    }
}
