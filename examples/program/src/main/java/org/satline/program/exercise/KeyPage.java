package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import org.satline.program.page.Block;
import org.satline.wording.StepText;

/** Lays out the answers with the way that leads to them. */
final class KeyPage {
    private static final List<String> HEAD = List.of("step", "formula", "numbers", "result", "source");

    private KeyPage() {}

    static String title(ExerciseSheet sheet) {
        return "Key to refrigerant exercises, " + sheet.name();
    }

    static List<Block> of(ExerciseSheet sheet) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Begin(Block.Sheet.SAME));
        blocks.add(new Block.Heading(1, title(sheet)));
        blocks.add(new Block.Paragraph(SheetPage.PRACTICE));
        blocks.add(new Block.Paragraph(
                "Answers are computed from the readings as the questions print them, with saturation pressures, temperatures and"
                        + " densities at the exact state, unrounded, and without rounding in between. Whoever uses the printed rows, with a"
                        + " straight line between them, and by the printed densities, ends at the same answer or within the range to"
                        + " accept that stands behind it. Largest contents, room, weights and steps that have a limit are rounded down, and no"
                        + " answer above them is accepted."));
        blocks.add(new Block.Points(List.of(
                sheet.points() + " points in all.",
                "A number: one point for the way (the right relation with the figures of the question), one for the result with its unit"
                        + " within the range to accept. A result that follows rightly from an earlier wrong one keeps its points.",
                "Words: one point; where a reason is asked for, only with the reason.")));
        int number = 1;
        for (Exercise exercise : sheet.exercises()) {
            if (number > 1) {
                blocks.add(new Block.Begin(Block.Sheet.SAME));
            }
            blocks.add(SheetPage.heading(number++, exercise));
            char letter = 'a';
            for (Part part : exercise.parts()) {
                blocks.add(new Block.Question(
                        String.valueOf(letter++),
                        part.ask() + SheetPage.points(part),
                        List.of(),
                        answer(part.answer()),
                        0));
            }
            blocks.add(steps("Working", exercise.working()));
            if (!exercise.derivation().isEmpty()) {
                blocks.add(steps(
                        "The same as the library derives it",
                        exercise.derivation().stream().map(Bench.WORDS::of).toList()));
            }
            if (!exercise.slips().isEmpty()) {
                blocks.add(new Block.Heading(3, "For the teacher"));
                blocks.add(new Block.Points(exercise.slips()));
            }
        }
        SheetPage.cautions(blocks, sheet, caution -> " [" + caution.basis() + "]");
        return blocks;
    }

    private static String answer(Answer answer) {
        return answer instanceof Answer.Figure figure && figure.allowance() > 0
                ? figure.text() + " (accept " + figure.alsoRight() + ")"
                : answer.text();
    }

    private static Block steps(String title, List<StepText> steps) {
        return new Block.Table(
                title,
                HEAD,
                steps.stream()
                        .map(step -> List.of(
                                step.name(),
                                step.formula(),
                                String.join(", ", step.given()),
                                step.result(),
                                step.source()))
                        .toList());
    }
}
