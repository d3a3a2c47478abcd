package org.satline.program.exercise;

import java.util.List;
import java.util.Objects;

/**
 * A sheet of exercises with its key. Immutable, thread-safe.
 *
 * <p>Every number that a question prints is rounded before the answer is computed, so that the printed question alone leads to the printed
 * answer.
 */
public final class ExerciseSheet {
    private final SheetOrder order;
    private final List<Exercise> exercises;

    ExerciseSheet(SheetOrder order, List<Exercise> exercises) {
        this.order = Objects.requireNonNull(order, "order");
        this.exercises = List.copyOf(exercises);
    }

    /**
     * Draws a sheet.
     *
     * @param order what is wanted
     * @return the sheet; the same for the same order
     */
    public static ExerciseSheet of(SheetOrder order) {
        return new SheetMaker().sheet(order);
    }

    SheetOrder order() {
        return order;
    }

    List<Exercise> exercises() {
        return exercises;
    }

    /**
     * Lays out the question sheet.
     *
     * @param form Markdown or HTML
     * @return the whole document
     */
    public String questions(PageForm form) {
        return form.write(SheetPage.title(this), SheetPage.of(this));
    }

    /**
     * Lays out the answer key.
     *
     * @param form Markdown or HTML
     * @return the whole document
     */
    public String key(PageForm form) {
        return form.write(KeyPage.title(this), KeyPage.of(this));
    }
}
