package org.satline.program.ask;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.satline.quantity.Parts;
import org.satline.visit.file.FieldValue;

/**
 * One question at the prompt. Immutable.
 *
 * @param path the field that the answer fills
 * @param text what is asked, without unit and example
 * @param form an example with its unit, or empty where words are to choose from
 * @param reason why it is asked
 * @param choices the words allowed; none where it is free
 * @param kind how the answer is kept
 * @param usual what stands where nothing is typed and no kit says otherwise
 * @param asked whether the question arises in a file
 */
record Question(
        String path,
        String text,
        String form,
        String reason,
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
        Parts.required("path text form reason", path, text, form, reason);
        Parts.required("kind usual asked", kind, usual, asked);
        choices = List.copyOf(choices);
    }

    static Question needed(String path, String text, String form, String reason) {
        return new Question(path, text, form, reason, List.of(), Kind.NEEDED, Optional.empty(), fields -> true);
    }

    static Question whereNeeded(String path, String text, String form, String reason) {
        return new Question(path, text, form, reason, List.of(), Kind.WHERE_NEEDED, Optional.empty(), fields -> true);
    }

    static Question flag(String path, String text, String reason) {
        return new Question(path, text, "", reason, List.of("yes", "no"), Kind.FLAG, Optional.empty(), fields -> true);
    }

    Question of(String... words) {
        return new Question(path, text, form, reason, List.of(words), kind, usual, asked);
    }

    Question usually(String answer) {
        return new Question(path, text, form, reason, choices, kind, Optional.of(answer), asked);
    }

    Question when(Predicate<FieldValue.Fields> arises) {
        return new Question(path, text, form, reason, choices, kind, usual, arises);
    }

    /** The fields with the answer; a word that is not allowed is refused by the file's own reader. */
    FieldValue.Fields answered(FieldValue.Fields fields, String answer) {
        if (kind != Kind.FLAG) {
            return FieldTree.put(fields, path, answer);
        }
        boolean yes = answer.equalsIgnoreCase("yes") || answer.equalsIgnoreCase("y");
        if (!yes && !answer.equalsIgnoreCase("no") && !answer.equalsIgnoreCase("n")) {
            throw new IllegalArgumentException('"' + answer + "\" is neither yes nor no");
        }
        return FieldTree.put(fields, path, new FieldValue.Flag(yes));
    }

    /** The line that is printed: what, in which form, why, and what stands where nothing is typed. */
    String line(Optional<String> standing) {
        String allowed = choices.isEmpty() ? "such as " + form : String.join(" / ", choices);
        return text + " (" + allowed + "; " + reason + ")"
                + standing.map(each -> " [" + each + "]").orElse("") + ": ";
    }
}
