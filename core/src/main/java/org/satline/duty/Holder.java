package org.satline.duty;

import java.util.Optional;
import org.satline.filling.Provenance;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Refrigerant;

/**
 * Where refrigerant is or shall go, as far as the rules ask. Immutable, thread-safe.
 *
 * @param kind what holds it
 * @param owner whose refrigerant it is, or whose it will be
 * @param refrigerant the refrigerant inside; nothing for an empty receiver or one that takes any
 * @param provenance where that refrigerant comes from
 */
public record Holder(Kind kind, String owner, Optional<Refrigerant> refrigerant, Provenance provenance) {
    /** What holds refrigerant. */
    public enum Kind {
        /** A refrigerating system. */
        SYSTEM,
        /** A refillable cylinder for recovered refrigerant. */
        RECOVERY_CYLINDER,
        /** A cylinder of new or reclaimed refrigerant. */
        SOURCE_CYLINDER,
        /** A cylinder that may not be refilled. */
        NON_REFILLABLE_CYLINDER,
        /** A certified reclaimer, or destruction. */
        RECLAIMER,
        /** The air. */
        ATMOSPHERE
    }

    /** {@inheritDoc} */
    public Holder {
        Parts.required("owner", owner);
        Parts.required("kind refrigerant provenance", kind, refrigerant, provenance);
        if (owner.isBlank()) {
            throw new IllegalArgumentException(
                    "the owner is blank; whether refrigerant may go there depends on the owner");
        }
    }

    boolean isUsed() {
        return provenance.isUsed();
    }
}
