package org.satline.page;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.satline.program.exercise.Difficulty;
import org.satline.program.exercise.ExerciseSheet;
import org.satline.program.exercise.SheetOrder;
import org.satline.program.exercise.Topic;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;

/** For teachers: a sheet of exercises for the class, and its key. For the one thread of a page. */
final class SheetScreen {
    private static final String RISING = "rising";
    private static final String DRAWN = "drawn";

    private final Page page;
    private final Set<Topic> topics = EnumSet.of(Topic.SATURATION, Topic.MARGINS, Topic.FILL_LIMIT);
    private final Node paper = Node.of("div").set("id", "paper");
    private String number = "1";
    private String grade = RISING;
    private String units = DRAWN;
    private String version = "A";
    private boolean ticked;
    private boolean withKey;

    SheetScreen(Page page) {
        this.page = page;
    }

    Node node() {
        Node problem = Node.of("p", "problem").set("role", "alert");
        Node screen = Node.of("section", "card").set("aria-labelledby", "heading");
        Node input = Node.of("input")
                .set("type", "text")
                .set("inputmode", "numeric")
                .set("id", "sheet-number")
                .value(number);
        input.on("input", () -> number = input.value().strip());
        screen.add(
                Node.of("h2").set("id", "heading").set("tabindex", "-1").text(page.text("sheet.heading")),
                Node.of("p").text(page.text("sheet.what")),
                Node.of("div", "pair")
                        .add(
                                UnitScreen.labelled(page.text("sheet.number"), input),
                                select("version", names(SheetOrder.Version.values()), version, each -> version = each),
                                select("grade", grades(), grade, each -> grade = each),
                                select("units", List.of(DRAWN, "us", "si"), units, each -> units = each)),
                topics(),
                Node.of("div", "checks")
                        .add(
                                check("tick", ticked, () -> ticked = !ticked),
                                check("key", withKey, () -> withKey = !withKey)),
                Node.of("div", "steps")
                        .add(
                                Node.button("step", page.text("print"), Browser::print),
                                Node.button("step next", page.text("sheet.draw"), () -> order(problem))
                                        .set("id", "draw-sheet")),
                problem,
                paper);
        return screen;
    }

    private static List<String> names(Enum<?>[] constants) {
        List<String> names = new ArrayList<>();
        for (Enum<?> each : constants) {
            names.add(each.name());
        }
        return names;
    }

    private static List<String> grades() {
        List<String> grades = new ArrayList<>(List.of(RISING));
        for (Difficulty each : Difficulty.values()) {
            grades.add(each.label());
        }
        return grades;
    }

    /** What is done with a word that was chosen. */
    private interface Chosen {
        void take(String word);
    }

    private Node select(String name, List<String> words, String now, Chosen chosen) {
        Node select = Node.of("select").set("id", "sheet-" + name);
        for (String word : words) {
            String text = word.length() == 1 ? word : page.text("sheet." + name + "." + word);
            select.add(UnitScreen.option(word, text, word.equals(now)));
        }
        return UnitScreen.labelled(page.text("sheet." + name), select.on("change", () -> chosen.take(select.value())));
    }

    private Node topics() {
        Node group = Node.of("fieldset", "checks").add(Node.of("legend").text(page.text("sheet.topics")));
        for (Topic topic : Topic.values()) {
            group.add(check("topic." + topic.label(), topics.contains(topic), () -> {
                if (!topics.remove(topic)) {
                    topics.add(topic);
                }
            }));
        }
        return group;
    }

    private Node check(String name, boolean on, Node.Handler turned) {
        Node box = Node.of("input").set("type", "checkbox").set("id", "sheet-" + name.replace('.', '-'));
        if (on) {
            box.set("checked", "");
        }
        return Node.of("label", "check")
                .add(box.on("change", turned), Node.of("span").text(page.text("sheet." + name)));
    }

    /** Drawing units until one fits takes a moment, which is said before. */
    private void order(Node problem) {
        if (!number.matches("\\d{1,9}") || topics.isEmpty()) {
            problem.text(page.text(topics.isEmpty() ? "sheet.noTopic" : "unit.numberRefused"));
            return;
        }
        problem.text("");
        paper.cleared().add(Node.of("p").set("role", "status").text(page.text("sheet.making")));
        Browser.later(this::lay, 30);
    }

    private void lay() {
        double start = Browser.stopwatch();
        ExerciseSheet sheet = ExerciseSheet.of(
                new SheetOrder(
                        Long.parseLong(number),
                        topics.size(),
                        grade.equals(RISING) ? Optional.empty() : Optional.of(Difficulty.ofLabel(grade)),
                        List.copyOf(topics),
                        units.equals(DRAWN)
                                ? Optional.empty()
                                : Optional.of(UnitSystem.valueOf(units.toUpperCase(Locale.ROOT))),
                        SheetOrder.Version.valueOf(version)),
                new Language(page.look().language()));
        String wide = page.text("sheet.table");
        ExerciseSheet.Answering answering = ticked ? ExerciseSheet.Answering.TICKED : ExerciseSheet.Answering.WRITTEN;
        paper.cleared()
                .add(BlockNodes.of(sheet.questions(answering), wide))
                .add(withKey ? BlockNodes.of(sheet.key(), wide).set("class", "paper key") : null);
        Browser.note("sheet", Browser.stopwatch() - start);
    }
}
