package org.satline.program.exercise;

import java.util.Objects;

/**
 * One thing that is asked, with its answer.
 *
 * @param name what is asked for, short and the same in every exercise of its topic
 * @param ask the question
 * @param answer the answer
 */
record Part(String name, String ask, Answer answer) {
    Part {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(ask, "ask");
        Objects.requireNonNull(answer, "answer");
    }
}
