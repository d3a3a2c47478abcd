package org.satline.wording;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.satline.charge.Gate;
import org.satline.explanation.Coded;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Quantity;
import org.satline.quantity.UnitSystem;
import org.satline.safety.Caution;
import org.satline.safety.CautionId;
import org.satline.wording.TextPattern.Part;

/**
 * Puts typed results into words. Immutable, thread-safe; making one for a language other than English reads its files, so keep it.
 *
 * <p>Keys: {@code finding.<code>.<severity>} or {@code finding.<code>}, {@code caution.<id>}, {@code step.<key>},
 * {@code <room>.<enumName>.<word>}, {@code field.<path>}, {@code word.<word>}. A key that a language lacks is taken from English; one that
 * English lacks too becomes the words of the key.
 */
public final class Wording {
    private static final String ABSENT = "figure.absent";
    /** One of several cylinders in the path of a field. */
    private static final String SEVERAL = "cylinders[";

    private static final String ROOT = "org.satline.";

    private final Language language;
    private final Texts texts;
    private final Texts english;
    private final NumberPrinter printer;

    private Wording(Language language, Texts texts, Texts english, NumberPrinter printer) {
        this.language = language;
        this.texts = texts;
        this.english = english;
        this.printer = printer;
    }

    /**
     * Makes the words for a reader.
     *
     * @param language the language; what it lacks is said in English
     * @param first which unit is printed first; the other one follows in brackets
     * @return the wording
     * @throws org.satline.resource.ResourceFormatException if a file of texts is broken
     */
    public static Wording of(Language language, UnitSystem first) {
        Parts.required("language first", language, first);
        return new Wording(language, Texts.in(language), Texts.in(Language.ENGLISH), NumberPrinter.of(first));
    }

    /**
     * The same words with texts of a caller's own beside those of the library, under keys of their own.
     *
     * @param neighbour a class in the package under which the files lie, as {@code <language>/<file>.properties} of the form that
     *     {@link org.satline.resource.TextResource} describes; in a named module the package is open to this one
     * @param files names without ending
     * @return words of both
     * @throws org.satline.resource.ResourceFormatException if a file of texts is broken, or has a key that is there already
     */
    public Wording with(Class<?> neighbour, List<String> files) {
        Parts.required("neighbour files", neighbour, files);
        return new Wording(
                language,
                texts.with(neighbour, language, files),
                english.with(neighbour, Language.ENGLISH, files),
                printer);
    }

    /**
     * The language that it was made for.
     *
     * @return the language
     */
    public Language language() {
        return language;
    }

    /**
     * The printer of numbers that this wording uses.
     *
     * @return the printer
     */
    public NumberPrinter numbers() {
        return printer;
    }

    /**
     * A finding in words, without its basis.
     *
     * @param finding the finding
     * @return one line, never empty
     */
    public String of(Finding finding) {
        Optional<TextPattern> pattern = pattern(finding);
        return pattern.map(found -> render(found, finding.figures(), Optional.of(finding.subject()), printer))
                .orElseGet(() -> withoutPattern(finding));
    }

    private Optional<TextPattern> pattern(Finding finding) {
        String word = finding.code().word();
        if (finding.code() instanceof CautionId) {
            return find(cautionKey(word));
        }
        String key = "finding." + word;
        return find(key + "." + finding.severity().word()).or(() -> find(key));
    }

    private String withoutPattern(Finding finding) {
        List<String> known = new ArrayList<>();
        known.add(subject(finding.subject()));
        finding.figures().forEach(figure -> known.add(KeyWords.of(figure.name()) + " " + print(figure, printer)));
        return KeyWords.of(finding.code().word()) + ": " + String.join(", ", known);
    }

    /**
     * Names of the figures that the text of a finding asks for and the finding lacks: an error of the program, for tests.
     *
     * @param finding the finding
     * @return names; empty where the text can be printed in full
     */
    public Set<String> lacking(Finding finding) {
        Set<String> names =
                new TreeSet<>(pattern(finding).map(TextPattern::figures).orElse(Set.of()));
        names.remove("subject");
        finding.figures().forEach(figure -> names.remove(figure.name()));
        return names;
    }

