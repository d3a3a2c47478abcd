package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.satline.explanation.Step;
import org.satline.safety.Caution;
import org.satline.wording.StepText;

/**
 * One exercise: all that the sheet prints and all that the key prints.
 *
 * @param topic what it is about
 * @param difficulty how hard it is
 * @param situation the scene, in a sentence or two
 * @param givens the figures
 * @param tables table rows to read from
 * @param rules conventions and rules to go by
 * @param parts what is asked
 * @param working the sum as a student would write it, in the units of the question
 * @param derivation the same as the library derives it
 * @param slips what usual mistakes lead to, for the teacher
 * @param cautions what to know before doing it on a machine
 */
record Exercise(
        Topic topic,
        Difficulty difficulty,
        String situation,
        List<Given<?>> givens,
        List<TableExtract> tables,
        List<String> rules,
        List<Part> parts,
        List<StepText> working,
        List<Step> derivation,
        List<String> slips,
        List<Caution> cautions) {
    Exercise {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(difficulty, "difficulty");
        Objects.requireNonNull(situation, "situation");
        givens = List.copyOf(givens);
        tables = List.copyOf(tables);
        rules = List.copyOf(rules);
        parts = List.copyOf(parts);
        working = List.copyOf(working);
        derivation = List.copyOf(derivation);
        slips = List.copyOf(slips);
        cautions = List.copyOf(cautions);
        if (parts.isEmpty() || working.isEmpty()) {
            throw new IllegalArgumentException("an exercise asks something and shows how it is found");
        }
    }

    /** All points that it gives. */
    int points() {
        return parts.stream().mapToInt(Part::points).sum();
    }

    /** Collects an exercise while it is drawn. For one thread. */
    static final class Draft {
        private final Readout readout;
        private final Topic topic;
        private final Difficulty difficulty;
        private String situation = "";
        private final List<Given<?>> givens = new ArrayList<>();
        private final List<TableExtract> tables = new ArrayList<>();
        private final List<String> rules = new ArrayList<>();
        private final List<Part> parts = new ArrayList<>();
        private final Map<String, List<Answer.Figure>> mistakes = new HashMap<>();
        private final List<StepText> working = new ArrayList<>();
        private final List<Step> derivation = new ArrayList<>();
        private final List<String> slips = new ArrayList<>();
        private final List<Caution> cautions = new ArrayList<>();

        Draft(Topic topic, Difficulty difficulty, Readout readout) {
            this.readout = readout;
            this.topic = topic;
            this.difficulty = difficulty;
        }

        Draft situation(String text) {
            situation = text;
            return this;
        }

        Draft given(Given<?>... each) {
            givens.addAll(List.of(each));
            return this;
        }

        Draft table(TableExtract extract) {
            tables.add(extract);
            return this;
        }

        Draft rule(String text) {
            rules.add(text);
            return this;
        }

        Draft part(String name, String ask, Answer answer) {
            parts.add(new Part(name, ask, answer, List.of()));
            return this;
        }

        /**
         * What a usual mistake leads to.
         *
         * @param part name of the part
         * @param wrong the number found
         * @param text the mistake, for the teacher
         */
        Draft mistake(String part, Answer.Figure wrong, String text) {
            mistakes.computeIfAbsent(part, each -> new ArrayList<>()).add(wrong);
            return slip(text);
        }

        /** Mistakes that the range to accept or the rounding hides are no choice. */
        private Part withMistakes(Part part) {
            List<Answer.Figure> told = new ArrayList<>();
            if (part.answer() instanceof Answer.Figure right) {
                for (Answer.Figure wrong : mistakes.getOrDefault(part.name(), List.of())) {
                    if (wrong.tellsFrom(right) && told.stream().allMatch(wrong::tellsFrom)) {
                        told.add(wrong);
                    }
                }
            }
            return new Part(part.name(), part.ask(), part.answer(), told);
        }

        Draft work(String name, String formula, String numbers, String result, String source) {
            working.add(new StepText(name, formula, List.of(numbers), result, source));
            return this;
        }

        /** A step of plain arithmetic. */
        Draft sum(String name, String formula, String numbers, String result) {
            return work(name, formula, numbers, result, readout.say("exercise.arithmetic"));
        }

        Draft derive(List<Step> steps) {
            derivation.addAll(steps);
            return this;
        }

        Draft slip(String text) {
            slips.add(text);
            return this;
        }

        Draft cautions(List<Caution> each) {
            cautions.addAll(each);
            return this;
        }

        Exercise done() {
            return new Exercise(
                    topic,
                    difficulty,
                    situation,
                    givens,
                    tables,
                    rules,
                    parts.stream().map(this::withMistakes).toList(),
                    working,
                    derivation,
                    slips.stream().distinct().toList(),
                    cautions);
        }
    }
}
