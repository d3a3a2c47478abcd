package org.satline.program.ask;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.satline.program.file.BadInputException;
import org.satline.visit.file.FieldValue;

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
     * @return whether all was answered
     * @throws BadInputException if the file or the kit cannot be used
     */
    public static Ended ask(Path file, Optional<Kit> kit, Prompt prompt, LocalDateTime now) {
        FieldValue.Fields start = Files.exists(file) ? VisitStore.read(file) : FieldTree.EMPTY;
        Optional<String> changed = Kit.difference(start, file, kit);
        try {
            new Dialogue(prompt, start, kit, now, answers -> VisitStore.write(file, answers)).run();
            return new Ended(true, changed.stream().toList());
        } catch (BrokenOffException e) {
            return new Ended(
                    false,
                    List.of(e.getMessage() + ": what was answered is kept in " + file + "; visit --ask " + file
                            + " goes on from there"));
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
     * @return whether all was answered, and what was noticed
     * @throws BadInputException if the file cannot be used, or the readings cannot follow those in it
     */
    public static Ended next(Path file, Prompt prompt, LocalDateTime now) {
        FieldValue.Fields earlier = VisitStore.read(file);
        Path begun = file.resolveSibling(file.getFileName() + ".next");
        FieldValue.Fields start = Files.exists(begun) ? VisitStore.read(begun) : NextVisit.started(earlier);
        FieldValue.Fields whole;
        try {
            whole = new Dialogue(prompt, start, Optional.empty(), now, answers -> VisitStore.write(begun, answers))
                    .after(earlier)
                    .run();
        } catch (BrokenOffException e) {
            return new Ended(
                    false,
                    List.of(e.getMessage() + ": what was answered is kept in " + begun + "; visit " + file
                            + " --next goes on from there, and the visit is as it was"));
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
        Ended ended = kept(file, earlier, whole, Optional.empty());
        begun.toFile().delete();
        return ended;
    }

    /**
     * Puts new readings from a file on top of a visit.
     *
     * @param file the visit, replaced
     * @param readings a file with the fields that are new
     * @return what was noticed
     * @throws BadInputException if a file cannot be used, or the readings cannot follow those of the visit
     */
    public static Ended next(Path file, Path readings) {
        FieldValue.Fields earlier = VisitStore.read(file);
        FieldValue.Fields fresh = VisitStore.read(readings);
        Optional<String> stated = FieldTree.text(fresh, "moved.net");
        try {
            NextVisit.checkRefrigerant(earlier, fresh);
            return kept(file, earlier, NextVisit.merged(earlier, FieldTree.without(fresh, "moved")), stated);
        } catch (IllegalArgumentException e) {
            throw new BadInputException(readings + ": " + e.getMessage());
        }
    }

    private static Ended kept(Path file, FieldValue.Fields earlier, FieldValue.Fields whole, Optional<String> stated) {
        try {
            NextVisit next = NextVisit.of(earlier, whole, stated);
            VisitStore.write(file, next.visit());
            return new Ended(
                    true, next.notices().stream().map(NextVisit.Notice::text).toList());
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
    }
}
