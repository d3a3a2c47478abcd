package org.satline.explanation;

import org.satline.quantity.Parts;

/**
 * What a finding is about. Immutable, thread-safe.
 *
 * @param kind which kind of thing
 * @param name the name that the person gave it, or the word of the data where there is one only
 */
public record Subject(Kind kind, String name) {
    /** Kinds of things. */
    public enum Kind implements Coded {
        /** The refrigerating system. */
        SYSTEM,
        /** A cylinder. */
        CYLINDER,
        /** A hose. */
        HOSE,
        /** A service port. */
        PORT,
        /** A gauge, thermometer or scale. */
        INSTRUMENT,
        /** A reading or a stated condition, named by its field. */
        READING,
        /** A refrigerant, named by its designation. */
        REFRIGERANT,
        /** The visit as a whole. */
        VISIT
    }

    /** {@inheritDoc} */
    public Subject {
        Parts.required("kind name", kind, name);
    }

    /**
     * A cylinder.
     *
     * @param name its name
     * @return the subject
     */
    public static Subject cylinder(String name) {
        return new Subject(Kind.CYLINDER, name);
    }

    /**
     * The system.
     *
     * @param name its name
     * @return the subject
     */
    public static Subject system(String name) {
        return new Subject(Kind.SYSTEM, name);
    }

    /**
     * A reading or a stated condition.
     *
     * @param field its field, such as {@code readings.outdoorAir}
     * @return the subject
     */
    public static Subject reading(String field) {
        Parts.required("field", field);
        return new Subject(Kind.READING, field);
    }
}
