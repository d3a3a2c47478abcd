package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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
        return "Refrigerant exercises, sheet " + sheet.order().seed();
    }

    static List<Block> of(ExerciseSheet sheet) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Begin(Block.Sheet.SAME));
        blocks.add(new Block.Heading(1, title(sheet)));
        blocks.add(new Block.Paragraph(PRACTICE));
        blocks.add(
                new Block.Paragraph(
                        "Pressures are absolute unless they are gauge pressures by name or unit (psig, kPa gauge, inHg vacuum). A difference"
                                + " of temperatures in degF has no offset of 32. Carry one digit more than is asked for, and round at the end."));
        int number = 1;
        for (Exercise exercise : sheet.exercises()) {
            if (number > 1) {
                blocks.add(new Block.Begin(Block.Sheet.NEW));
            }
            blocks.add(heading(number++, exercise));
            question(blocks, exercise);
            char letter = 'a';
            for (Part part : exercise.parts()) {
                blocks.add(new Block.Question(String.valueOf(letter++), part.ask(), ""));
            }
        }
        cautions(blocks, sheet);
        sources(blocks, sheet);
        return blocks;
    }

    static Block heading(int number, Exercise exercise) {
        return new Block.Heading(
                2,
                number + ". " + exercise.topic().title() + " ("
                        + exercise.difficulty().label() + ")");
    }

    private static void question(List<Block> blocks, Exercise exercise) {
        blocks.add(new Block.Paragraph(exercise.situation()));
        blocks.add(new Block.Table(
                "",
                List.of("given", ""),
                exercise.givens().stream()
                        .map(given -> List.of(given.name(), given.text()))
                        .toList()));
        if (!exercise.rules().isEmpty()) {
            blocks.add(new Block.Points(exercise.rules()));
        }
        for (TableExtract extract : exercise.tables()) {
            blocks.add(new Block.Table(extract.title(), extract.head(), extract.rows()));
        }
    }

    private static void sources(List<Block> blocks, ExerciseSheet sheet) {
        List<String> sources = sheet.exercises().stream()
                .flatMap(exercise -> exercise.tables().stream())
                .map(extract -> extract.title() + ": computed from " + extract.source())
                .distinct()
                .toList();
        if (!sources.isEmpty()) {
            blocks.add(new Block.Heading(2, "Where the tables come from"));
            blocks.add(new Block.Points(sources));
        }
    }

    /** All that the tasks of the sheet ask to beware of, each once. */
    static void cautions(List<Block> blocks, ExerciseSheet sheet) {
        Set<String> texts = new LinkedHashSet<>();
        for (Exercise exercise : sheet.exercises()) {
            for (Caution caution : exercise.cautions()) {
                texts.add(Bench.WORDS.of(caution) + " [" + caution.basis() + "]");
            }
        }
        blocks.add(new Block.Begin(Block.Sheet.NEW));
        blocks.add(new Block.Heading(2, "Before any of this is done on a machine"));
        blocks.add(new Block.Points(List.copyOf(texts)));
        blocks.add(new Block.Paragraph("Local codes and licensed practice come first. Data "
                + Catalogue.standard().dataVersion() + "."));
    }
}
