package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import org.satline.program.page.Block;
import org.satline.wording.StepText;

/** Lays out the answers with the way that leads to them. */
final class KeyPage {

    private KeyPage() {}

    static String title(ExerciseSheet sheet) {
        return sheet.say("exercise.key-to-refrigerant-exercises", sheet.name());
    }

    static List<Block> of(ExerciseSheet sheet) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Begin(Block.Sheet.SAME));
        blocks.add(new Block.Heading(1, title(sheet)));
        blocks.add(new Block.Paragraph(sheet.say(SheetPage.PRACTICE)));
        blocks.add(new Block.Paragraph(sheet.say("exercise.answers-are-computed-from-the")));
        blocks.add(new Block.Points(List.of(
                sheet.say("exercise.points-in-all", sheet.points()),
                sheet.say("exercise.a-number-one-point-for"),
                sheet.say("exercise.words-one-point-where-a"))));
        int number = 1;
        for (Exercise exercise : sheet.exercises()) {
            if (number > 1) {
                blocks.add(new Block.Begin(Block.Sheet.SAME));
            }
            blocks.add(SheetPage.heading(sheet, number++, exercise));
            char letter = 'a';
            for (Part part : exercise.parts()) {
                blocks.add(new Block.Question(
                        String.valueOf(letter++),
                        part.ask() + SheetPage.points(sheet, part),
                        List.of(),
                        answer(sheet, part.answer()),
                        0));
            }
            blocks.add(steps(sheet, sheet.say("exercise.working"), exercise.working()));
            if (!exercise.derivation().isEmpty()) {
                blocks.add(steps(
                        sheet,
                        sheet.say("exercise.the-same-as-the-library"),
                        exercise.derivation().stream().map(sheet.words()::of).toList()));
            }
            if (!exercise.slips().isEmpty()) {
                blocks.add(new Block.Heading(3, sheet.say("exercise.for-the-teacher")));
                blocks.add(new Block.Points(exercise.slips()));
            }
        }
        SheetPage.cautions(blocks, sheet, caution -> " [" + caution.basis() + "]");
        return blocks;
    }

    private static String answer(ExerciseSheet sheet, Answer answer) {
        return answer instanceof Answer.Figure figure && figure.allowance() > 0
                ? sheet.say("exercise.accept", figure.text(), figure.alsoRight())
                : answer.text();
    }

    private static Block steps(ExerciseSheet sheet, String title, List<StepText> steps) {
        return new Block.Table(
                title,
                List.of(
                        sheet.say("exercise.step"),
                        sheet.say("exercise.formula"),
                        sheet.say("exercise.numbers"),
                        sheet.say("exercise.result"),
                        sheet.say("exercise.source")),
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
