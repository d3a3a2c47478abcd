package org.satline.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;

/**
 * Accounts for every gram: the entries so far and the balance of every place. Refuses what contradicts them. Mutable; for one thread,
 * as {@link LedgerFile} uses it.
 *
 * <p>Mass is never lost or invented: what leaves one place arrives in another, so the balances of all places, those outside included,
 * add up to zero, exactly.
 */
public final class Ledger {
    private static final long MILLIGRAMS_PER_KILOGRAM = 1_000_000;
    /** With at most 1e12 mg each, no sum of so many leaves the range of a long. */
    private static final int MOST_ENTRIES = 1_000_000;

    private final List<Numbered> entries = new ArrayList<>();
    private final Accounts accounts = new Accounts();
    private Optional<Instant> latest = Optional.empty();

    /**
     * An entry with its number.
     *
     * @param number counted from 1, in the order of the ledger
     * @param entry the entry
     */
    public record Numbered(long number, LedgerEntry entry) {
        /** {@inheritDoc} */
        public Numbered {
            Objects.requireNonNull(entry, "entry");
        }
    }

    /** Whether an entry fits. */
    public sealed interface Decision {
        /**
         * The entry fits and was entered.
         *
         * @param number its number
         * @param laterBefore the latest time in the ledger where that is after the time of this entry: it was entered late, or a clock was
         *     set back. Entered all the same, since one entry with a clock too far ahead would otherwise shut out every true one.
         */
        record Entered(long number, Optional<Instant> laterBefore) implements Decision {
            /** {@inheritDoc} */
            public Entered {
                Objects.requireNonNull(laterBefore, "laterBefore");
            }
        }

        /**
         * The entry contradicts others and was not entered.
         *
         * @param cause what sort of contradiction
         * @param masses the two masses that contradict each other, where masses do
         * @param reason what contradicts what, with the figures, and what to do, as the message of an exception would say it
         * @param entries the numbers of the entries that it contradicts
         */
        record Refused(Cause cause, Optional<Masses> masses, String reason, List<Long> entries) implements Decision {
            /** {@inheritDoc} */
            public Refused {
                Parts.required("cause masses reason", cause, masses, reason);
                entries = Parts.list("entries", entries);
            }
        }
    }

    /** Sorts of contradiction. */
    public enum Cause {
        /** The cylinder was never entered with its tare. */
        UNKNOWN_CYLINDER,
        /** The place holds another refrigerant. */
        OTHER_REFRIGERANT,
        /** More would leave a place than it holds. */
        MORE_THAN_HELD,
        /** A cylinder said to be empty holds something. */
        NOT_EMPTY,
        /** A gross weight below the tare. */
        BELOW_TARE,
        /** A weighing does not agree with what the cylinder holds by its entries. */
        OTHER_THAN_HELD,
        /** The ledger has as many entries as it may. */
        FULL,
        /** The ledger's file is damaged. */
        DAMAGED
    }

    /**
     * Two masses that contradict each other, in milligrams.
     *
     * @param stated what the entry says: the mass that leaves, the gross weight where it is below the tare, else gross weight less tare
     * @param accounted what the entries before it say: the balance, or the tare where the gross weight is below it
     * @param uncertainty the expanded uncertainty within which the two should agree, k = 2, zero or more
     */
    public record Masses(long stated, long accounted, double uncertainty) {
        /** {@inheritDoc} */
        public Masses {
            Parts.numbers("uncertainty", uncertainty);
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
        Decision decision = decide(entry);
        if (decision instanceof Decision.Entered entered) {
            post(entered.number(), entry);
        }
        return decision;
    }

    /** What entering an entry would answer; enters nothing. */
    Decision decide(LedgerEntry entry) {
        if (entries.size() >= MOST_ENTRIES) {
            String fault = "the ledger has " + entries.size() + " entries, its limit; start a new one from weighings";
            return new Decision.Refused(Cause.FULL, Optional.empty(), fault, List.of());
        }
        return accounts.contradiction(entry)
                .<Decision>map(refused -> refused)
                .orElseGet(() -> new Decision.Entered(lastNumber() + 1, latest.filter(entry.time()::isBefore)));
    }

    /** Enters an entry that was accepted before, under the number that it had. */
    void post(long number, LedgerEntry entry) {
        entries.add(new Numbered(number, entry));
        latest = latest.filter(entry.time()::isBefore).or(() -> Optional.of(entry.time()));
        accounts.post(number, entry);
    }

    /**
     * Returns the entries.
     *
     * @return in order, unmodifiable
     */
    public List<Numbered> entries() {
        return List.copyOf(entries);
    }

    /**
     * Returns the entries whose time is before that of an entry above them: entered late, or with a clock set back.
     *
     * @return their numbers, rising
     */
    public List<Long> setBack() {
        List<Long> numbers = new ArrayList<>();
        Instant last = Instant.MIN;
        for (Numbered each : entries) {
            if (each.entry().time().isBefore(last)) {
                numbers.add(each.number());
            } else {
                last = each.entry().time();
            }
        }
        return List.copyOf(numbers);
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
        return accounts.parties();
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
        return accounts.of(party).milligrams();
    }

    /**
     * Returns the expanded uncertainty of a balance: the root of the sum of squares of those of its transfers.
     *
     * @param party the place
     * @return milligrams, k = 2
     */
    public double uncertaintyMilligrams(Party party) {
        return accounts.of(party).uncertainty();
    }

    /**
     * Returns the refrigerant that a place holds.
     *
     * @param party the place
     * @return its designation; nothing for a place without transfers or an emptied cylinder
     */
    public Optional<String> refrigerant(Party party) {
        return accounts.of(party).refrigerant();
    }
}
