package org.satline.program.exercise;

import java.util.Arrays;
import java.util.stream.Collectors;

/** How hard an exercise is. */
public enum Difficulty {
    /** One family of units, sea level, refrigerants without noticeable glide, nothing superfluous. */
    STARTING("starting", "one family of units, sea level, no noticeable glide, every figure is needed"),
    /** Blends whose bubble and dew point differ, a unit to convert, a figure that has to be found first. */
    PRACTISED("practised", "blends with glide, units to convert, figures that have to be found first"),
    /** Altitude, superfluous figures, doubt of the instruments, cases that allow no answer. */
    EXPERIENCED("experienced", "altitude, superfluous figures, doubt of the instruments, cases without an answer");

    private final String label;
    private final String adds;

    Difficulty(String label, String adds) {
        this.label = label;
        this.adds = adds;
    }

    /**
     * The name on the command line and on the sheet.
     *
     * @return one word
     */
    public String label() {
        return label;
    }

    /**
     * What this grade asks for.
     *
     * @return a phrase
     */
    public String adds() {
        return adds;
    }

    /**
     * Finds a grade by its name.
     *
     * @param label the name
     * @return the grade
     * @throws IllegalArgumentException if there is none of that name
     */
    public static Difficulty ofLabel(String label) {
        return Arrays.stream(values())
                .filter(grade -> grade.label.equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("difficulty \"" + label
                        + "\" is not known; use one of "
                        + Arrays.stream(values()).map(Difficulty::label).collect(Collectors.joining(", "))));
    }
}
