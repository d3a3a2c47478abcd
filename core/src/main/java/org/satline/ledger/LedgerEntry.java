package org.satline.ledger;

import java.time.Instant;
import org.satline.quantity.Parts;

/**
 * One entry of the ledger. Masses are whole milligrams, below what any scale of the trade resolves, so that sums are exact. The time
 * comes from the caller, from 1970 to 9999. A text has at most 200 characters and neither control characters nor halves of surrogate pairs
 * nor characters that turn the direction of writing; anything else is refused with an {@link IllegalArgumentException}, since the file
 * could not give it back as it was. Immutable, thread-safe.
 */
public sealed interface LedgerEntry {
    /**
     * Returns when it happened.
     *
     * @return the time that the caller gave
     */
    Instant time();

    /**
     * Returns who did it.
     *
     * @return a free reference, may be empty
     */
    String person();

    /**
     * Refrigerant moved from one place to another, by weighing.
     *
     * @param from where it came from
     * @param to where it went
     * @param refrigerant its designation
     * @param milligrams the mass, above zero
     * @param uncertaintyMilligrams the expanded uncertainty of the mass, k = 2, from zero to the mass
     * @param owner whose refrigerant it is
     * @param time when
     * @param person who, may be empty
     */
    record Transfer(
            Party from,
            Party to,
            String refrigerant,
            long milligrams,
            long uncertaintyMilligrams,
            String owner,
            Instant time,
            String person)
            implements LedgerEntry {
        /** {@inheritDoc} */
        public Transfer {
            Parts.required("from to refrigerant", from, to, refrigerant);
            Parts.required("owner time person", owner, time, person);
            LedgerText.requireTime(time);
            LedgerText.requirePlain(person, "person");
            LedgerText.requireName(refrigerant, "refrigerant");
            LedgerText.requireName(owner, "owner");
            requireMass(milligrams, 1, "mass");
            requireUncertainty(uncertaintyMilligrams, milligrams);
            if (from.equals(to)) {
                throw new IllegalArgumentException("transfer from " + from + " to itself; name two places");
            }
        }
    }

    /**
     * A cylinder comes into the ledger, or comes back into it empty and evacuated; the refrigerant it held before is then forgotten.
     *
     * @param serial its serial number
     * @param tareMilligrams its tare, above zero
     * @param time when
     * @param person who, may be empty
     */
    record EmptyCylinder(String serial, long tareMilligrams, Instant time, String person) implements LedgerEntry {
        /** {@inheritDoc} */
        public EmptyCylinder {
            Parts.required("serial time person", serial, time, person);
            LedgerText.requireTime(time);
            LedgerText.requirePlain(person, "person");
            LedgerText.requireName(serial, "serial");
            requireMass(tareMilligrams, 1, "tare");
        }
    }

    /**
     * A cylinder was put on the scale.
     *
     * @param serial its serial number
     * @param grossMilligrams its gross weight, above zero
     * @param uncertaintyMilligrams the expanded uncertainty, k = 2, from zero to the gross weight
     * @param time when
     * @param person who, may be empty
     */
    record Weighing(String serial, long grossMilligrams, long uncertaintyMilligrams, Instant time, String person)
            implements LedgerEntry {
        /** {@inheritDoc} */
        public Weighing {
            Parts.required("serial time person", serial, time, person);
            LedgerText.requireTime(time);
            LedgerText.requirePlain(person, "person");
            LedgerText.requireName(serial, "serial");
            requireMass(grossMilligrams, 1, "gross weight");
            requireUncertainty(uncertaintyMilligrams, grossMilligrams);
        }
    }

    private static void requireMass(long milligrams, long least, String what) {
        // 1e12 mg = 1000 t: beyond it, sums of entries could overflow
        if (!(milligrams >= least && milligrams <= 1_000_000_000_000L)) {
            throw new IllegalArgumentException(
                    what + " " + milligrams + " mg is outside [" + least + ", 1000000000000] mg; check the unit");
        }
    }

    private static void requireUncertainty(long uncertainty, long milligrams) {
        if (!(uncertainty >= 0 && uncertainty <= milligrams)) {
            throw new IllegalArgumentException("uncertainty " + uncertainty + " mg is outside [0, " + milligrams
                    + "] mg, the mass itself; check the unit, or weigh on a finer scale");
        }
    }
}
