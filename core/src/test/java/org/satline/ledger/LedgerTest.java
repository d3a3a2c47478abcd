package org.satline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LedgerTest {
    private static final Instant NOON = Instant.parse("2030-05-01T12:00:00Z");
    private static final Party ROOF_UNIT = Party.system("roof unit 2");
    private static final Party GREY = Party.cylinder("G-17");
    private static final long KILOGRAM = 1_000_000;

    private final Ledger ledger = new Ledger();

    private static LedgerEntry.Transfer transfer(Party from, Party to, String refrigerant, long milligrams) {
        return new LedgerEntry.Transfer(
                from, to, refrigerant, milligrams, Math.min(20_000, milligrams), "bakery", NOON, "badge 12");
    }

    @BeforeEach
    void aCylinderAndAChargedSystem() {
        ledger.enter(new LedgerEntry.EmptyCylinder("G-17", 12 * KILOGRAM, NOON, ""));
        ledger.enter(transfer(Party.outside("charge on the nameplate"), ROOF_UNIT, "R-410A", 3 * KILOGRAM));
    }

    private Ledger.Decision.Refused refused(LedgerEntry entry) {
        Ledger.Decision decision = ledger.enter(entry);
        assertThat(decision).isInstanceOf(Ledger.Decision.Refused.class);
        return (Ledger.Decision.Refused) decision;
    }

    @Test
    void balancesFollowTheTransfers() {
        assertThat(ledger.enter(transfer(ROOF_UNIT, GREY, "R-410A", 500_000)))
                .isEqualTo(new Ledger.Decision.Entered(3, Optional.empty()));
        assertThat(ledger.balanceMilligrams(GREY)).isEqualTo(500_000);
        assertThat(ledger.balanceMilligrams(ROOF_UNIT)).isEqualTo(2_500_000);
        assertThat(ledger.balance(GREY).kilograms()).isEqualTo(0.5);
        assertThat(ledger.refrigerant(GREY)).isEqualTo(Optional.of("R-410A"));
        assertThat(ledger.uncertaintyMilligrams(ROOF_UNIT)).isEqualTo(Math.hypot(20_000, 20_000));
    }

    @Test
    void moreOutThanInIsRefusedAndTheEntriesAreNamed() {
        Ledger.Decision.Refused refused = refused(transfer(ROOF_UNIT, GREY, "R-410A", 3_100_000));
        assertThat(refused.reason()).contains("3100000 mg", "3000000 mg", "system roof unit 2");
        assertThat(refused.entries()).containsExactly(2L);
        assertThat(ledger.balanceMilligrams(ROOF_UNIT)).isEqualTo(3 * KILOGRAM);
    }

    @Test
    void withinTheUncertaintyOfTheWeighingsMoreMayComeOut() {
        assertThat(ledger.enter(transfer(ROOF_UNIT, GREY, "R-410A", 3_020_000)))
                .isInstanceOf(Ledger.Decision.Entered.class);
    }

    @Test
    void anotherRefrigerantIsRefused() {
        ledger.enter(transfer(ROOF_UNIT, GREY, "R-410A", 500_000));
        Ledger.Decision.Refused refused = refused(transfer(Party.outside("other job"), GREY, "R-32", 100_000));
        assertThat(refused.reason()).contains("holds R-410A", "R-32");
        assertThat(refused.entries()).containsExactly(1L, 3L);
    }

    @Test
    void aSystemOrCylinderThatIsNotInTheLedgerGivesNothing() {
        assertThat(refused(transfer(Party.system("cold room"), GREY, "R-404A", 1))
                        .reason())
                .contains("first visit");
        assertThat(refused(transfer(ROOF_UNIT, Party.cylinder("G-18"), "R-410A", 1))
                        .reason())
                .contains("tare");
    }

    @Test
    void grossBelowTareIsRefused() {
        Ledger.Decision.Refused refused = refused(new LedgerEntry.Weighing("G-17", 11_900_000, 20_000, NOON, ""));
        assertThat(refused.reason()).contains("11900000 mg", "12000000 mg");
        assertThat(refused.entries()).containsExactly(1L);
        assertThat(ledger.enter(new LedgerEntry.Weighing("G-17", 11_990_000, 20_000, NOON, "")))
                .isInstanceOf(Ledger.Decision.Entered.class);
    }

    @Test
    void anEmptiedCylinderMayTakeAnotherRefrigerantAndNothingIsLost() {
        ledger.enter(transfer(ROOF_UNIT, GREY, "R-410A", 500_000));
        assertThat(refused(new LedgerEntry.EmptyCylinder("G-17", 12 * KILOGRAM, NOON, ""))
                        .reason())
                .contains("500000 mg");
        ledger.enter(transfer(GREY, Party.outside("reclaimer"), "R-410A", 490_000));
        assertThat(ledger.enter(new LedgerEntry.EmptyCylinder("G-17", 12 * KILOGRAM, NOON, "")))
                .isInstanceOf(Ledger.Decision.Entered.class);
        assertThat(ledger.balanceMilligrams(GREY)).isZero();
        assertThat(ledger.balanceMilligrams(Party.outside("weighing difference")))
                .isEqualTo(10_000);
        assertThat(ledger.refrigerant(GREY)).isEmpty();
        assertThat(ledger.enter(transfer(Party.outside("other job"), GREY, "R-32", 100_000)))
                .isInstanceOf(Ledger.Decision.Entered.class);
    }

    @Test
    void entriesThatMakeNoSenseAreNotEvenBuilt() {
        assertThatThrownBy(() -> transfer(GREY, GREY, "R-32", 1)).hasMessageContaining("itself");
        assertThatThrownBy(() -> transfer(ROOF_UNIT, GREY, " ", 1)).hasMessageContaining("refrigerant is blank");
        assertThatThrownBy(() -> transfer(ROOF_UNIT, GREY, "R-32", 0)).hasMessageContaining("outside [1,");
        assertThatThrownBy(() -> Party.cylinder(" ")).isInstanceOf(IllegalArgumentException.class);
    }

    /** 5 kg missing, 43 kg too many: both masses are named. The cylinder holds 0.5 kg, so it should weigh 12.5 kg. */
    @ParameterizedTest
    @CsvSource({"17_500_000, 5_500_000", "55_500_000, 43_500_000", "12_000_000, 0", "12_535_000, 535_000"})
    void aWeighingThatTheEntriesDoNotExplainIsRefusedWithBothMasses(String gross, String net) {
        ledger.enter(transfer(ROOF_UNIT, GREY, "R-410A", 500_000)); // within 20 g
        Ledger.Decision.Refused refused =
                refused(new LedgerEntry.Weighing("G-17", milligrams(gross), 20_000, NOON, ""));
        assertThat(refused.cause()).isEqualTo(Ledger.Cause.OTHER_THAN_HELD);
        assertThat(refused.masses()).contains(new Ledger.Masses(milligrams(net), 500_000, Math.hypot(20_000, 20_000)));
        assertThat(refused.reason()).contains(milligrams(net) + " mg", "500000 mg");
        assertThat(refused.entries()).containsExactly(1L, 3L);
    }

    /** The difference may be as large as the root of the sum of squares of both uncertainties: 28 284 mg, rounded down. */
    @Test
    void aWeighingWithinTheUncertaintiesIsEntered() {
        ledger.enter(transfer(ROOF_UNIT, GREY, "R-410A", 500_000));
        assertThat(ledger.enter(new LedgerEntry.Weighing("G-17", 12_500_000 + 28_284, 20_000, NOON, "")))
                .isInstanceOf(Ledger.Decision.Entered.class);
        assertThat(ledger.enter(new LedgerEntry.Weighing("G-17", 12_500_000 - 28_284, 20_000, NOON, "")))
                .isInstanceOf(Ledger.Decision.Entered.class);
        assertThat(refused(new LedgerEntry.Weighing("G-17", 12_500_000 + 28_285, 20_000, NOON, ""))
                        .cause())
                .isEqualTo(Ledger.Cause.OTHER_THAN_HELD);
        assertThat(refused(new LedgerEntry.Weighing("G-17", 12_500_000 - 28_285, 20_000, NOON, ""))
                        .cause())
                .isEqualTo(Ledger.Cause.OTHER_THAN_HELD);
    }

    @Test
    void anUncertaintyAboveTheMassIsNotEvenBuilt() {
        assertThat(new LedgerEntry.Transfer(ROOF_UNIT, GREY, "R-32", 5, 5, "dairy", NOON, ""))
                .isNotNull();
        assertThatThrownBy(() -> new LedgerEntry.Transfer(ROOF_UNIT, GREY, "R-32", 5, 6, "dairy", NOON, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[0, 5] mg");
        assertThatThrownBy(() -> new LedgerEntry.Weighing("G-17", 5, 6, NOON, ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LedgerEntry.Weighing("G-17", 5, -1, NOON, ""))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @MethodSource
    void textsThatAFileCouldNotGiveBackAreRefused(String text) {
        assertThatThrownBy(() -> Party.cylinder(text)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LedgerEntry.Weighing(text, 5, 1, NOON, ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LedgerEntry.EmptyCylinder("G-17", 5, NOON, text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageNotContaining(text);
        assertThatThrownBy(() -> new LedgerEntry.Transfer(ROOF_UNIT, GREY, text, 5, 1, "dairy", NOON, ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LedgerEntry.Transfer(ROOF_UNIT, GREY, "R-32", 5, 1, text, NOON, ""))
                .isInstanceOf(IllegalArgumentException.class);
    }

    static Stream<String> textsThatAFileCouldNotGiveBackAreRefused() {
        return Stream.of(
                "x".repeat(20_000_000),
                "x".repeat(201),
                "a\ud800b",
                "a\udc00",
                "\udc00\ud800",
                "line\nfeed",
                "nul\u0000",
                "\u001b[31m",
                "\u007f",
                "\u0085",
                "\u2028",
                "abc\u202ecba",
                "\u2066",
                "\u200f",
                "\ufeffx");
    }

    /** A clock set back is said, not refused: one entry of a clock too far ahead would shut out every true one after it. */
    @Test
    void anEarlierTimeIsSaid() {
        Instant late = NOON.plusSeconds(3600);
        assertThat(ledger.setBack()).isEmpty();
        assertThat(ledger.enter(new LedgerEntry.Weighing("G-17", 12 * KILOGRAM, 20_000, late, "")))
                .isEqualTo(new Ledger.Decision.Entered(3, Optional.empty()));
        assertThat(ledger.enter(new LedgerEntry.Weighing("G-17", 12 * KILOGRAM, 20_000, NOON, "")))
                .isEqualTo(new Ledger.Decision.Entered(4, Optional.of(late)));
        assertThat(ledger.enter(new LedgerEntry.Weighing("G-17", 12 * KILOGRAM, 20_000, late, "")))
                .isEqualTo(new Ledger.Decision.Entered(5, Optional.empty()));
        assertThat(ledger.setBack()).containsExactly(4L);
        assertThatThrownBy(() -> new LedgerEntry.EmptyCylinder("G-17", 5, Instant.EPOCH.minusNanos(1), ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LedgerEntry.EmptyCylinder("G-17", 5, Instant.MAX, ""))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static long milligrams(String written) {
        return Long.parseLong(written.replace("_", ""));
    }
}
