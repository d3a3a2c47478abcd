package org.satline.saturation;

/** How a saturation curve finds its numbers. */
public enum Engine {
    /** Each answer is solved from the equation of state. */
    EQUATION("equation of state"),
    /** Answers are read from a certified table; where the table stops, the equation is solved. */
    TABLE("certified table");

    private final String words;

    Engine(String words) {
        this.words = words;
    }

    /**
     * Returns words to print.
     *
     * @return the engine in lower case
     */
    public String words() {
        return words;
    }
}
