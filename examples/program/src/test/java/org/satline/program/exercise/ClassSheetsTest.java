package org.satline.program.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.quantity.UnitSystem;

/** What a teacher hands out to a class: versions, points, choices, and the text for learning platforms. */
class ClassSheetsTest {
    private static final SheetMaker MAKER = new SheetMaker();

    @Test
    void versionsAskTheSameOfOtherFigures() {
        SheetOrder order = SheetOrder.usual(31);
        List<ExerciseSheet> sheets = Stream.of(SheetOrder.Version.values())
                .map(order::as)
                .map(MAKER::sheet)
                .toList();
        Set<List<String>> figures = new HashSet<>();
        for (ExerciseSheet sheet : sheets) {
            for (int i = 0; i < sheet.exercises().size(); i++) {
                Exercise first = sheets.get(0).exercises().get(i);
                Exercise each = sheet.exercises().get(i);
                assertThat(each.topic()).isEqualTo(first.topic());
                assertThat(each.difficulty()).isEqualTo(first.difficulty());
                assertThat(figures.add(each.givens().stream().map(Given::text).toList()))
                        .as(
                                "figures of exercise %d, version %s",
                                i + 1, sheet.order().version())
                        .isTrue();
            }
        }
    }

    /** Readings with a digit after the point: two sheets that share three of them share the machine. */
    @Test
    void gradesOfOneSeedShareNoMachine() {
        for (long seed = 1; seed <= 10; seed++) {
            List<Set<String>> readings = new ArrayList<>();
            for (Difficulty grade : Difficulty.values()) {
                SheetOrder order =
                        new SheetOrder(seed, 1, Optional.of(grade), List.of(Topic.MARGINS), Optional.of(UnitSystem.US));
                Set<String> texts = new HashSet<>();
                MAKER.sheet(order).exercises().get(0).givens().forEach(given -> texts.add(given.name() + given.text()));
                texts.removeIf(
                        text -> !text.matches(".*(line temperature|pressure).*\\d\\.\\d.*") || text.contains("atm"));
                assertThat(texts).hasSizeGreaterThanOrEqualTo(4);
                readings.add(texts);
            }
            Set<String> both = new HashSet<>(readings.get(1));
            both.retainAll(readings.get(2));
            assertThat(both).as("seed %d", seed).hasSizeLessThan(3);
        }
    }

    @Test
    void aChoiceHoldsTheRightAnswerOnceAndNoOtherThatWouldBeAccepted() {
        int choices = 0;
        for (long seed = 1; seed <= 20; seed++) {
            for (Exercise exercise : MAKER.sheet(SheetOrder.usual(seed)).exercises()) {
                for (Part part : exercise.parts()) {
                    if (part.choices().isEmpty()) {
                        continue;
                    }
                    choices++;
                    assertThat(part.choices())
                            .doesNotHaveDuplicates()
                            .contains(part.answer().text());
                    if (part.answer() instanceof Answer.Figure right) {
                        assertThat(part.wrong()).allMatch(wrong -> wrong.tellsFrom(right));
                    }
                }
            }
        }
        assertThat(choices).isGreaterThan(100);
    }

    @Test
    void whatAStudentReadsCitesNothingFromMemory() {
        for (long seed = 1; seed <= 30; seed++) {
            for (ExerciseSheet.Answering answering : ExerciseSheet.Answering.values()) {
                assertThat(MAKER.sheet(SheetOrder.usual(seed))
                                .questions(PageForm.MARKDOWN, answering)
                                .toLowerCase(Locale.ROOT))
                        .doesNotContain("from memory");
            }
        }
    }

    @Test
    void pointsOfThePartsAddUpToThoseOfTheSheet() {
        ExerciseSheet sheet = MAKER.sheet(SheetOrder.usual(12));
        Matcher points = Pattern.compile("\\((\\d+) points?\\)").matcher(sheet.questions(PageForm.MARKDOWN));
        int sum = 0;
        while (points.find()) {
            sum += Integer.parseInt(points.group(1));
        }
        assertThat(sum).isEqualTo(sheet.points());
    }

    /** The GIFT format as its description has it (from memory): a question ends at a blank line, control characters are escaped. */
    @Test
    void theTextForLearningPlatformsHoldsEachQuestionWithAnAnswer() {
        for (long seed = 1; seed <= 10; seed++) {
            ExerciseSheet sheet = MAKER.sheet(SheetOrder.usual(seed));
            List<String> questions = Stream.of(sheet.gift().split("\n\n"))
                    .filter(text -> text.startsWith("::"))
                    .toList();
            List<Part> parts = sheet.exercises().stream()
                    .flatMap(exercise -> exercise.parts().stream())
                    .toList();
            assertThat(questions).hasSameSizeAs(parts);
            for (int i = 0; i < parts.size(); i++) {
                Matcher whole = Pattern.compile(
                                "::((?:[^\\\\:]++|\\\\.)++)::\\[html\\]((?:[^\\\\{}~=#:]++|\\\\.)++)\\{((?:[^\\\\{}]++|\\\\.)*+)\\}")
                        .matcher(questions.get(i));
                assertThat(whole.matches()).as(questions.get(i)).isTrue();
                if (parts.get(i).answer() instanceof Answer.Figure figure) {
                    String[] range = whole.group(3).substring(1).split("\\.\\.", -1);
                    assertThat(Double.parseDouble(range[0]))
                            .isLessThanOrEqualTo(figure.printed().doubleValue());
                    assertThat(Double.parseDouble(range[1]))
                            .isGreaterThanOrEqualTo(figure.printed().doubleValue());
                }
            }
        }
    }
}
