package org.satline.program.exercise;

import java.util.Optional;

/** Draws exercises of one topic. */
interface Maker {
    /**
     * Draws one.
     *
     * @param draw the numbers to draw from
     * @param readout the units of the question
     * @param difficulty how hard
     * @return an exercise; nothing where what came up is trivial, impossible, or hangs on a rounding
     */
    Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty);
}
