package org.satline.program.exercise;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What an exercise is about. */
public enum Topic {
    /** Between pressure and saturation temperature. */
    SATURATION("saturation"),
    /** Superheat and subcooling of a running system. */
    MARGINS("superheat-subcooling"),
    /** Bubble point, dew point and glide of a blend. */
    GLIDE("glide"),
    /** What a gauge shows where the air is thin. */
    ALTITUDE("altitude"),
    /** How much a cylinder may hold. */
    FILL_LIMIT("fill-limit"),
    /** Which way refrigerant flows when valves are opened. */
    FLOW("flow"),
    /** How a hose is freed of air. */
    PURGE("purge"),
    /** Whether the charge is low, right or high. */
    VERDICT("verdict"),
    /** What to do after the verdict. */
    NEXT_STEP("next-step");

    private final String label;

    Topic(String label) {
        this.label = label;
    }

    /**
     * The name on the command line.
     *
     * @return a word such as {@code fill-limit}
     */
    public String label() {
        return label;
    }

    /**
     * Finds a topic by its name on the command line.
     *
     * @param label the name
     * @return the topic
     * @throws IllegalArgumentException if there is none of that name
     */
    public static Topic ofLabel(String label) {
        return Arrays.stream(values())
                .filter(topic -> topic.label.equals(label))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("topic \"" + label + "\" is not known; use one of " + labels()));
    }

    /**
     * All names.
     *
     * @return the names, with commas between them
     */
    public static String labels() {
        return Arrays.stream(values()).map(Topic::label).collect(Collectors.joining(", "));
    }
}
