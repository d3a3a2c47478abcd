package org.satline.program.ask;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.satline.explanation.Figure;
import org.satline.program.file.Shown;
import org.satline.visit.file.FieldValue;
import org.satline.wording.Wording;

/**
 * Asks one question after the other, for the least that the answer needs: what no file can be without, then what the answer lacks by its
 * own word, until it lacks nothing that the person has. For one thread.
 */
public final class Dialogue {
    /** Explains a question. */
    static final String EXPLAIN = "?";

    /** Goes back to the question before. */
    static final String BACK = "<";

    /** The person does not have it. */
    static final String NOT_AVAILABLE = "-";

    private final Prompt prompt;
    private final Wording words;
    private final Optional<Kit> kit;
    private final LocalDateTime now;
    private final Consumer<FieldValue.Fields> keep;
    private final Deque<Asked> asked = new ArrayDeque<>();
    private final Set<String> declined = new HashSet<>();
    private CylinderFocus focus;
    /** The cylinder that is left, as it was last weighed, where the next readings may be taken on another. */
    private Optional<CylinderFocus> earlier = Optional.empty();
    /** Whether the hose is on another cylinder than the one that is asked about. */
    private boolean aside;

    /** A question that was asked, with the answers before it. */
    private record Asked(Question question, CylinderFocus before) {}

    /**
     * Starts a dialogue.
     *
     * @param prompt where to ask
     * @param words in which language
     * @param start what is answered already
     * @param kit defaults
     * @param now the default of day and time of the readings
     * @param keep told of the answers so far after each one
     */
    public Dialogue(
            Prompt prompt,
            Wording words,
            FieldValue.Fields start,
            Optional<Kit> kit,
            LocalDateTime now,
            Consumer<FieldValue.Fields> keep) {
        this.prompt = prompt;
        this.words = words;
        this.kit = kit;
        this.now = now;
        this.keep = keep;
        this.focus = CylinderFocus.of(kit.map(each -> each.applied(start)).orElse(start));
    }

    /**
     * Asks first which cylinder the hose is on now.
     *
     * @param before the visit of which these are the next readings
     * @return this dialogue
     */
    Dialogue after(FieldValue.Fields before) {
        earlier = Optional.of(CylinderFocus.of(before));
        return this;
    }

    /**
     * Asks until the answer lacks nothing more that the person has.
     *
     * @return a visit file, whole
     * @throws BrokenOffException if the person breaks off; what was answered was kept
     * @throws IllegalArgumentException if what stands in the file already cannot be used
     */
    public FieldValue.Fields run() {
        Draft.check(focus.visit());
        prompt.say(words.message("dialogue.keys"));
        if (earlier.flatMap(CylinderFocus::name).isPresent()) {
            ask(Questions.connectedNow());
        }
        askAll();
        other();
        FieldValue.Fields whole = Draft.finished(focus.file());
        keep.accept(whole);
        return whole;
    }

    private void askAll() {
        for (Optional<Question> next = next(); next.isPresent(); next = next()) {
            ask(next.get());
        }
    }

    /** Where the connected cylinder is there for the other direction, the one that is needed is asked about too. */
    private void other() {
        Optional<String> use = Draft.otherUse(focus.visit());
        if (use.isEmpty()) {
            return;
        }
        FieldValue.Fields on = focus.visit();
        prompt.say(
                words.message("dialogue.otherCylinder", Figure.of("use", words.message("dialogue.use." + use.get()))));
        focus = focus.aside(focus.beside(use.get()));
        asked.clear();
        declined.clear();
        aside = true;
        askAll();
        if (focus.cylinder().isEmpty()) {
            // there is none
            focus = CylinderFocus.of(on);
        }
    }

    private Optional<Question> next() {
        Optional<Question> needed = Questions.all().stream()
                .filter(each -> each.kind() == Question.Kind.NEEDED)
                .filter(this::arises)
                .findFirst();
        if (needed.isPresent()) {
            return needed;
        }
        Set<String> lacking = Draft.lacking(focus.visit());
        return Questions.all().stream()
                .filter(each -> each.kind() != Question.Kind.NEEDED && lacking.contains(each.path()))
                .filter(this::arises)
                .findFirst();
    }

