package org.satline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LedgerTest {
    private static final Instant NOON = Instant.parse("2030-05-01T12:00:00Z");
    private static final Party ROOF_UNIT = Party.system("roof unit 2");
    private static final Party GREY = Party.cylinder("G-17");
    private static final long KILOGRAM = 1_000_000;

    private final Ledger ledger = new Ledger();

    private static LedgerEntry.Transfer transfer(Party from, Party to, String refrigerant, long milligrams) {
        return new LedgerEntry.Transfer(from, to, refrigerant, milligrams, 20_000, "bakery", NOON, "badge 12");
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
                .isEqualTo(new Ledger.Decision.Entered(3));
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
        assertThatThrownBy(() -> Party.cylinder(" ")).hasMessageContaining("serial number");
    }
}
