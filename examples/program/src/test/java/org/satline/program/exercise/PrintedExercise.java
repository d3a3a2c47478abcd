package org.satline.program.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/**
 * An exercise as a student finds it: read back from the Markdown of sheet and key, nothing else.
 *
 * @param title of the exercise, difficulty included
 * @param situation the scene
 * @param givens names and texts
 * @param tables rows of numbers of each table
 * @param body the whole question
 * @param answers what the key prints for each letter
 */
record PrintedExercise(
        String title,
        String situation,
        Map<String, String> givens,
        List<List<double[]>> tables,
        String body,
        List<String> answers) {
    private static final Pattern ANSWER = Pattern.compile("(?m)^\\*\\*[a-z]\\)\\*\\* .* \\*\\*(.*)\\*\\*$");

    static List<PrintedExercise> all(ExerciseSheet sheet) {
        List<String> questions =
                chapters(sheet.questions(PageForm.MARKDOWN).replaceAll("(?s)## Where the tables.*", ""));
        List<String> answers = chapters(sheet.key(PageForm.MARKDOWN));
        assertThat(answers).hasSameSizeAs(questions);
        List<PrintedExercise> found = new ArrayList<>();
        for (int i = 0; i < questions.size() - 1; i++) { // the last chapter holds the cautions
            found.add(of(questions.get(i), answers.get(i)));
        }
        return found;
    }

    private static List<String> chapters(String page) {
        return Stream.of(page.split("(?m)^## ", -1)).skip(1).toList();
    }

    private static PrintedExercise of(String question, String answer) {
        String plain = question.replaceAll("\\\\(?=[\\\\`*<\\[\\]|_])", "");
        List<String> lines = plain.lines().toList();
        Map<String, String> givens = new LinkedHashMap<>();
        List<List<double[]>> tables = new ArrayList<>();
        boolean inGivens = false;
        for (String line : lines) {
            if (line.equals("| given |  |")) {
                inGivens = true;
            } else if (line.startsWith("| temperature, ")) {
                inGivens = false;
                tables.add(new ArrayList<>());
            } else if (line.startsWith("| ") && !line.startsWith("| ---")) {
                String[] cells = line.substring(2, line.length() - 2).split(" \\| ", -1);
                if (inGivens) {
                    assertThat(givens.put(cells[0], cells[1]))
                            .as("stated twice: " + cells[0])
                            .isNull();
                } else {
                    tables.get(tables.size() - 1)
                            .add(Stream.of(cells)
                                    .mapToDouble(Double::parseDouble)
                                    .toArray());
                }
            }
        }
        List<String> answers = new ArrayList<>();
        for (Matcher each = ANSWER.matcher(answer); each.find(); ) {
            answers.add(each.group(1).replaceAll("\\\\(?=[\\\\`*<\\[\\]|_])", ""));
        }
        return new PrintedExercise(lines.get(0), lines.get(2), givens, tables, plain, answers);
    }

    String designation() {
        return text("refrigerant").split(" ", -1)[0];
    }

    String text(String name) {
        return Optional.ofNullable(givens.get(name))
                .orElseThrow(() -> new AssertionError(title + " does not state " + name + ": " + givens));
    }

    boolean states(String name) {
        return givens.containsKey(name);
    }

    /** The atmosphere that the question states; sea level where it states none. */
    Atmosphere atmosphere() {
        if (states("altitude of the site")) {
            // ISO 2533:1975, Eq. (12) with its constants, by hand
            double metres = Length.parse(text("altitude of the site")).metres();
            double geopotential = 6356766 * metres / (6356766 + metres);
            return Atmosphere.measured(Pressure.ofPascals(
                    101325 * Math.pow(1 - 0.0065 * geopotential / 288.15, 9.80665 / (0.0065 * 287.05287))));
        }
        for (String name : List.of("local atmosphere", "barometer on site, not reduced to sea level")) {
            if (states(name)) {
                return Atmosphere.measured(Pressure.parse(text(name)));
            }
        }
        return Atmosphere.standard();
    }

    /** A pressure, absolute, whatever unit it is printed in. */
    Pressure pressure(String name) {
        return Pressure.parse(text(name), atmosphere());
    }

    Temperature temperature(String name) {
        return Temperature.parse(text(name));
    }

    TemperatureDifference difference(String name) {
        return TemperatureDifference.parse(text(name));
    }

    Mass mass(String name) {
        return Mass.parse(text(name));
    }

    /** The one given whose name begins so. */
    String beginning(String start) {
        return givens.entrySet().stream()
                .filter(each -> each.getKey().startsWith(start))
                .map(Map.Entry::getValue)
                .reduce((a, b) -> {
                    throw new AssertionError("two givens begin with " + start);
                })
                .orElseThrow(() -> new AssertionError(title + " does not state " + start + "..."));
    }

    /** The first group of a pattern in the question. */
    String rule(String pattern) {
        Matcher match = Pattern.compile(pattern).matcher(body);
        if (!match.find()) {
            throw new AssertionError(title + " does not say " + pattern);
        }
        return match.group(1);
    }
}