    /**
     * A condition of judging a charge in words: what was checked and how it stands.
     *
     * @param gate the condition
     * @return one line, never empty
     */
    public String of(Gate gate) {
        Parts.required("gate", gate);
        String key = "gate." + gate.kind().word() + "." + gate.state().word();
        String special = gate.figures().isEmpty()
                ? key
                : key + "." + gate.figures().get(0).name();
        return message(has(special) ? special : key, gate.figures().toArray(new Figure[0]));
    }

    /**
     * A caution in words, without its basis.
     *
     * @param caution the caution
     * @return one line, never empty
     */
    public String of(Caution caution) {
        return caution(caution.id());
    }

    /**
     * The text of a caution.
     *
     * @param id its id in the data of {@code safety}
     * @return one line, never empty
     */
    public String caution(String id) {
        Parts.required("id", id);
        return message(cautionKey(id));
    }

    private static String cautionKey(String id) {
        return "caution." + id;
    }

    /**
     * A step of a derivation in words.
     *
     * @param step the step
     * @return name, formula, numbers, result and source
     */
    public StepText of(Step step) {
        NumberPrinter fine = printer.finer();
        List<String> given = new ArrayList<>();
        for (Figure figure : step.given()) {
            String value = print(figure, fine);
            given.add(figure.name().isEmpty() ? value : figure.name() + " = " + value);
        }
        return new StepText(
                message("step." + step.key()), step.formula(), given, print(step.result(), fine), step.source());
    }

    /**
     * The name of a constant, such as a level or a fault.
     *
     * @param coded constant of an enum, or anything else with a word
     * @return its name
     */
    public String name(Coded coded) {
        return name(coded, List.of());
    }

    /**
     * The name of a constant with its figures, such as a mistake.
     *
     * @param coded as {@link #name(Coded)} takes it
     * @param figures what the text may ask for by name
     * @return one line, never empty
     */
    public String name(Coded coded, List<Figure> figures) {
        Parts.required("coded figures", coded, figures);
        return message(nameKey(coded), figures.toArray(new Figure[0]));
    }

    /** {@code org.satline.cylinder.FillMethod.RATIO} has {@code cylinder.fillMethod.ratio}. */
    static String nameKey(Coded coded) {
        if (!(coded instanceof Enum<?> constant)) {
            return "word." + coded.word();
        }
        Class<?> type = constant.getDeclaringClass();
        String full = type.getName();
        String room = full.startsWith(ROOT) ? full.substring(ROOT.length()) : full;
        int end = room.indexOf('.');
        String simple = type.getSimpleName();
        return (end < 0 ? room : room.substring(0, end)) + "."
                + simple.substring(0, 1).toLowerCase(Locale.ROOT) + simple.substring(1) + "." + coded.word();
    }

    /**
     * The text under a key.
     *
     * @param key the key
     * @param figures what the text may ask for by name
     * @return one line, never empty
     */
    public String message(String key, Figure... figures) {
        Parts.required("key figures", key, figures);
        return find(key)
                .map(found -> render(found, List.of(figures), Optional.empty(), printer))
                .orElseGet(() -> KeyWords.ofLast(key));
    }

    /** Whether there is a text under a key, in this language or in English. */
    boolean has(String key) {
        return find(key).isPresent();
    }

    /**
     * The name of a field of a visit file in short, or in full, or its path where it has neither; one of several cylinders has the names of
     * the only one.
     */
    String field(String path) {
        String shared = withoutIndex(path);
        return find("brief.field." + shared).isPresent()
                ? message("brief.field." + shared)
                : subject(Subject.reading(path));
    }

    private static String withoutIndex(String path) {
        int end = path.indexOf(']');
        return path.startsWith(SEVERAL) && end > SEVERAL.length() ? "cylinder" + path.substring(end + 1) : path;
    }

    /**
     * A figure by itself.
     *
     * @param figure the figure
     * @return its value, with both units where it has a dimension
     */
    public String of(Figure figure) {
        Parts.required("figure", figure);
        return print(figure, printer);
    }

    /**
     * Keys of English texts that this language lacks, for tests and translators.
     *
     * @return keys in alphabetical order
     */
    public Set<String> missingKeys() {
        Set<String> missing = english.keys();
        missing.removeAll(texts.keys());
        return missing;
    }

