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

/** Lays out the questions. */
final class SheetPage {
    static final String PRACTICE =
            "Every machine, cylinder and reading here is invented. These exercises do not replace training: local codes and licensed practice"
                    + " come first.";

    private SheetPage() {}

    static String title(ExerciseSheet sheet) {
        return "Refrigerant exercises, " + sheet.name();
    }

    static List<Block> of(ExerciseSheet sheet, ExerciseSheet.Answering answering) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Begin(Block.Sheet.SAME));
        blocks.add(new Block.Heading(1, title(sheet)));
        blocks.add(new Block.Blanks(List.of("Name", "Date", "Points of " + sheet.points())));
        blocks.add(new Block.Paragraph(PRACTICE));
        blocks.add(
                new Block.Paragraph(
                        "Pressures are absolute unless they are gauge pressures by name or unit (psig, kPa gauge, inHg vacuum). A difference"
                                + " of temperatures in degF has no offset of 32. Carry one digit more than is asked for, and round at the end."));
        int number = 1;
        for (Exercise exercise : sheet.exercises()) {
            blocks.add(new Block.Begin(Block.Sheet.WHOLE));
            blocks.add(heading(number++, exercise));
            question(blocks, exercise);
            char letter = 'a';
            for (Part part : exercise.parts()) {
                List<String> choices = answering == ExerciseSheet.Answering.TICKED ? part.choices() : List.<String>of();
                blocks.add(new Block.Question(
                        String.valueOf(letter++),
                        part.ask() + points(part),
                        choices,
                        "",
                        choices.isEmpty() ? part.lines() : 0));
            }
        }
        cautions(blocks, sheet, caution -> "");
        sources(blocks, sheet);
        return blocks;
    }

    static String points(Part part) {
        return " (" + part.points() + (part.points() == 1 ? " point)" : " points)");
    }

    static Block heading(int number, Exercise exercise) {
        return new Block.Heading(
                2,
                number + ". " + exercise.topic().title() + " ("
                        + exercise.difficulty().label() + ", " + exercise.points() + " points)");
    }

    private static void question(List<Block> blocks, Exercise exercise) {
        blocks.add(new Block.Paragraph(exercise.situation()));
        blocks.add(new Block.Table(
                "",
                List.of("given", ""),
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
            blocks.add(new Block.Heading(2, "Where the tables come from"));
            blocks.add(new Block.Paragraph("Saturation figures are computed from:"));
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
                texts.add(Bench.WORDS.of(caution) + after.apply(caution));
            }
        }
        blocks.add(new Block.Begin(Block.Sheet.WHOLE));
        blocks.add(new Block.Heading(2, "Before any of this is done on a machine"));
        blocks.add(new Block.Points(List.copyOf(texts)));
        blocks.add(new Block.Paragraph("Local codes and licensed practice come first. Data "
                + Catalogue.standard().dataVersion() + "."));
    }
}
