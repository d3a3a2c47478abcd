package org.satline.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.CoreClasses;
import org.satline.charge.Gate;
import org.satline.charge.belief.Fault;
import org.satline.charge.margin.ChargeLevel;
import org.satline.duty.TransferRules;
import org.satline.explanation.Coded;
import org.satline.explanation.FindingCode;
import org.satline.measurement.Place;
import org.satline.quantity.UnitSystem;
import org.satline.resource.CsvResource;
import org.satline.safety.Cautions;
import org.satline.transfer.hookup.Act;

/** Every code has a text, every text is used, and every figure that a text asks for is made somewhere. */
class TextsTest {
    private static final Path FOLDER = Path.of("src/main/resources/org/satline/wording");

    private static final Texts ENGLISH = Texts.in(Language.ENGLISH);
    private static final JavaClasses CORE = CoreClasses.all();

    /** Literals of main code and of the program: figures, keys of steps and messages are written there. */
    private static final Set<String> WRITTEN = Stream.concat(
                    SourceText.literals("").stream(),
                    SourceText.literalsUnder(Path.of("../examples/program/src/main/java")).stream())
            .map(SourceText.Literal::text)
            .collect(Collectors.toSet());

    private static Stream<Enum<?>> constantsOf(Class<?> kind) {
        return CORE.stream()
                .filter(each -> each.isAssignableTo(kind) && each.isEnum())
                .filter(each -> !each.getFullName().contains("Test$"))
                .map(JavaClass::reflect)
                .flatMap(type -> Stream.of(type.getEnumConstants()))
                .map(constant -> (Enum<?>) constant);
    }

    private static Map<String, String> data(Class<?> neighbour, String file, String key, String value, String... more) {
        List<String> columns = new ArrayList<>(List.of(more));
        columns.add(0, key);
        columns.add(value);
        Map<String, String> found = new LinkedHashMap<>();
        CsvResource.read(neighbour, file, columns.stream().distinct().toArray(String[]::new))
                .rows()
                .forEach(row -> found.put(row.text(key), row.text(value)));
        return found;
    }

    private static Set<String> cautions() {
        return data(
                        Cautions.class,
                        "cautions.csv",
                        "id",
                        "basis",
                        "safety_groups",
                        "tasks",
                        "components",
                        "elements",
                        "refrigerants",
                        "not_refrigerants",
                        "from_kPa_gauge",
                        "to_kPa_gauge")
                .keySet();
    }

    /** Condition and state, such as {@code airflow.notMet}. */
    private static Set<String> gates() {
        Set<String> words = new TreeSet<>();
        for (Gate.Kind kind : Gate.Kind.values()) {
            for (Gate.State state : Gate.State.values()) {
                words.add(kind.word() + "." + state.word());
            }
        }
        return words;
    }

