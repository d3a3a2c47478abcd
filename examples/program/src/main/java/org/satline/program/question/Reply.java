package org.satline.program.question;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.json.JsonFields;
import org.satline.program.file.Shown;
import org.satline.quantity.Parts;
import org.satline.quantity.Quantity;
import org.satline.visit.file.FieldValue;
import org.satline.wording.StepText;
import org.satline.wording.Wording;

/**
 * The answer to one question. Immutable, thread-safe.
 *
 * @param given whether the answer is what was asked for; false where it may not be given
 * @param lines what it says, the number first
 * @param numbers the numbers of the answer by name
 * @param words other facts of the answer by name
 * @param steps how it was found
 * @param notes what to know about it
 */
public record Reply(
        boolean given,
        List<String> lines,
        Map<String, Quantity<?>> numbers,
        Map<String, String> words,
        List<Step> steps,
        List<String> notes) {
    /** {@inheritDoc} */
    public Reply {
        Parts.required("numbers words", numbers, words);
        lines = List.copyOf(lines);
        numbers = new LinkedHashMap<>(numbers);
        words = new LinkedHashMap<>(words);
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
    }

    /**
     * The answer as text.
     *
     * @param wording words and units
     * @return lines, each ended
     */
    public String text(Wording wording) {
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(Shown.line(line)).append('\n'));
        for (Step step : steps) {
            StepText words = wording.of(step);
            text.append("  ")
                    .append(Shown.line(words.name() + ": " + words.formula() + " = " + words.result()))
                    .append('\n');
            if (!words.given().isEmpty()) {
                text.append("    ")
                        .append(Shown.line(
                                wording.message("reply.with", Figure.of("given", String.join(", ", words.given())))))
                        .append('\n');
            }
            text.append("    ")
                    .append(Shown.line(wording.message("reply.source", Figure.of("source", words.source()))))
                    .append('\n');
        }
        notes.forEach(note -> text.append(Shown.line(wording.message("reply.note", Figure.of("note", note))))
                .append('\n'));
        return text.toString();
    }

    /**
     * The answer for other programs.
     *
     * @param wording words and units of the texts in it
     * @return one JSON object; numbers in SI with their unit
     */
    public String json(Wording wording) {
        Map<String, FieldValue> fields = new LinkedHashMap<>();
        fields.put("given", new FieldValue.Flag(given));
        numbers.forEach((name, quantity) -> {
            Map<String, FieldValue> number = new LinkedHashMap<>();
            number.put("value", new FieldValue.Plain(quantity.si()));
            number.put("unit", new FieldValue.Text(quantity.siUnit()));
            fields.put(name, new FieldValue.Fields(number));
        });
        words.forEach((name, word) -> fields.put(name, new FieldValue.Text(word)));
        fields.put(
                "steps",
                new FieldValue.Items(
                        steps.stream().map(each -> step(each, wording)).toList()));
        fields.put("notes", texts(notes));
        return JsonFields.write(new FieldValue.Fields(fields)) + "\n";
    }

    private static FieldValue step(Step step, Wording wording) {
        StepText words = wording.of(step);
        Map<String, FieldValue> fields = new LinkedHashMap<>();
        fields.put("key", new FieldValue.Text(step.key()));
        fields.put("formula", new FieldValue.Text(words.formula()));
        fields.put("given", texts(words.given()));
        fields.put("result", new FieldValue.Text(words.result()));
        fields.put("source", new FieldValue.Text(words.source()));
        return new FieldValue.Fields(fields);
    }

    private static FieldValue texts(List<String> lines) {
        List<FieldValue> items = new ArrayList<>();
        lines.forEach(line -> items.add(new FieldValue.Text(line)));
        return new FieldValue.Items(items);
    }
}
