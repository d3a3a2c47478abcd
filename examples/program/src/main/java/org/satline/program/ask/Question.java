package org.satline.program.ask;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.satline.explanation.Figure;
import org.satline.quantity.Parts;
import org.satline.visit.file.FieldValue;
import org.satline.wording.Wording;

/**
 * One question at the prompt. Immutable.
 *
 * @param path the field that the answer fills
 * @param form an example with its unit, or empty where words are to choose from
 * @param choices the words allowed; none where it is free
 * @param kind how the answer is kept
 * @param usual what stands where nothing is typed and no kit says otherwise
 * @param asked whether the question arises in a file
 */
record Question(
        String path,
        String form,
        List<String> choices,
        Kind kind,
        Optional<String> usual,
        Predicate<FieldValue.Fields> asked) {
    /** How an answer is kept, and whether it may be left out. */
    enum Kind {
        /** A text without which there is no file. */
        NEEDED,
        /** A text that is asked for where the answer needs it. */
        WHERE_NEEDED,
        /** Yes or no, where the answer needs it. */
        FLAG
    }

    Question {
        Parts.required("path form", path, form);
        Parts.required("kind usual asked", kind, usual, asked);
        choices = List.copyOf(choices);
    }

    static Question needed(String path, String form) {
        return new Question(path, form, List.of(), Kind.NEEDED, Optional.empty(), fields -> true);
    }

    static Question whereNeeded(String path, String form) {
        return new Question(path, form, List.of(), Kind.WHERE_NEEDED, Optional.empty(), fields -> true);
    }

    static Question flag(String path) {
        return new Question(path, "", List.of("yes", "no"), Kind.FLAG, Optional.empty(), fields -> true);
    }

    Question of(String... words) {
        return new Question(path, form, List.of(words), kind, usual, asked);
    }

    Question usually(String answer) {
        return new Question(path, form, choices, kind, Optional.of(answer), asked);
    }

    Question when(Predicate<FieldValue.Fields> arises) {
        return new Question(path, form, choices, kind, usual, arises);
    }

    /** The fields with the answer; a word that is not allowed is refused by the file's own reader. */
    FieldValue.Fields answered(FieldValue.Fields fields, String answer, Wording words) {
        if (kind != Kind.FLAG) {
            return FieldTree.put(fields, path, answer);
        }
        boolean yes = isOne(answer, "yes", words);
        if (!yes && !isOne(answer, "no", words)) {
            throw new IllegalArgumentException(words.message("dialogue.neither", Figure.of("answer", answer)));
        }
        return FieldTree.put(fields, path, new FieldValue.Flag(yes));
    }

    /** The English word, that of the language, or the first letter of either. */
    private static boolean isOne(String answer, String word, Wording words) {
        String own = words.message("choice." + word);
        return Stream.of(word, own, word.substring(0, 1), own.substring(0, 1)).anyMatch(answer::equalsIgnoreCase);
    }

    /** What is asked, without unit and example. */
    String text(Wording words) {
        return words.message("ask." + key());
    }

    /** Why it is asked. */
    String reason(Wording words) {
        return words.message("why." + key());
    }

    /** The words to choose from; the first part of each is what is typed. */
    List<String> choices(Wording words) {
        return choices.stream().map(each -> words.message("choice." + each)).toList();
    }

    private String key() {
        return path.replace("[0]", "");
    }

    /** The line that is printed: what, in which form, why, and what stands where nothing is typed. */
    String line(Optional<String> standing, Wording words) {
        String allowed = choices.isEmpty()
                ? words.message("dialogue.suchAs", Figure.of("form", form))
                : String.join(" / ", choices(words));
        return words.message(
                        "dialogue.line",
                        Figure.of("question", text(words)),
                        Figure.of("allowed", allowed),
                        Figure.of("reason", reason(words)))
                + standing.map(each -> " [" + each + "]").orElse("") + ": ";
    }
}
