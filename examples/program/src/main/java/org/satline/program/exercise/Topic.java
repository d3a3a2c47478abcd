package org.satline.program.exercise;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What an exercise is about. */
public enum Topic {
    /** Between pressure and saturation temperature. */
    SATURATION("saturation", "Reading a saturation table"),
    /** Superheat and subcooling of a running system. */
    MARGINS("superheat-subcooling", "Superheat and subcooling"),
    /** Bubble point, dew point and glide of a blend. */
    GLIDE("glide", "Glide of a blend"),
    /** What a gauge shows where the air is thin. */
    ALTITUDE("altitude", "A gauge at altitude"),
    /** How much a cylinder may hold. */
    FILL_LIMIT("fill-limit", "How much the cylinder may hold"),
    /** Which way refrigerant flows when valves are opened. */
    FLOW("flow", "Which way it flows"),
    /** How a hose is freed of air. */
    PURGE("purge", "Purging a hose"),
    /** Whether the charge is low, right or high. */
    VERDICT("verdict", "Is the charge right?"),
    /** What to do after the verdict. */
    NEXT_STEP("next-step", "The next step");

    private final String label;
    private final String title;

    Topic(String label, String title) {
        this.label = label;
        this.title = title;
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
     * The heading of such an exercise.
     *
     * @return a few words
     */
    public String title() {
        return title;
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