    private boolean arises(Question question) {
        return question.asked().test(focus.visit())
                && !(aside && question.path().startsWith("cylinder.hoses"))
                && !declined.contains(question.path())
                && !FieldTree.has(focus.visit(), question.path());
    }

    private void ask(Question question) {
        Optional<String> standing = standing(question);
        while (true) {
            String typed = prompt.ask(question.line(standing, words));
            String answer = typed.isEmpty() ? standing.orElse("") : typed;
            if (answer.equals(EXPLAIN)) {
                explain(question);
            } else if (answer.equals(BACK)) {
                if (goneBack()) {
                    return;
                }
                hint("dialogue.first");
            } else if (answer.equals(NOT_AVAILABLE) && question.kind() == Question.Kind.NEEDED) {
                hint("dialogue.needed");
            } else if (answer.equals(NOT_AVAILABLE)) {
                asked.push(new Asked(question, focus));
                declined.add(question.path());
                return;
            } else if (answer.isEmpty()) {
                hint("dialogue.empty");
            } else if (taken(question, answer)) {
                return;
            }
        }
    }

    private Optional<String> standing(Question question) {
        if (question.path().equals("date")) {
            return Optional.of(now.toLocalDate().toString());
        }
        if (question.path().equals("time")) {
            return Optional.of(now.toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString());
        }
        if (question.path().equals(Questions.CYLINDER)) {
            List<String> own = own();
            return own.size() == 1 ? Optional.of(own.get(0)) : Optional.empty();
        }
        if (question.path().equals(Questions.CONNECTED)) {
            return focus.name();
        }
        return kit.flatMap(each -> each.standing(question.path())).or(question::usual);
    }

    /** Cylinders of the kit that are not part of the visit yet. */
    private List<String> own() {
        return kit.map(Kit::cylinders).orElse(List.of()).stream()
                .filter(name -> !focus.isBeside(name))
                .toList();
    }

    private void explain(Question question) {
        hint("dialogue.why", Figure.of("question", question.text(words)), Figure.of("reason", question.reason(words)));
        if (question.choices().isEmpty()) {
            hint("dialogue.form", Figure.of("form", question.form()));
        } else {
            hint("dialogue.oneOf", Figure.of("words", String.join(", ", question.choices(words))));
        }
        if (question.path().equals(Questions.CYLINDER) && !own().isEmpty()) {
            hint("dialogue.kit", Figure.of("names", String.join("; ", own())));
        }
        if (question.kind() != Question.Kind.NEEDED) {
            hint("dialogue.without");
        }
    }

    private void hint(String key, Figure... figures) {
        prompt.say("  " + words.message(key, figures));
    }

    private boolean goneBack() {
        if (asked.isEmpty()) {
            return false;
        }
        Asked last = asked.pop();
        declined.remove(last.question().path());
        focus = last.before();
        keep.accept(focus.file());
        return true;
    }

    private boolean taken(Question question, String answer) {
        CylinderFocus with;
        try {
            with = answered(question, answer);
            Draft.check(with.visit());
        } catch (IllegalArgumentException e) {
            prompt.say("  " + Shown.line(String.valueOf(e.getMessage())));
            return false;
        }
        asked.push(new Asked(question, focus));
        focus = with;
        keep.accept(focus.file());
        return true;
    }

    private CylinderFocus answered(Question question, String answer) {
        FieldValue.Fields answers = focus.visit();
        if (question.path().equals(Questions.CONNECTED)) {
            CylinderFocus now = focus.swapped(
                    answer,
                    earlier.filter(each -> each.name().equals(focus.name())).flatMap(CylinderFocus::cylinder));
            return now.with(NextVisit.readAnew(now.visit()));
        }
        if (!question.path().equals(Questions.CYLINDER)) {
            return focus.with(question.answered(answers, answer, words));
        }
        if (answer.equalsIgnoreCase("none")) {
            return focus.with(FieldTree.put(answers, "cylinders", new FieldValue.Items(List.of())));
        }
        if (focus.isBeside(answer)) {
            throw new IllegalArgumentException(words.message("dialogue.sameCylinder", Figure.of("answer", answer)));
        }
        Optional<FieldValue> own = kit.flatMap(each -> each.cylinder(answer));
        return focus.with(
                own.isPresent()
                        ? FieldTree.put(answers, "cylinder", own.get())
                        : question.answered(answers, answer, words));
    }
}
