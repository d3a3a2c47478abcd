package org.satline.examples;

import java.time.Instant;
import java.util.List;
import org.satline.ledger.Ledger;
import org.satline.ledger.LedgerEntry;
import org.satline.ledger.Party;

/** Where is every gram, and what does not add up? */
public final class LedgerOfOneJob {
    private LedgerOfOneJob() {}

    /**
     * Prints what cylinder and system hold after a recovery, and why an impossible charge is not entered.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Party plant = Party.system("cold store 2");
        Party cylinder = Party.cylinder("C-1107");
        Party before = Party.outside("charge at the first visit");
        Instant now = Instant.parse("2026-07-14T09:30:00Z"); // the caller's clock; the ledger reads none
        Ledger ledger = new Ledger(); // LedgerFile keeps the same on disk, whole even after a crash
        List<LedgerEntry> entries = List.of(
                new LedgerEntry.EmptyCylinder("C-1107", 11_790_000, now, ""),
                new LedgerEntry.Transfer(before, plant, "R-134a", 9_500_000, 30_000, "owner", now, ""),
                new LedgerEntry.Transfer(plant, cylinder, "R-134a", 3_200_000, 40_000, "owner", now, ""),
                new LedgerEntry.Transfer(cylinder, plant, "R-134a", 5_000_000, 40_000, "owner", now, ""));
        for (LedgerEntry entry : entries) {
            if (ledger.enter(entry) instanceof Ledger.Decision.Refused refused) {
                System.out.println("refused: " + refused.reason());
            }
        }
        System.out.println("cylinder " + ledger.balance(cylinder).kilograms() + " kg +/- "
                + ledger.uncertaintyMilligrams(cylinder) / 1e6 + " kg");
        System.out.println("system " + ledger.balance(plant).kilograms() + " kg +/- "
                + ledger.uncertaintyMilligrams(plant) / 1e6 + " kg");
    }
}
