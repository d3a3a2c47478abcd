package org.satline.program.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.program.words.ProgramWording;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.StepText;
import org.satline.wording.Wording;

class ExerciseSheetTest {
    private static final SheetMaker MAKER = new SheetMaker();

    @Test
    void theSameSeedGivesTheSameBytesFromAnotherMaker() {
        SheetOrder order = SheetOrder.usual(17);
        ExerciseSheet first = ExerciseSheet.of(order);
        MAKER.sheet(SheetOrder.usual(16)); // what was drawn before must not matter
        ExerciseSheet second = MAKER.sheet(order);
        for (PageForm form : PageForm.values()) {
            assertThat(second.questions(form)).isEqualTo(first.questions(form));
            assertThat(second.key(form)).isEqualTo(first.key(form));
        }
    }

    @Test
    void sheetsOfDifferentSeedsAreNotAlike() {
        Set<String> sheets = new HashSet<>();
        int seeds = Integer.getInteger("satline.exercise.seeds", 40); // more with the profile exercises
        for (int seed = 1; seed <= seeds; seed++) {
            assertThat(sheets.add(bodies(MAKER.sheet(SheetOrder.usual(seed)))))
                    .as("sheet %d is new", seed)
                    .isTrue();
        }
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void norAreThoseOfAFewExercisesOnOneTopic(Topic topic) {
        Set<String> sheets = new HashSet<>();
        for (int seed = 1; seed <= 20; seed++) {
            SheetOrder order = new SheetOrder(seed, 3, Optional.empty(), List.of(topic), Optional.empty());
            assertThat(sheets.add(bodies(MAKER.sheet(order))))
                    .as("sheet %d is new", seed)
                    .isTrue();
        }
    }

    @Test
    void aSpanishSheetAsksTheSameInOtherWords() {
        Wording spanish = ProgramWording.of(Language.SPANISH, UnitSystem.US);
        for (int seed = 1; seed <= 12; seed++) {
            List<Exercise> english = MAKER.sheet(SheetOrder.usual(seed)).exercises();
            List<Exercise> other = MAKER.sheet(SheetOrder.usual(seed), spanish).exercises();
            for (int i = 0; i < english.size(); i++) {
                Exercise one = english.get(i);
                Exercise two = other.get(i);
                assertThat(numbers(two)).isEqualTo(numbers(one));
                assertThat(two.situation()).isNotEqualTo(one.situation());
                assertOther(one.rules(), two.rules());
                assertOther(one.slips(), two.slips());
                assertOther(
                        one.parts().stream().map(Part::ask).toList(),
                        two.parts().stream().map(Part::ask).toList());
                assertOther(
                        one.givens().stream().map(Given::name).toList(),
                        two.givens().stream().map(Given::name).toList());
                assertOther(
                        one.working().stream().map(StepText::name).toList(),
                        two.working().stream().map(StepText::name).toList());
            }
        }
    }

    private static List<Answer> numbers(Exercise exercise) {
        return exercise.parts().stream()
                .map(Part::answer)
                .filter(Answer.Figure.class::isInstance)
                .toList();
    }

    /** Lines of units and signs alone are the same in each language. */
    private static void assertOther(List<String> english, List<String> other) {
        assertThat(other).hasSameSizeAs(english);
        for (int i = 0; i < english.size(); i++) {
            if (english.get(i).matches(".*\\b[a-z]{4,}\\b.*")) {
                assertThat(other.get(i)).isNotEqualTo(english.get(i));
            }
        }
    }

    /** Without the title, which names the seed. */
    private static String bodies(ExerciseSheet sheet) {
        String page = sheet.questions(PageForm.MARKDOWN);
        return page.substring(page.indexOf("## 1."));
    }

    @Test
    void everyTopicComesUpInEveryGradeOfRisingSheets() {
        Map<Difficulty, Set<Topic>> seen = new EnumMap<>(Difficulty.class);
        for (int seed = 1; seed <= 40; seed++) {
            List<Exercise> exercises = MAKER.sheet(SheetOrder.usual(seed)).exercises();
            assertThat(exercises).extracting(Exercise::topic).containsExactlyInAnyOrder(Topic.values());
            assertThat(exercises).extracting(Exercise::difficulty).isSorted();
            exercises.forEach(each -> seen.computeIfAbsent(each.difficulty(), d -> EnumSet.noneOf(Topic.class))
                    .add(each.topic()));
        }
        assertThat(seen)
                .hasSize(3)
                .allSatisfy((grade, topics) -> assertThat(topics).containsExactly(Topic.values()));
    }

    @ParameterizedTest
    @EnumSource(Difficulty.class)
    void topicsAreTakenInTurnInTheGradeThatIsAskedFor(Difficulty difficulty) {
        SheetOrder order = new SheetOrder(
                3, 5, Optional.of(difficulty), List.of(Topic.PURGE, Topic.GLIDE), Optional.of(UnitSystem.US));
        List<Exercise> exercises = MAKER.sheet(order).exercises();
        assertThat(exercises)
                .extracting(Exercise::topic)
                .containsExactly(Topic.PURGE, Topic.GLIDE, Topic.PURGE, Topic.GLIDE, Topic.PURGE);
        assertThat(exercises).allMatch(each -> each.difficulty() == difficulty);
    }

    @Test
    void theUnitsAreThoseAskedFor() {
        SheetOrder si = new SheetOrder(
                4, 9, Optional.of(Difficulty.STARTING), List.of(Topic.values()), Optional.of(UnitSystem.SI));
        assertThat(MAKER.sheet(si).exercises())
                .flatExtracting(Exercise::givens)
                .extracting(Given::text)
                .noneMatch(text -> text.matches(".*(degF|psi|psia|psig|lb|ft|inHg vacuum)$"));
        SheetOrder us = new SheetOrder(
                4, 9, Optional.of(Difficulty.STARTING), List.of(Topic.values()), Optional.of(UnitSystem.US));
        assertThat(MAKER.sheet(us).exercises())
                .flatExtracting(Exercise::givens)
                .extracting(Given::text)
                .noneMatch(text -> text.matches(".*(degC|kPa|kPa gauge|kg|kg/m3| m| mm)$"));
    }

    @Test
    void everyPageSaysThatItIsInventedAndWhatComesFirst() {
        ExerciseSheet sheet = MAKER.sheet(SheetOrder.usual(5));
        for (String page : List.of(sheet.questions(PageForm.MARKDOWN), sheet.key(PageForm.MARKDOWN))) {
            assertThat(page)
                    .contains("is invented", "local codes and licensed practice come first")
                    .contains("Before any of this is done on a machine", "wear goggles and gloves");
        }
    }

    @Test
    void anOrderThatCannotBeMetIsRefused() {
        List<Topic> all = List.of(Topic.values());
        assertThatThrownBy(() -> new SheetOrder(1, 0, Optional.empty(), all, Optional.empty()))
                .hasMessageContaining("count 0 is outside [1, 100]");
        assertThatThrownBy(() -> new SheetOrder(1, 101, Optional.empty(), all, Optional.empty()))
                .hasMessageContaining("several sheets");
        assertThatThrownBy(() -> new SheetOrder(1, 1, Optional.empty(), List.of(), Optional.empty()))
                .hasMessageContaining("no topic");
        assertThatThrownBy(() -> Topic.ofLabel("superheat")).hasMessageContaining("superheat-subcooling");
        assertThatThrownBy(() -> Difficulty.ofLabel("easy")).hasMessageContaining("starting, practised, experienced");
        assertThatThrownBy(() -> PageForm.ofFileName("sheet.pdf")).hasMessageContaining(".md or .html");
    }
}
