package org.satline.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class LedgerProperties {
    private static final Instant START = Instant.parse("2030-01-01T00:00:00Z");

    @Provide
    Arbitrary<List<LedgerEntry>> entries() {
        Arbitrary<Party> parties = Arbitraries.of(
                Party.system("a"),
                Party.system("b"),
                Party.cylinder("x"),
                Party.cylinder("y"),
                Party.outside("supplier"),
                Party.released("purge"));
        Arbitrary<LedgerEntry> transfers = Combinators.combine(
                        parties,
                        parties,
                        Arbitraries.of("R-32", "R-410A"),
                        Arbitraries.longs().between(1, 5_000_000),
                        Arbitraries.longs().between(0, 50_000))
                .filter((from, to, refrigerant, mass, uncertainty) -> !from.equals(to))
                .as((from, to, refrigerant, mass, uncertainty) -> new LedgerEntry.Transfer(
                        from, to, refrigerant, mass, uncertainty, "bakery, \"Ost\"\n\u00e9", START, "\u2603"));
        Arbitrary<LedgerEntry> empties = Arbitraries.of("x", "y")
                .map(serial -> new LedgerEntry.EmptyCylinder(serial, 12_000_000, START.plusSeconds(1), ""));
        Arbitrary<LedgerEntry> weighings = Combinators.combine(
                        Arbitraries.of("x", "y"), Arbitraries.longs().between(11_000_000, 30_000_000))
                .as((serial, gross) -> new LedgerEntry.Weighing(serial, gross, 10_000, START.plusMillis(1), "p"));
        return Arbitraries.frequencyOf(
                        net.jqwik.api.Tuple.of(6, transfers),
                        net.jqwik.api.Tuple.of(2, empties),
                        net.jqwik.api.Tuple.of(1, weighings))
                .list()
                .ofMaxSize(40);
    }

    private static Ledger enterAll(List<LedgerEntry> entries) {
        Ledger ledger = new Ledger();
        ledger.enter(new LedgerEntry.EmptyCylinder("x", 12_000_000, START, ""));
        entries.forEach(ledger::enter);
        return ledger;
    }

    private static long sum(Ledger ledger) {
        return ledger.parties().stream().mapToLong(ledger::balanceMilligrams).sum();
    }

    @Property
    void massIsNeitherLostNorInvented(@ForAll("entries") List<LedgerEntry> entries) {
        Ledger ledger = enterAll(entries);
        assertThat(sum(ledger)).isZero();
        for (Party party : ledger.parties()) {
            if (party.isAccounted()) {
                // what is missing is within the doubt of the weighings
                assertThat((double) ledger.balanceMilligrams(party))
                        .isGreaterThanOrEqualTo(-ledger.uncertaintyMilligrams(party));
            }
        }
    }

    @Property(tries = 200)
    void anyPrefixOfAFileIsReadUpToItsLastWholeEntry(@ForAll("entries") List<LedgerEntry> entries) {
        List<byte[]> lines = lines(enterAll(entries));
        byte[] file = join(lines);
        int whole = 0;
        int wholeUpTo = 0;
        for (int cut = 0; cut <= file.length; cut++) {
            // a line is whole as soon as its closing brace is there, line feed or not
            while (whole < lines.size() && cut >= wholeUpTo + lines.get(whole).length) {
                wholeUpTo += lines.get(whole).length + 1;
                whole++;
            }
            if (cut % 7 != 0 && cut != file.length && cut < file.length - 300) {
                continue; // every byte of the last lines, every seventh of the rest: LedgerFileTest cuts a file at
                // every byte
            }
            LedgerReading reading = LedgerReading.of(Arrays.copyOf(file, cut));
            assertThat(reading.damages()).isEmpty();
            assertThat(reading.ledger().entries()).hasSize(whole);
            assertThat(sum(reading.ledger())).isZero();
        }
    }

    @Property
    void linesGoThereAndBack(@ForAll("entries") List<LedgerEntry> entries) {
        Ledger ledger = enterAll(entries);
        LedgerReading reading = LedgerReading.of(join(lines(ledger)));
        assertThat(reading.damages()).isEmpty();
        assertThat(reading.tornTail()).isFalse();
        assertThat(reading.ledger().entries()).isEqualTo(ledger.entries());
        for (Party party : ledger.parties()) {
            assertThat(reading.ledger().balanceMilligrams(party)).isEqualTo(ledger.balanceMilligrams(party));
        }
    }

    private static List<byte[]> lines(Ledger ledger) {
        List<byte[]> lines = new ArrayList<>();
        ledger.entries().forEach(entry -> lines.add(LedgerLine.encode(entry)));
        return lines;
    }

    private static byte[] join(List<byte[]> lines) {
        int length = lines.stream().mapToInt(line -> line.length + 1).sum();
        byte[] file = new byte[length];
        int at = 0;
        for (byte[] line : lines) {
            System.arraycopy(line, 0, file, at, line.length);
            at += line.length;
            file[at++] = '\n';
        }
        return file;
    }
}
