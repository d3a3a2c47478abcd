package org.satline.program.exercise;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.satline.program.page.Escape;
import org.satline.program.page.Printed;

/**
 * A sheet as GIFT text: the open format of questions that learning platforms import. A number is asked for with its range to accept, words
 * to choose from as a choice, words of one's own as a text that the teacher marks with the answer of the key beside it.
 */
final class GiftText {
    private static final Pattern CONTROL = Pattern.compile("[\\\\~=#{}:]");

    private GiftText() {}

    static String of(ExerciseSheet sheet) {
        StringBuilder text = new StringBuilder();
        text.append("// ").append(SheetPage.title(sheet)).append('\n');
        text.append("// ").append(sheet.say(SheetPage.PRACTICE)).append("\n\n");
        text.append("$CATEGORY: " + sheet.say("exercise.category") + "/")
                .append(sheet.name())
                .append("\n\n");
        int number = 1;
        for (Exercise exercise : sheet.exercises()) {
            char letter = 'a';
            for (Part part : exercise.parts()) {
                String name = number + "" + letter++ + " " + part.name();
                text.append("::").append(escaped(name)).append("::[html]");
                text.append(escaped(scene(exercise) + "<p>" + Escape.html(part.ask()) + "</p>"))
                        .append(answer(part))
                        .append("\n\n");
            }
            number++;
        }
        return text.toString();
    }

    private static String scene(Exercise exercise) {
        StringBuilder html = new StringBuilder("<p>")
                .append(Escape.html(exercise.situation()))
                .append("</p><ul>");
        exercise.givens()
                .forEach(given -> html.append("<li>")
                        .append(Escape.html(given.name() + ": " + given.text()))
                        .append("</li>"));
        exercise.rules()
                .forEach(rule -> html.append("<li>").append(Escape.html(rule)).append("</li>"));
        html.append("</ul>");
        exercise.tables().forEach(table -> {
            html.append("<p>").append(Escape.html(table.title())).append("</p><table>");
            row(html, "th", table.head());
            table.rows().forEach(row -> row(html, "td", row));
            html.append("</table>");
        });
        return html.toString();
    }

    private static void row(StringBuilder html, String tag, List<String> cells) {
        html.append(cells.stream()
                .map(cell -> "<" + tag + ">" + Escape.html(cell) + "</" + tag + ">")
                .collect(Collectors.joining("", "<tr>", "</tr>")));
    }

    private static String answer(Part part) {
        if (part.answer() instanceof Answer.Figure figure) {
            String form = "{#%." + figure.decimals() + "f..%." + figure.decimals() + "f}";
            return Printed.figure(form, figure.lowest(), figure.highest());
        }
        Answer.Words words = (Answer.Words) part.answer();
        if (words.others().isEmpty()) {
            return "{####" + escaped(words.text()) + "}";
        }
        return words.others().stream()
                .map(other -> " ~" + escaped(other))
                .collect(Collectors.joining("", "{=" + escaped(words.text()), "}"));
    }

    private static String escaped(String text) {
        return Objects.requireNonNull(CONTROL.matcher(text).replaceAll("\\\\$0"));
    }
}
