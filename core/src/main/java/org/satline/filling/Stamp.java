package org.satline.filling;

import java.time.LocalDate;
import java.util.Optional;
import org.satline.explanation.Coded;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;

/** What can be stamped on a cylinder, or stated of it: one row each. */
public enum Stamp implements Coded {
    /** Mass of the empty cylinder with its valve (TW). */
    TARE("tare", Mass.class, "27.4 lb"),
    /** Mass of water at 60 degF that fills it (WC); a file may give a volume. */
    WATER_CAPACITY("waterCapacity", Mass.class, "47.7 lb"),
    /** The specification mark. */
    SPECIFICATION("specification", CylinderSpecification.class, "DOT-4BW400"),
    /** Service pressure at 70 degF, stamped apart from the mark. */
    SERVICE_PRESSURE("servicePressure", GaugePressure.class, "400 psig"),
    /** Test pressure. */
    TEST_PRESSURE("testPressure", GaugePressure.class, "42 barg"),
    /** Whether it is marked for flammable gas. */
    FLAMMABLE_MARK("flammableMark", Boolean.class, "true"),
    /** Last day on which it may be filled before its next retest. */
    RETEST_DUE("retestDue", LocalDate.class, "2029-04-30"),
    /** Whether it may be refilled, where the mark does not say so. */
    REFILLABLE("refillable", Boolean.class, "true"),
    /** Greatest mass for which the container is rated; some older containers carry it. */
    MASS_RATING("massRating", Mass.class, "50 lb");

    private final String field;
    private final Class<?> type;
    private final String example;

    Stamp(String field, Class<?> type, String example) {
        this.field = field;
        this.type = type;
        this.example = example;
    }

    /**
     * Its word in a visit file.
     *
     * @return the field within a cylinder
     */
    public String field() {
        return field;
    }

    /**
     * What it is.
     *
     * @return the class of its value
     */
    public Class<?> type() {
        return type;
    }

    /**
     * How it is written.
     *
     * @return an example
     */
    public String example() {
        return example;
    }

    /**
     * Finds a stamp.
     *
     * @param field its word in a visit file
     * @return the stamp, where there is one of that word
     */
    public static Optional<Stamp> of(String field) {
        for (Stamp stamp : values()) {
            if (stamp.field.equals(field)) {
                return Optional.of(stamp);
            }
        }
        return Optional.empty();
    }
}
