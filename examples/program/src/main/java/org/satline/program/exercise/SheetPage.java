package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.satline.program.page.Block;
import org.satline.refrigerant.Catalogue;
import org.satline.safety.Caution;
import org.satline.wording.Language;

/** Lays out the questions. */
final class SheetPage {
    static final String PRACTICE = "exercise.every-machine-cylinder-and-reading";

    private SheetPage() {}

    static String title(ExerciseSheet sheet) {
        return sheet.say("exercise.refrigerant-exercises", sheet.name());
    }

    static List<Block> of(ExerciseSheet sheet, ExerciseSheet.Answering answering) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Begin(Block.Sheet.SAME));
        blocks.add(new Block.Heading(1, title(sheet)));
        blocks.add(new Block.Blanks(List.of(
                sheet.say("exercise.name"),
                sheet.say("exercise.date"),
                sheet.say("exercise.points-of", sheet.points()))));
        blocks.add(new Block.Paragraph(sheet.say(PRACTICE)));
        if (!sheet.words().language().equals(Language.ENGLISH)) {
            blocks.add(new Block.Paragraph(sheet.words().message("page.footer.translated")));
        }
        blocks.add(new Block.Paragraph(sheet.say("exercise.pressures-are-absolute-unless-they")));
        int number = 1;
        for (Exercise exercise : sheet.exercises()) {
            blocks.add(new Block.Begin(Block.Sheet.WHOLE));
            blocks.add(heading(sheet, number++, exercise));
            question(sheet, blocks, exercise);
            char letter = 'a';
            for (Part part : exercise.parts()) {
                List<String> choices = answering == ExerciseSheet.Answering.TICKED ? part.choices() : List.<String>of();
                blocks.add(new Block.Question(
                        String.valueOf(letter++),
                        part.ask() + points(sheet, part),
                        choices,
                        "",
                        choices.isEmpty() ? part.lines() : 0));
            }
        }
        cautions(blocks, sheet, caution -> "");
        sources(blocks, sheet);
        return blocks;
    }

    static String points(ExerciseSheet sheet, Part part) {
        return " (" + part.points()
                + (part.points() == 1 ? " " + sheet.say("exercise.point") : " " + sheet.say("exercise.points"));
    }

    static Block heading(ExerciseSheet sheet, int number, Exercise exercise) {
        return new Block.Heading(
                2,
                sheet.say(
                        "exercise.points-2",
                        number,
                        sheet.say("exercise.topic." + exercise.topic().label()),
                        sheet.say("exercise.grade." + exercise.difficulty().label()),
                        exercise.points()));
    }

    private static void question(ExerciseSheet sheet, List<Block> blocks, Exercise exercise) {
        blocks.add(new Block.Paragraph(exercise.situation()));
        blocks.add(new Block.Table(
                "",
                List.of(sheet.say("exercise.given"), ""),
                exercise.givens().stream()
                        .map(given -> List.of(given.name(), given.text()))
                        .toList()));
        for (TableExtract extract : exercise.tables()) {
            Block.Table rows = new Block.Table(extract.title(), extract.head(), extract.rows());
            // names inside a picture have to differ from those of the others of the page
            blocks.add(extract.chart()
                    .<Block>map(chart -> new Block.Chart(chart.toSvgElement("chart-" + blocks.size()), rows))
                    .orElse(rows));
        }
        if (!exercise.rules().isEmpty()) {
            blocks.add(new Block.Points(exercise.rules()));
        }
    }

    private static void sources(List<Block> blocks, ExerciseSheet sheet) {
        List<String> sources = sheet.exercises().stream()
                .flatMap(exercise -> exercise.tables().stream())
                .flatMap(extract -> Stream.of(extract.source().split("; ", -1)))
                .distinct()
                .toList();
        if (!sources.isEmpty()) {
            blocks.add(new Block.Heading(2, sheet.say("exercise.where-the-tables-come-from")));
            blocks.add(new Block.Paragraph(sheet.say("exercise.saturation-figures-computed-from")));
            blocks.add(new Block.Points(sources));
        }
    }

    /**
     * All that the tasks of the sheet ask to beware of, each once.
     *
     * @param after what follows the text of a caution
     */
    static void cautions(List<Block> blocks, ExerciseSheet sheet, Function<Caution, String> after) {
        Set<String> texts = new LinkedHashSet<>();
        for (Exercise exercise : sheet.exercises()) {
            for (Caution caution : exercise.cautions()) {
                texts.add(sheet.words().of(caution) + after.apply(caution));
            }
        }
        blocks.add(new Block.Begin(Block.Sheet.WHOLE));
        blocks.add(new Block.Heading(2, sheet.say("exercise.before-any-of-this-is")));
        blocks.add(new Block.Points(List.copyOf(texts)));
        blocks.add(new Block.Paragraph(sheet.say(
                "exercise.local-codes-and-licensed-practice",
                Catalogue.standard().dataVersion())));
    }
}
