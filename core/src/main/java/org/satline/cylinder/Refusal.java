package org.satline.cylinder;

import org.satline.quantity.Parts;

/**
 * A reason why a cylinder must not be filled. Immutable, thread-safe.
 *
 * @param reason the kind of reason
 * @param text what is wrong, with the figures, and what to do
 * @param basis the citation, or {@code common practice, no source}
 */
public record Refusal(Reason reason, String text, String basis) {
    /** Kinds of reason. */
    public enum Reason {
        /** What is or will be inside is not known and not bounded by candidates. */
        CONTENTS_UNKNOWN,
        /** The cylinder may be filled once only, by its maker. */
        NOT_REFILLABLE,
        /** The retest date has passed. */
        RETEST_PAST,
        /** The marked service or test pressure is too low for this refrigerant. */
        PRESSURE_TOO_LOW,
        /** The law names the cylinders for this gas, and this is none of them. */
        CYLINDER_NOT_LISTED,
        /** A flammable refrigerant and no mark for flammable gas. */
        NOT_MARKED_FLAMMABLE,
        /** The cylinder holds another refrigerant already. */
        MIXED_CONTENTS,
        /** A stamp that the decision needs is missing. */
        STAMP_MISSING,
        /** What is inside does not fit pressure, weight or label. */
        CONTENTS_DOUBTFUL,
        /** The cylinder was not at rest, so its pressure says nothing about what is inside. */
        NOT_AT_REST,
        /** The cylinder stands on no scale. */
        NOT_WEIGHED,
        /** By weight nothing more may go in. */
        FULL,
        /** By weight it holds more than its limit. */
        OVERFILLED,
        /** By weight liquid fills it to the brim, or weight, tare or water capacity is wrong. */
        LIQUID_FULL,
        /** By weight nothing is left to give, or no liquid of a blend. */
        NOTHING_TO_GIVE,
        /** The cylinder is warmer, or its pressure higher, than its limit is made for. */
        TOO_WARM,
        /** Stamps or scale reading contradict each other. */
        STAMPS_CONTRADICTORY,
        /** No rule of the chosen set gives a largest contents. */
        NO_LIMIT
    }

    /** {@inheritDoc} */
    public Refusal {
        Parts.required("reason text basis", reason, text, basis);
    }
}
