package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.satline.ledger.Ledger;
import org.satline.ledger.LedgerEntry;
import org.satline.ledger.LedgerFile;
import org.satline.ledger.Party;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Hours of mixed work in one process: the heap stays flat. The profile {@code soak} runs it for half an hour. */
@EnabledIfSystemProperty(named = "satline.soak.seconds", matches = "[1-9][0-9]*")
class SoakTest {
    private static final Path SAMPLES = Path.of("samples");
    private static final int SPANS = 12;
    /** What is compiled, loaded and kept once comes early; later spans may differ by the noise of the collector, some 100 kB. */
    private static final long MOST_GROWTH = 2_000_000;

    @TempDir
    Path folder;

    private final Random random = new Random(3);
    private long works;

    private void visit() throws IOException {
        ProgramRun run = ProgramRun.of(
                "visit",
                SAMPLES.resolve("boathouse.json"),
                "--full",
                "--html",
                folder.resolve("visit.html"),
                "--json",
                folder.resolve("visit.json"));
        assertThat(run.status()).isZero();
        Path broken = Files.writeString(folder.resolve("broken.json"), "{ \"site\": " + random.nextInt() + " }");
        assertThat(ProgramRun.of("visit", broken).status()).isEqualTo(2);
    }

    private void bulk() {
        for (String command : new String[] {"fills", "points", "verdicts"}) {
            assertThat(ProgramRun.of(command, SAMPLES.resolve(command + ".csv"), "--out", folder.resolve("out.csv"))
                            .status())
                    .isIn(0, 1);
        }
    }

    private void blends() {
        double share = 0.2 + 0.6 * random.nextDouble();
        SaturationCurve curve = SaturationCurves.of(Refrigerant.blend(
                "mix " + works,
                Composition.ofMassFractions(Map.of(
                        Catalogue.standard().find("R-32"),
                        share,
                        Catalogue.standard().find("R-125"),
                        1 - share))));
        assertThat(curve.dewPressurePa(280)).isLessThan(curve.bubblePressurePa(280));
    }

    private void ledger() throws IOException {
        Path file = folder.resolve("ledger-" + works / 1000 + ".jsonl");
        try (LedgerFile ledger = LedgerFile.open(file)) {
            assertThat(ledger.append(new LedgerEntry.Transfer(
                            Party.outside("supplier"),
                            Party.system("cold room"),
                            "R-404A",
                            1000,
                            1,
                            "dairy",
                            Instant.EPOCH,
                            "")))
                    .isInstanceOf(Ledger.Decision.Entered.class);
        }
    }

    private static long used() throws InterruptedException {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 5; i++) {
            System.gc();
            Thread.sleep(50);
            Runtime machine = Runtime.getRuntime();
            least = Math.min(least, machine.totalMemory() - machine.freeMemory());
        }
        return least;
    }

    @Test
    void theHeapStaysFlat() throws IOException, InterruptedException {
        Duration span =
                Duration.ofSeconds(Integer.getInteger("satline.soak.seconds")).dividedBy(SPANS);
        List<Long> heap = new ArrayList<>();
        for (int i = 0; i < SPANS; i++) {
            long end = System.nanoTime() + span.toNanos();
            while (System.nanoTime() < end) {
                visit();
                bulk();
                blends();
                ledger();
                works++;
            }
            heap.add(used());
        }
        System.out.println(works + " rounds; bytes in use after each of " + SPANS + " spans: " + heap);
        long early = heap.subList(SPANS / 4, SPANS / 2).stream()
                .mapToLong(Long::longValue)
                .min()
                .orElseThrow();
        long late = heap.subList(3 * SPANS / 4, SPANS).stream()
                .mapToLong(Long::longValue)
                .min()
                .orElseThrow();
        assertThat(late - early).as(heap.toString()).isLessThan(MOST_GROWTH);
    }
}
