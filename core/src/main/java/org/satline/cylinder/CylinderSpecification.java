package org.satline.cylinder;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Parts;

/**
 * The specification stamped on a cylinder, such as {@code DOT-4BA400}: type and, where it is part of the mark, the service pressure.
 * A mark of another system ({@code UN}, a standard's number, {@code T50} for a portable tank) is kept as text. Immutable, thread-safe.
 *
 * <p>Source: 49 CFR 178.35(f), marks on cylinders.
 *
 * @param text the mark as stamped
 * @param type the type within the mark, such as {@code 4BA}; empty where the mark is of another system
 * @param markedPressure the service pressure within the mark, gauge at 70 degF
 */
public record CylinderSpecification(String text, String type, Optional<GaugePressure> markedPressure) {
    private static final Pattern MARK = Pattern.compile(
            "(?:DOT|ICC)?[- ]?(39|3HT|3AAX|3AX|3AA|3AL|3A|3B|3E|3T|3|4AA|4BA|4BW|4B|4E)[- ]?(\\d{3,4})?(?:ET|X)?");

    /** Whole words: letters and digits beside them make another mark, such as a serial number. */
    private static final Pattern PORTABLE_TANK =
            Pattern.compile("(?<![\\p{L}\\p{N}])(?:T50|PORTABLE\\s+TANK)(?![\\p{L}\\p{N}])");

    /** Specification 39 and its equivalent 39M beside other marks, or the words. */
    private static final Pattern NON_REFILLABLE = Pattern.compile(
            "(?<![\\p{L}\\p{N}])" + "(?:(?:DOT|TC|ICC)[- ]?39M?|NRC|NON[- ]?REFILLABLE)(?![\\p{L}\\p{N}])");

    /** {@inheritDoc} */
    public CylinderSpecification {
        Parts.required("text type markedPressure", text, type, markedPressure);
    }

    /**
     * Reads a mark.
     *
     * @param mark such as {@code DOT-4BA400}, {@code 4BW 260}, {@code DOT-39}, {@code UN}
     * @return the specification
     * @throws IllegalArgumentException if the mark is blank
     */
    public static CylinderSpecification parse(String mark) {
        String text = mark.strip();
        if (text.isEmpty()) {
            throw new IllegalArgumentException(
                    "cylinder specification is blank; give the mark as stamped, such as DOT-4BA400");
        }
        Matcher matcher = MARK.matcher(text.toUpperCase(Locale.ROOT));
        if (!matcher.matches()) {
            return new CylinderSpecification(text, "", Optional.empty());
        }
        Optional<GaugePressure> marked =
                Optional.ofNullable(matcher.group(2)).map(psig -> GaugePressure.ofPsig(Double.parseDouble(psig)));
        return new CylinderSpecification(text, matcher.group(1), marked);
    }

    /**
     * Tells whether the cylinder is of the non-refillable specification 39 (49 CFR 178.65).
     *
     * @return true for a specification 39 cylinder, also where more stands beside that mark
     */
    public boolean isNonRefillable() {
        return type.equals("39")
                || NON_REFILLABLE.matcher(text.toUpperCase(Locale.ROOT)).find();
    }

    /**
     * Tells whether this is a portable tank, for which instruction T50 stands in place of P200.
     *
     * @return true where the mark names T50 or a portable tank, in words of their own
     */
    public boolean isPortableTank() {
        return PORTABLE_TANK.matcher(text.toUpperCase(Locale.ROOT)).find();
    }

    /** A welded cylinder of moderate pressure, the usual recovery cylinder. */
    boolean isWeldedLowPressure() {
        return type.equals("4BA") || type.equals("4BW") || type.equals("4B") || type.equals("4E");
    }

    /** Whether a table that lists {@code listed} covers this cylinder: the same type, of that service pressure or higher. */
    boolean isCoveredBy(CylinderSpecification listed, Optional<GaugePressure> servicePressure) {
        if (type.isEmpty() || !type.equals(listed.type)) {
            return false;
        }
        if (listed.markedPressure.isEmpty()) {
            return true;
        }
        double least = listed.markedPressure.get().pascals();
        return markedPressure
                .or(() -> servicePressure)
                .filter(p -> p.pascals() >= least)
                .isPresent();
    }

    @Override
    public String toString() {
        return text;
    }
}
