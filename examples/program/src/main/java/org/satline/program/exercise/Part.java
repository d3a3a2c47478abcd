package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * One thing that is asked, with its answer.
 *
 * @param name what is asked for, short and the same in every exercise of its topic
 * @param ask the question
 * @param answer the answer
 * @param wrong what usual mistakes lead to, each outside the range to accept and told from the others by its print
 */
record Part(String name, String ask, Answer answer, List<Answer.Figure> wrong) {
    /** A choice between fewer is a guess. */
    private static final int FEWEST_CHOICES = 3;
    /** Characters of an answer that a line of a sheet has room for in handwriting: common practice, no source. */
    private static final int LINE_CHARACTERS = 60;

    Part {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(ask, "ask");
        Objects.requireNonNull(answer, "answer");
        wrong = List.copyOf(wrong);
    }

    /** Points: of a number one for the way and one for the result with its unit, of words one. */
    int points() {
        return answer instanceof Answer.Figure ? 2 : 1;
    }

    /** Lines to write in: a sum and its result, or as many as the answer needs. */
    int lines() {
        return answer instanceof Answer.Figure ? 2 : 1 + answer.text().length() / LINE_CHARACTERS;
    }

    /** The right answer among those that mistakes lead to, numbers by size and words by alphabet; empty where too few are known. */
    List<String> choices() {
        List<String> texts = new ArrayList<>();
        if (answer instanceof Answer.Figure figure) {
            List<Answer.Figure> all = new ArrayList<>(wrong);
            all.add(figure);
            all.sort(Comparator.comparing(Answer.Figure::printed));
            all.forEach(each -> texts.add(each.text()));
        } else if (answer instanceof Answer.Words words) {
            texts.addAll(words.others());
            texts.add(words.text());
            texts.sort(Comparator.naturalOrder());
        }
        return texts.size() < FEWEST_CHOICES ? List.of() : List.copyOf(texts);
    }
}
