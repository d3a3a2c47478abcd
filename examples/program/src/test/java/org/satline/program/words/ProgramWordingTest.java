package org.satline.program.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.quantity.UnitSystem;
import org.satline.resource.TextResource;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Every text of the program is there in each language, with the same places for figures, and is asked for. */
public class ProgramWordingTest {
    /** For tests of what is printed. */
    public static final Wording ENGLISH = ProgramWording.of(Language.ENGLISH, UnitSystem.US);

    private static final Path CODE = Path.of("src/main/java");
    /** Behind these stand paths of the visit file. */
    private static final List<String> PATHS = List.of("ask.", "why.");

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern PLACE = Pattern.compile("\\{[^}]*}");

    private static Map<String, String> texts(String tag) {
        Map<String, String> texts = new TreeMap<>();
        for (String file : ProgramWording.FILES) {
            TextResource.find(ProgramWording.class, tag + "/" + file + ".properties")
                    .orElseThrow()
                    .entries()
                    .forEach(entry -> texts.put(entry.key(), entry.text()));
        }
        return texts;
    }

    private static List<String> places(String text) {
        return PLACE.matcher(text)
                .results()
                .map(MatchResult::group)
                .distinct()
                .sorted()
                .toList();
    }

    private static Set<String> written() throws IOException {
        Set<String> literals = new TreeSet<>();
        try (Stream<Path> files = Files.walk(CODE)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                LITERAL.matcher(Files.readString(file)).results().forEach(found -> literals.add(found.group(1)));
            }
        }
        return literals;
    }

    @Test
    void spanishHasTheKeysOfEnglishWithTheSamePlacesForFigures() {
        Map<String, String> english = texts("en");
        Map<String, String> spanish = texts("es");
        assertThat(spanish.keySet()).isEqualTo(english.keySet());
        assertThat(english)
                .allSatisfy((key, text) -> assertThat(places(spanish.getOrDefault(key, "")))
                        .as(key)
                        .isEqualTo(places(text)));
        assertThat(ProgramWording.of(Language.SPANISH, UnitSystem.US).missingKeys())
                .isEmpty();
    }

    /** Written whole, or composed: behind a prefix that is written stands one word, or what is written itself. */
    private static boolean isAskedFor(String key, Set<String> written) {
        if (written.contains(key)) {
            return true;
        }
        for (int at = key.indexOf('.'); at >= 0; at = key.indexOf('.', at + 1)) {
            String rest = key.substring(at + 1);
            boolean isPath = PATHS.stream().anyMatch(key::startsWith);
            if (written.contains(key.substring(0, at + 1))
                    && (isPath || rest.indexOf('.') < 0 || isAskedFor(rest, written))) {
                return true;
            }
        }
        return false;
    }

    @Test
    void everyTextIsAskedForAndItsFiguresAreMade() throws IOException {
        Set<String> written = written();
        List<String> unused = new ArrayList<>();
        texts("en").forEach((key, text) -> {
            if (!isAskedFor(key, written)) {
                unused.add(key);
            }
            // those of an exercise are numbered by letters
            for (String place :
                    places(text).stream().filter(each -> each.length() > 3).toList()) {
                assertThat(written)
                        .as(key)
                        .contains(place.substring(1, place.length() - 1).split(":", -1)[0]);
            }
        });
        assertThat(unused).isEmpty();
    }

    /** A key that is written in code begins as the keys of the program do, and has a text. */
    @Test
    void everyKeyThatIsWrittenHasAText() throws IOException {
        Set<String> keys = texts("en").keySet();
        Set<String> rooms = keys.stream().map(key -> key.split("\\.", -1)[0]).collect(Collectors.toSet());
        assertThat(written())
                .filteredOn(each -> each.matches("[a-z]+\\.[a-zA-Z0-9.-]*[a-zA-Z0-9]")
                        && !each.endsWith(".css")
                        && rooms.contains(each.split("\\.", -1)[0]))
                .allSatisfy(each -> assertThat(keys).contains(each));
    }
}
