package org.satline.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.ledger.Ledger.Cause;
import org.satline.ledger.Ledger.Decision;
import org.satline.ledger.Ledger.Masses;

/** What every place holds, and whether another entry fits that. Mutable, for one thread. */
final class Accounts {
    private final Map<Party, Account> accounts = new LinkedHashMap<>();
    private final Map<String, Long> tares = new HashMap<>();

    /** What one place holds and through which entries it came to that. */
    static final class Account {
        private long milligrams;
        private double squaredUncertainty;
        private Optional<String> refrigerant = Optional.empty();
        private final List<Long> touchedBy = new ArrayList<>();

        long milligrams() {
            return milligrams;
        }

        Optional<String> refrigerant() {
            return refrigerant;
        }

        /** Expanded uncertainty of the balance; the weighings count as independent (JCGM 100, 5.1.2). */
        double uncertainty() {
            return Math.sqrt(squaredUncertainty);
        }
    }

    /** The account of a place, an empty one for a place without entries. */
    Account of(Party party) {
        return accounts.getOrDefault(party, new Account());
    }

    /** The places with entries, in the order of the first. */
    List<Party> parties() {
        return List.copyOf(accounts.keySet());
    }

    /** Why an entry contradicts those before it. */
    Optional<Decision.Refused> contradiction(LedgerEntry entry) {
        if (entry instanceof LedgerEntry.Transfer transfer) {
            return contradiction(transfer);
        }
        if (entry instanceof LedgerEntry.EmptyCylinder empty) {
            return contradiction(empty);
        }
        return contradiction((LedgerEntry.Weighing) entry);
    }

    private Optional<Decision.Refused> contradiction(LedgerEntry.Transfer transfer) {
        for (Party party : List.of(transfer.from(), transfer.to())) {
            if (party.kind() == Party.Kind.CYLINDER && !tares.containsKey(party.name())) {
                return unknown(party);
            }
            Account account = of(party);
            if (party.isAccounted()) {
                Optional<String> held = account.refrigerant;
                if (held.isPresent() && !held.get().equals(transfer.refrigerant())) {
                    return refused(
                            Cause.OTHER_REFRIGERANT,
                            Optional.empty(),
                            party + " holds " + held.get() + ", the transfer is of " + transfer.refrigerant()
                                    + "; one refrigerant in one place, check the label",
                            account);
                }
            }
        }
        if (!transfer.from().isAccounted()) {
            return Optional.empty();
        }
        Account source = of(transfer.from());
        Masses masses = new Masses(
                transfer.milligrams(),
                source.milligrams,
                source.touchedBy.isEmpty()
                        ? 0
                        : Math.hypot(source.uncertainty(), (double) transfer.uncertaintyMilligrams()));
        if (masses.stated() <= masses.accounted() + masses.uncertainty()) {
            return Optional.empty();
        }
        return refused(
                Cause.MORE_THAN_HELD,
                Optional.of(masses),
                masses.stated() + " mg would leave " + transfer.from() + ", which holds " + held(masses)
                        + "; check the weighings, or enter what it held at the first visit as a transfer from outside",
                source);
    }

    private Optional<Decision.Refused> contradiction(LedgerEntry.EmptyCylinder empty) {
        Account account = of(Party.cylinder(empty.serial()));
        Masses masses = new Masses(0, account.milligrams, account.uncertainty());
        if (agree(masses)) {
            return Optional.empty();
        }
        return refused(
                Cause.NOT_EMPTY,
                Optional.of(masses),
                "cylinder " + empty.serial() + " is entered as empty and holds " + held(masses)
                        + "; enter where that went first",
                account);
    }

    private Optional<Decision.Refused> contradiction(LedgerEntry.Weighing weighing) {
        Party cylinder = Party.cylinder(weighing.serial());
        Long tare = tares.get(weighing.serial());
        if (tare == null) {
            return unknown(cylinder);
        }
        Account account = of(cylinder);
        if (weighing.grossMilligrams() + weighing.uncertaintyMilligrams() < tare) {
            Masses masses = new Masses(weighing.grossMilligrams(), tare, (double) weighing.uncertaintyMilligrams());
            return refused(
                    Cause.BELOW_TARE,
                    Optional.of(masses),
                    "gross weight " + weighing.grossMilligrams() + " mg of " + cylinder + " is below its tare " + tare
                            + " mg; check the unit and the zero of the scale",
                    account);
        }
        Masses masses = new Masses(
                weighing.grossMilligrams() - tare, account.milligrams, Math.hypot(account.uncertainty(), (double)
                        weighing.uncertaintyMilligrams()));
        if (agree(masses)) {
            return Optional.empty();
        }
        return refused(
                Cause.OTHER_THAN_HELD,
                Optional.of(masses),
                cylinder + " holds " + masses.stated() + " mg by gross weight less tare, and by its entries "
                        + held(masses)
                        + "; check tare, unit and what hangs on the scale, or enter what came in or went out first",
                account);
    }

    /**
     * Whether two masses agree: their difference is at most the root of the sum of squares of their expanded uncertainties, k = 2. That is
     * a normalised error of at most 1, as proficiency tests judge laboratories (ISO/IEC 17043, annex B; from memory).
     */
    private static boolean agree(Masses masses) {
        return Math.abs(masses.stated() - masses.accounted()) <= masses.uncertainty();
    }

    private static String held(Masses masses) {
        return masses.accounted() + " mg, expanded uncertainty " + Math.round(masses.uncertainty()) + " mg";
    }

    private static Optional<Decision.Refused> unknown(Party cylinder) {
        return refused(
                Cause.UNKNOWN_CYLINDER,
                Optional.empty(),
                cylinder + " is not in the ledger; enter it empty, with its tare, first",
                new Account());
    }

    private static Optional<Decision.Refused> refused(
            Cause cause, Optional<Masses> masses, String reason, Account account) {
        return Optional.of(new Decision.Refused(cause, masses, reason, account.touchedBy));
    }

    /** Books an entry that fits. */
    void post(long number, LedgerEntry entry) {
        if (entry instanceof LedgerEntry.Transfer transfer) {
            move(number, transfer.from(), -transfer.milligrams(), transfer);
            move(number, transfer.to(), transfer.milligrams(), transfer);
        } else if (entry instanceof LedgerEntry.EmptyCylinder empty) {
            tares.put(empty.serial(), empty.tareMilligrams());
            Account account = account(Party.cylinder(empty.serial()));
            // what the weighings left over is booked outside, so that the sum of all stays zero
            account(Party.outside("weighing difference")).milligrams += account.milligrams;
            account.milligrams = 0;
            account.squaredUncertainty = 0;
            account.refrigerant = Optional.empty();
            account.touchedBy.add(number);
        } else if (entry instanceof LedgerEntry.Weighing weighing) {
            account(Party.cylinder(weighing.serial())).touchedBy.add(number);
        }
    }

    private void move(long number, Party party, long milligrams, LedgerEntry.Transfer transfer) {
        Account account = account(party);
        account.milligrams += milligrams;
        account.squaredUncertainty += (double) transfer.uncertaintyMilligrams() * transfer.uncertaintyMilligrams();
        account.refrigerant = Optional.of(transfer.refrigerant());
        account.touchedBy.add(number);
    }

    private Account account(Party party) {
        return accounts.computeIfAbsent(party, key -> new Account());
    }
}
