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
                .filter((from, to, refrigerant, mass, uncertainty) -> !from.equals(to) && uncertainty <= mass)
                .as((from, to, refrigerant, mass, uncertainty) -> new LedgerEntry.Transfer(
                        from, to, refrigerant, mass, uncertainty, "bakery, \"Ost\" \\ \u00e9", START, "\u2603"));
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

    @Property(tries = 40)
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
            if (cut % 13 != 0 && cut != file.length && cut < file.length - 300) {
                continue; // every byte of the last lines, some of the rest: LedgerFileTest cuts a file at every byte
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

    /** Any text at all, lone surrogates and control characters among them, is refused or comes back as it was. */
    @Property
    void whateverIsAcceptedIsReadAgain(
            @ForAll("texts") String name,
            @ForAll("texts") String owner,
            @ForAll("texts") String person,
            @ForAll long mass,
            @ForAll long uncertainty,
            @ForAll("times") Instant time) {
        List<LedgerEntry> entries = new ArrayList<>();
        try {
            entries.add(new LedgerEntry.Transfer(
                    Party.outside(name), Party.system(owner), person, mass, uncertainty, owner, time, person));
        } catch (IllegalArgumentException e) {
            assertThat(e.getMessage()).isNotBlank().hasSizeLessThan(200);
        }
        try {
            entries.add(new LedgerEntry.EmptyCylinder(name, mass, time, person));
            entries.add(new LedgerEntry.Weighing(name, mass, uncertainty, time, person));
        } catch (IllegalArgumentException e) {
            assertThat(e.getMessage()).isNotBlank().hasSizeLessThan(200);
        }
        Ledger ledger = new Ledger();
        entries.forEach(ledger::enter);
        LedgerReading reading = LedgerReading.of(LedgerBytes.of(ledger));
        assertThat(reading.damages()).isEmpty();
        assertThat(reading.ledger().entries()).isEqualTo(ledger.entries());
    }

    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> plain = Arbitraries.strings()
                .withChars("abc \\\"/{}:,\u00e9\u2603\u4e2d")
                .ofMinLength(1)
                .ofMaxLength(LedgerText.LONGEST + 1);
        Arbitrary<String> any = Arbitraries.strings().all().ofMaxLength(4);
        Arbitrary<String> pairs =
                Arbitraries.of("\ud83d\ude00", "\ud83d", "\ude00", "\ude00\ud83d", "\u202e", "\u0000");
        return Arbitraries.oneOf(plain, plain, any, pairs);
    }

    @Provide
    Arbitrary<Instant> times() {
        return Combinators.combine(
                        Arbitraries.longs().between(-10, 253_402_300_810L),
                        Arbitraries.integers().between(0, 999_999_999))
                .as(Instant::ofEpochSecond);
    }

    private static List<byte[]> lines(Ledger ledger) {
        return LedgerBytes.lines(ledger.entries());
    }

    private static byte[] join(List<byte[]> lines) {
        return LedgerBytes.join(lines);
    }
}
