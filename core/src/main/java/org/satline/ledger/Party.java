package org.satline.ledger;

import java.util.Locale;
import org.satline.quantity.Parts;

/**
 * Where refrigerant is before or after a transfer. Immutable, thread-safe.
 *
 * @param kind what it is
 * @param name the serial number of a cylinder, the name of a system, or of whoever is outside; not blank, a text as
 *     {@link LedgerEntry} allows
 */
public record Party(Kind kind, String name) {
    /** What holds refrigerant. */
    public enum Kind {
        /** A cylinder, known by its serial number. */
        CYLINDER,
        /** A refrigerating system. */
        SYSTEM,
        /** Whatever is outside the ledger: supplier, reclaimer, destruction, a charge found at the first visit. */
        OUTSIDE,
        /** The air: purged hoses, leaks. */
        RELEASED
    }

    /** {@inheritDoc} */
    public Party {
        Parts.required("kind name", kind, name);
        LedgerText.requireName(name, "the name of a " + kind.name().toLowerCase(Locale.ROOT));
    }

    /**
     * A cylinder.
     *
     * @param serial its serial number
     * @return the party
     */
    public static Party cylinder(String serial) {
        Parts.required("serial", serial);
        return new Party(Kind.CYLINDER, serial);
    }

    /**
     * A system.
     *
     * @param name what it is called
     * @return the party
     */
    public static Party system(String name) {
        Parts.required("name", name);
        return new Party(Kind.SYSTEM, name);
    }

    /**
     * Something outside the ledger.
     *
     * @param name such as {@code supplier}, {@code reclaimer}, {@code charge on the nameplate}
     * @return the party
     */
    public static Party outside(String name) {
        Parts.required("name", name);
        return new Party(Kind.OUTSIDE, name);
    }

    /**
     * The air.
     *
     * @param how such as {@code hose purge}
     * @return the party
     */
    public static Party released(String how) {
        Parts.required("how", how);
        return new Party(Kind.RELEASED, how);
    }

    /** Whether its contents are accounted for: no more can come out than went in. */
    boolean isAccounted() {
        return kind == Kind.CYLINDER || kind == Kind.SYSTEM;
    }

    @Override
    public String toString() {
        return kind.name().toLowerCase(Locale.ROOT) + " " + name;
    }
}