    private static Set<String> keysUnder(String prefix) {
        return ENGLISH.keys().stream()
                .filter(key -> key.startsWith(prefix))
                .map(key -> key.substring(prefix.length()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyCodeOfAFindingHasAText() {
        assertThat(constantsOf(FindingCode.class))
                .isNotEmpty()
                .allSatisfy(code -> assertThat(keysUnder("finding."))
                        .as(code.getDeclaringClass().getName())
                        .anyMatch(key -> key.equals(word(code)) || key.startsWith(word(code) + ".")));
    }

    @Test
    void everyCautionHasAText() {
        assertThat(keysUnder("caution.")).isEqualTo(new TreeSet<>(cautions()));
    }

    /** An enum with one name in the texts has all. */
    @Test
    void everyConstantOfANamedEnumHasAName() {
        Set<Class<?>> named = constantsOf(Coded.class)
                .filter(constant -> ENGLISH.find(nameKey(constant)).isPresent())
                .map(Enum::getDeclaringClass)
                .collect(Collectors.toSet());
        assertThat(constantsOf(Coded.class).filter(each -> named.contains(each.getDeclaringClass())))
                .allSatisfy(constant -> assertThat(ENGLISH.find(nameKey(constant)))
                        .as(nameKey(constant))
                        .isPresent());
    }

    @Test
    void everyStateOfAConditionAndEveryFaultHaveATextThatSaysWhatToDo() {
        assertThat(keysUnder("gate.")).containsAll(gates());
        for (Fault fault : Fault.values()) {
            assertThat(ENGLISH.find("charge.faultAdvice." + fault.word())).isPresent();
            assertThat(ENGLISH.find("word." + fault.word())).isPresent();
        }
        for (ChargeLevel level : ChargeLevel.values()) {
            assertThat(ENGLISH.find("charge.levelAdvice." + level.word())).isPresent();
        }
        for (Place place : Place.values()) {
            assertThat(ENGLISH.find("field." + place.path())).isPresent();
        }
    }

    @Test
    void everyTextIsUsed() {
        Set<String> used = new TreeSet<>();
        constantsOf(Coded.class).map(TextsTest::nameKey).forEach(used::add);
        cautions().forEach(id -> used.add("caution." + id));
        Set<String> codes = constantsOf(FindingCode.class).map(TextsTest::word).collect(Collectors.toSet());
        assertThat(ENGLISH.keys()).allSatisfy(key -> {
            String[] parts = key.split("\\.", 2);
            boolean isUsed = used.contains(key)
                    || WRITTEN.contains(key)
                    || switch (parts[0]) {
                        case "finding" -> codes.contains(parts[1].split("\\.", 2)[0]);
                        case "step" -> WRITTEN.contains(parts[1]);
                        case "gate" -> gates().stream().anyMatch(gate -> (parts[1] + ".").startsWith(gate + "."));
                        case "charge" ->
                            used.contains(key.replace("faultAdvice", "fault").replace("levelAdvice", "chargeLevel"));
                        case "rule" -> rules().contains(parts[1]);
                        case "act" ->
                            Stream.of(Act.Kind.values())
                                    .map(Act.Kind::code)
                                    .anyMatch(act -> List.of(act, act + "Stem", act + ".amount")
                                            .contains(parts[1]));
                        case "brief" -> isBriefUsed(parts[1], codes);
                        // paths of the visit file, places of a hook-up and words of the data are written in many ways
                        case "field", "word", "place" -> true;
                        // the rest of a key may be composed after a prefix that is written
                        default -> WRITTEN.stream().anyMatch(each -> each.endsWith(".") && key.startsWith(each));
                    };
            assertThat(isUsed).as(key + " is asked for somewhere").isTrue();
        });
    }

    /** What stands in the lines on top is a short form of a finding, a caution or a field. */
    private static boolean isBriefUsed(String name, Set<String> codes) {
        return codes.contains(name)
                || name.startsWith("field.")
                || ENGLISH.find(name).isPresent()
                || WRITTEN.contains("brief." + name);
    }

    @Test
    void everyPlaceholderIsAFigureThatIsMade() {
        for (String key : ENGLISH.keys()) {
            Set<String> asked = new TreeSet<>(ENGLISH.find(key).orElseThrow().figures());
            asked.remove("subject");
            assertThat(WRITTEN).as(key).containsAll(asked);
        }
    }

    @Test
    void everyLanguageHasTheKeysOfEnglishWithTheSamePlacesForFigures() throws IOException {
        assertThat(languages()).contains("en", "es");
        for (String tag : languages()) {
            Texts texts = Texts.in(new Language(tag));
            assertThat(ENGLISH.keys()).containsAll(texts.keys());
            assertThat(Wording.of(new Language(tag), UnitSystem.SI).missingKeys())
                    .as(tag)
                    .isEmpty();
            for (String key : texts.keys()) {
                assertThat(places(texts, key)).as(tag + " " + key).isEqualTo(places(ENGLISH, key));
            }
        }
    }

    /**
     * Figures of a text with the manner in which each is printed, since a limit rounded to its other side is another limit; in any order.
     */
    private static List<String> places(Texts texts, String key) {
        return texts.find(key).orElseThrow().parts().stream()
                .filter(TextPattern.Part.Place.class::isInstance)
                .map(Object::toString)
                .sorted()
                .toList();
    }

    @Test
    void aShortTextTakesTwoRowsOrThoseOfEnglish() throws IOException {
        for (String tag : languages()) {
            Texts texts = Texts.in(new Language(tag));
            for (String key : keysUnder("brief.")) {
                int most = key.startsWith("caution.") ? 1 : 2;
                int allowed = Math.max(most, rows(ENGLISH, "brief." + key));
                assertThat(rows(texts, "brief." + key)).as(tag + " " + key).isLessThanOrEqualTo(allowed);
            }
        }
    }

    /** Rows with eighteen columns for each figure, such as {@code 14.30 lb (6.49 kg)}. */
    private static int rows(Texts texts, String key) {
        String text = texts.find(key).orElseThrow().parts().stream()
                .map(part -> part instanceof TextPattern.Part.Literal literal ? literal.text() : "x".repeat(18))
                .collect(Collectors.joining());
        return RowBreaker.rows(text, VisitLines.TEXT_COLUMNS, Integer.MAX_VALUE).size();
    }

    @Test
    void everyFileIsRead() throws IOException {
        for (String tag : languages()) {
            try (Stream<Path> files = Files.list(FOLDER.resolve(tag))) {
                assertThat(files.map(each -> each.getFileName().toString()))
                        .allSatisfy(name -> assertThat(Texts.FILES).contains(name.replace(".properties", "")));
            }
        }
    }

    @Test
    void everyRuleOnTransfersHasAText() {
        assertThat(keysUnder("rule.")).isEqualTo(rules());
    }

    private static Set<String> rules() {
        return new TreeSet<>(data(TransferRules.class, "transfer-rules.csv", "name", "citation", "confirmation")
                .keySet());
    }

    private static List<String> languages() throws IOException {
        try (Stream<Path> folders = Files.list(FOLDER)) {
            return folders.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    private static String word(Enum<?> constant) {
        return ((Coded) constant).word();
    }

    private static String nameKey(Enum<?> constant) {
        return Wording.nameKey((Coded) constant);
    }
}
