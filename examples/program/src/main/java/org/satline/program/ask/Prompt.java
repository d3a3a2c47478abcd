package org.satline.program.ask;

/** Where questions are asked. */
public interface Prompt {
    /**
     * Shows a line.
     *
     * @param line what
     */
    void say(String line);

    /**
     * Asks for one line.
     *
     * @param question shown before the answer
     * @return what was typed, without spaces around it
     * @throws BrokenOffException if the person breaks off or the input ends
     */
    String ask(String question);
}
