package org.satline.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.quantity.MassDifference;

/**
 * Accounts for every gram: the entries so far and the balance of every place. Refuses what contradicts them. Mutable; for one thread,
 * as {@link LedgerFile} uses it.
 *
 * <p>Mass is never lost or invented: what leaves one place arrives in another, so the balances of all places, those outside included,
 * add up to zero, exactly.
 */
public final class Ledger {
    private static final long MILLIGRAMS_PER_KILOGRAM = 1_000_000;

    private final List<Numbered> entries = new ArrayList<>();
    private final Map<Party, Account> accounts = new LinkedHashMap<>();
    private final Map<String, Long> tares = new HashMap<>();

    /**
     * An entry with its number.
     *
     * @param number counted from 1, in the order of the ledger
     * @param entry the entry
     */
    public record Numbered(long number, LedgerEntry entry) {}

    /** Whether an entry fits. */
    public sealed interface Decision {
        /**
         * The entry fits and was entered.
         *
         * @param number its number
         */
        record Entered(long number) implements Decision {}

        /**
         * The entry contradicts others and was not entered.
         *
         * @param reason what contradicts what, with the figures, and what to do
         * @param entries the numbers of the entries that it contradicts
         */
        record Refused(String reason, List<Long> entries) implements Decision {
            /** {@inheritDoc} */
            public Refused {
                entries = List.copyOf(entries);
            }
        }
    }

    /** What one place holds and through which entries it came to that. */
    private static final class Account {
        private long milligrams;
        private double squaredUncertainty;
        private Optional<String> refrigerant = Optional.empty();
        private final List<Long> touchedBy = new ArrayList<>();

        /** Expanded uncertainty of the balance; the weighings count as independent (JCGM 100, 5.1.2). */
        double uncertainty() {
            return Math.sqrt(squaredUncertainty);
        }
    }

    /** Starts an empty ledger. */
    public Ledger() {}

    /**
     * Enters an entry if it contradicts none before it.
     *
     * @param entry the entry
     * @return its number, or why it was refused
     */
    public Decision enter(LedgerEntry entry) {
        Optional<Decision.Refused> contradiction = contradiction(entry);
        if (contradiction.isPresent()) {
            return contradiction.get();
        }
        long number = lastNumber() + 1;
        post(number, entry);
        return new Decision.Entered(number);
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
                return refused(party + " is not in the ledger; enter it empty, with its tare, first", List.of());
            }
            Account account = accounts.get(party);
            if (party.isAccounted() && account != null) {
                Optional<String> held = account.refrigerant;
                if (held.isPresent() && !held.get().equals(transfer.refrigerant())) {
                    return refused(
                            party + " holds " + held.get() + ", the transfer is of " + transfer.refrigerant()
                                    + "; one refrigerant in one place, check the label",
                            account.touchedBy);
                }
            }
        }
        if (!transfer.from().isAccounted()) {
            return Optional.empty();
        }
        Account source = accounts.get(transfer.from());
        long there = source == null ? 0 : source.milligrams;
        double uncertainty =
                source == null ? 0 : Math.hypot(source.uncertainty(), (double) transfer.uncertaintyMilligrams());
        if (transfer.milligrams() <= there + uncertainty) {
            return Optional.empty();
        }
        return refused(
                transfer.milligrams() + " mg would leave " + transfer.from() + ", which holds " + there
                        + " mg, expanded uncertainty "
                        + Math.round(uncertainty)
                        + " mg; check the weighings, or enter what it held at the first visit as a transfer from outside",
                source == null ? List.of() : source.touchedBy);
    }

    private Optional<Decision.Refused> contradiction(LedgerEntry.EmptyCylinder empty) {
        Account account = accounts.get(Party.cylinder(empty.serial()));
        if (account == null || Math.abs(account.milligrams) <= account.uncertainty()) {
            return Optional.empty();
        }
        return refused(
                "cylinder " + empty.serial() + " is entered as empty and holds " + account.milligrams
                        + " mg; enter where that went first",
                account.touchedBy);
    }

    private Optional<Decision.Refused> contradiction(LedgerEntry.Weighing weighing) {
        Long tare = tares.get(weighing.serial());
        if (tare == null) {
            return refused(
                    "cylinder " + weighing.serial() + " is not in the ledger; enter it empty, with its tare, first",
                    List.of());
        }
        if (weighing.grossMilligrams() + weighing.uncertaintyMilligrams() >= tare) {
            return Optional.empty();
        }
        Account account = accounts.get(Party.cylinder(weighing.serial()));
        return refused(
                "gross weight " + weighing.grossMilligrams() + " mg of cylinder " + weighing.serial()
                        + " is below its tare " + tare + " mg; check the unit and the zero of the scale",
                account == null ? List.of() : account.touchedBy);
    }

    private static Optional<Decision.Refused> refused(String reason, List<Long> entries) {
        return Optional.of(new Decision.Refused(reason, entries));
    }

    /** Enters an entry that was accepted before, under the number that it had. */
    void post(long number, LedgerEntry entry) {
        entries.add(new Numbered(number, entry));
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

    /**
     * Returns the entries.
     *
     * @return in order, unmodifiable
     */
    public List<Numbered> entries() {
        return List.copyOf(entries);
    }

    /** The number of the last entry, 0 in an empty ledger. */
    long lastNumber() {
        return entries.isEmpty() ? 0 : entries.get(entries.size() - 1).number();
    }

    /**
     * Returns the places that the ledger knows.
     *
     * @return in the order of their first entry
     */
    public List<Party> parties() {
        return List.copyOf(accounts.keySet());
    }

    /**
     * Returns what a place holds by the entries; for a place outside the ledger what came from it counts below zero.
     *
     * @param party the place
     * @return the balance, zero for a place without entries
     */
    public MassDifference balance(Party party) {
        return MassDifference.ofKilograms((double) balanceMilligrams(party) / MILLIGRAMS_PER_KILOGRAM);
    }

    /**
     * Returns the same in whole milligrams, exact.
     *
     * @param party the place
     * @return milligrams
     */
    public long balanceMilligrams(Party party) {
        Account account = accounts.get(party);
        return account == null ? 0 : account.milligrams;
    }

    /**
     * Returns the expanded uncertainty of a balance: the root of the sum of squares of those of its transfers.
     *
     * @param party the place
     * @return milligrams, k = 2
     */
    public double uncertaintyMilligrams(Party party) {
        Account account = accounts.get(party);
        return account == null ? 0 : account.uncertainty();
    }

    /**
     * Returns the refrigerant that a place holds.
     *
     * @param party the place
     * @return its designation; nothing for a place without transfers or an emptied cylinder
     */
    public Optional<String> refrigerant(Party party) {
        Account account = accounts.get(party);
        return account == null ? Optional.empty() : account.refrigerant;
    }
}