    private Optional<TextPattern> find(String key) {
        return texts.find(key).or(() -> english.find(key));
    }

    private String render(TextPattern pattern, List<Figure> figures, Optional<Subject> subject, NumberPrinter numbers) {
        StringBuilder line = new StringBuilder();
        for (Part part : pattern.parts()) {
            if (part instanceof Part.Literal literal) {
                line.append(literal.text());
            } else if (part instanceof Part.Place place) {
                line.append(fill(place, figures, subject, numbers));
            }
        }
        return line.toString();
    }

    private String fill(Part.Place place, List<Figure> figures, Optional<Subject> subject, NumberPrinter numbers) {
        Optional<Figure> figure = named(place.figure(), figures);
        if (figure.isEmpty() && place.figure().equals("subject") && subject.isPresent()) {
            return subject(subject.get());
        }
        return figure.map(found -> print(found, place, figures, numbers)).orElseGet(this::absent);
    }

    private String absent() {
        return english.find(ABSENT).isPresent() ? message(ABSENT) : "...";
    }

    private static Optional<Figure> named(String name, List<Figure> figures) {
        return figures.stream().filter(each -> each.name().equals(name)).findFirst();
    }

    /**
     * What something is about, by its name; a field of a visit file by what it stands for.
     *
     * @param subject the subject
     * @return its name, never empty
     */
    public String of(Subject subject) {
        Parts.required("subject", subject);
        return subject(subject);
    }

    private String subject(Subject subject) {
        if (subject.kind() == Subject.Kind.READING) {
            String path = withoutIndex(subject.name());
            return find("field." + path)
                    .or(() -> find("brief.field." + path))
                    .map(found -> render(found, List.of(), Optional.empty(), printer))
                    .orElse(subject.name());
        }
        return subject.name().isEmpty() ? name(subject.kind()) : subject.name();
    }

    private static String print(Figure figure, NumberPrinter numbers) {
        if (figure instanceof Figure.Amount amount) {
            return numbers.print(amount.value());
        } else if (figure instanceof Figure.Plain plain) {
            return numbers.print(plain.value(), plain.unit());
        }
        return ((Figure.Word) figure).value();
    }

    /** What the manner cannot print is printed plainly: a limit in the wrong form is better than none. */
    private String print(Figure figure, Part.Place place, List<Figure> figures, NumberPrinter numbers) {
        if (figure instanceof Figure.Word word) {
            return place.manner() == TextPattern.Manner.WORD ? message("word." + word.value()) : word.value();
        } else if (figure instanceof Figure.Plain plain) {
            return print(plain, place.manner(), numbers);
        }
        Quantity<?> quantity = ((Figure.Amount) figure).value();
        return switch (place.manner()) {
            case DOWN -> numbers.down(quantity);
            case UP -> numbers.up(quantity);
            case POUNDS_AND_OUNCES ->
                quantity instanceof Mass mass ? numbers.poundsAndOunces(mass) : numbers.print(quantity);
            case WITHIN -> within(quantity, named(place.doubt(), figures), numbers);
            default -> numbers.print(quantity);
        };
    }

    private static String print(Figure.Plain plain, TextPattern.Manner manner, NumberPrinter numbers) {
        return switch (manner) {
            case DOWN -> numbers.print(plain.value(), plain.unit(), RoundingMode.FLOOR);
            case UP -> numbers.print(plain.value(), plain.unit(), RoundingMode.CEILING);
            case PERCENT -> numbers.percent(plain.value());
            case DURATION -> duration(plain, numbers);
            default -> numbers.print(plain.value(), plain.unit());
        };
    }

    private static String duration(Figure.Plain plain, NumberPrinter numbers) {
        boolean seconds = plain.unit().equals("s") && plain.value() >= 0;
        return seconds ? numbers.duration(plain.value()) : numbers.print(plain.value(), plain.unit());
    }

    private static String within(Quantity<?> quantity, Optional<Figure> doubt, NumberPrinter numbers) {
        return doubt.isPresent() && doubt.get() instanceof Figure.Amount amount
                ? numbers.within(quantity, amount.value())
                : numbers.print(quantity);
    }
}
