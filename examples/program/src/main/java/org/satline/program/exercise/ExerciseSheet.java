package org.satline.program.exercise;

import java.util.List;
import java.util.Objects;
import org.satline.program.page.Block;
import org.satline.program.words.ProgramWording;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * A sheet of exercises with its key. Immutable, thread-safe.
 *
 * <p>Every number that a question prints is rounded before the answer is computed, so that the printed question alone leads to the printed
 * answer.
 */
public final class ExerciseSheet {
    private final SheetOrder order;
    private final List<Exercise> exercises;
    private final Wording words;

    ExerciseSheet(SheetOrder order, List<Exercise> exercises, Wording words) {
        this.order = Objects.requireNonNull(order, "order");
        this.exercises = List.copyOf(exercises);
        this.words = words;
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

    /**
     * Draws the exercises of an order in a language.
     *
     * @param order what is asked for
     * @param language the language of the texts; figures and formulas are those of the English sheet
     * @return the sheet
     */
    public static ExerciseSheet of(SheetOrder order, Language language) {
        return new SheetMaker().sheet(order, ProgramWording.of(language, UnitSystem.US));
    }

    Wording words() {
        return words;
    }

    String say(String key, Object... values) {
        return Readout.said(words, key, values);
    }

    SheetOrder order() {
        return order;
    }

    List<Exercise> exercises() {
        return exercises;
    }

    /** How answers are given on a sheet. */
    public enum Answering {
        /** Written out by hand. */
        WRITTEN,
        /** Ticked where enough usual mistakes are known to choose from, else written. */
        TICKED
    }

    /**
     * Lays out the question sheet, answers written by hand.
     *
     * @param form Markdown or HTML
     * @return the whole document
     */
    public String questions(PageForm form) {
        return questions(form, Answering.WRITTEN);
    }

    /**
     * Lays out the question sheet.
     *
     * @param form Markdown or HTML
     * @param answering how answers are given
     * @return the whole document
     */
    public String questions(PageForm form, Answering answering) {
        return form.write(SheetPage.title(this), words.language().tag(), questions(answering));
    }

    /**
     * The question sheet for whoever lays it out.
     *
     * @param answering how answers are given
     * @return its blocks, in order
     */
    public List<Block> questions(Answering answering) {
        return SheetPage.of(this, answering);
    }

    /**
     * The questions with their answers as GIFT text, which learning platforms import.
     *
     * @return one question of the text for each that the sheet asks
     */
    public String gift() {
        return GiftText.of(this);
    }

    /** Number and version, as titles name them. */
    String name() {
        return say("exercise.sheet", order.seed(), order.version());
    }

    int points() {
        return exercises.stream().mapToInt(Exercise::points).sum();
    }

    /**
     * Lays out the answer key.
     *
     * @param form Markdown or HTML
     * @return the whole document
     */
    public String key(PageForm form) {
        return form.write(KeyPage.title(this), words.language().tag(), key());
    }

    /**
     * The answer key for whoever lays it out.
     *
     * @return its blocks, in order
     */
    public List<Block> key() {
        return KeyPage.of(this);
    }
}
