package org.satline.program.ask;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.program.file.BadInputException;
import org.satline.visit.file.FieldValue;
import org.satline.wording.Wording;

/** Asks for a visit and keeps it in its file: a new one, one that was broken off, or the next readings of one. Stateless. */
public final class VisitAsk {
    private VisitAsk() {}

    /**
     * How it ended.
     *
     * @param whole whether the file holds a whole visit now
     * @param notes what to say of it
     */
    public record Ended(boolean whole, List<String> notes) {
        /** {@inheritDoc} */
        public Ended {
            notes = List.copyOf(notes);
        }
    }

    /**
     * Asks for what a visit file lacks.
     *
     * @param file read where it exists, written after each answer
     * @param kit defaults, where one is given
     * @param prompt where to ask
     * @param now default of day and time of the readings
     * @param words in which language
     * @return whether all was answered
     * @throws BadInputException if the file or the kit cannot be used
     */
    public static Ended ask(Path file, Optional<Kit> kit, Prompt prompt, LocalDateTime now, Wording words) {
        FieldValue.Fields start = Files.exists(file) ? VisitStore.read(file) : FieldTree.EMPTY;
        Optional<String> changed = Kit.difference(start, file, kit, words);
        try {
            new Dialogue(prompt, words, start, kit, now, answers -> VisitStore.write(file, answers)).run();
            return new Ended(true, changed.stream().toList());
        } catch (BrokenOffException e) {
            return new Ended(
                    false,
                    List.of(words.message(
                            "ended.kept", Figure.of("how", e.told(words)), Figure.of("file", file.toString()))));
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
    }

    /**
     * Asks for the readings after those of a visit. What was answered when it is broken off is kept beside the visit, which stays as it is.
     *
     * @param file the visit, replaced once all is answered
     * @param prompt where to ask
     * @param now default of day and time of the readings
     * @param words in which language
     * @return whether all was answered, and what was noticed
     * @throws BadInputException if the file cannot be used, or the readings cannot follow those in it
     */
    public static Ended next(Path file, Prompt prompt, LocalDateTime now, Wording words) {
        FieldValue.Fields earlier = VisitStore.read(file);
        Path begun = file.resolveSibling(file.getFileName() + ".next");
        FieldValue.Fields start = Files.exists(begun) ? VisitStore.read(begun) : NextVisit.started(earlier);
        FieldValue.Fields whole;
        try {
            whole = new Dialogue(
                            prompt, words, start, Optional.empty(), now, answers -> VisitStore.write(begun, answers))
                    .after(earlier)
                    .run();
        } catch (BrokenOffException e) {
            return new Ended(
                    false,
                    List.of(words.message(
                            "ended.keptNext",
                            Figure.of("how", e.told(words)),
                            Figure.of("begun", begun.toString()),
                            Figure.of("file", file.toString()))));
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
        Ended ended = kept(file, earlier, whole, Optional.empty(), words);
        begun.toFile().delete();
        return ended;
    }

    /**
     * Puts new readings from a file on top of a visit.
     *
     * @param file the visit, replaced
     * @param readings a file with the fields that are new
     * @param words in which language
     * @return what was noticed
     * @throws BadInputException if a file cannot be used, or the readings cannot follow those of the visit
     */
    public static Ended next(Path file, Path readings, Wording words) {
        FieldValue.Fields earlier = VisitStore.read(file);
        FieldValue.Fields fresh = VisitStore.read(readings);
        Optional<String> stated = FieldTree.text(fresh, "moved.net");
        try {
            NextVisit.checkRefrigerant(earlier, fresh);
            return kept(file, earlier, NextVisit.merged(earlier, FieldTree.without(fresh, "moved")), stated, words);
        } catch (IllegalArgumentException e) {
            throw new BadInputException(readings + ": " + e.getMessage());
        }
    }

    private static Ended kept(
            Path file, FieldValue.Fields earlier, FieldValue.Fields whole, Optional<String> stated, Wording words) {
        try {
            NextVisit next = NextVisit.of(earlier, whole, stated);
            VisitStore.write(file, next.visit());
            return new Ended(
                    true,
                    next.notices().stream().map(notice -> notice.text(words)).toList());
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
    }
}
