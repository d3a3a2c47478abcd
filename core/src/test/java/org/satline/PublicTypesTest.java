package org.satline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Nothing is public for nobody: each public type of core and tables has a user in another package, or a line in the tour. */
class PublicTypesTest {
    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Path TOUR = ROOT.resolve("core/src/main/java/org/satline/package-info.java");
    private static final Pattern COMMENT_OR_TEXT =
            Pattern.compile("(?s)//[^\\n]*|/\\*.*?\\*/|\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\])*+\"");
    private static final Pattern PUBLIC_TYPE = Pattern.compile("(?m)^public .*(class|interface|record|enum) (\\w+)");
    private static final Pattern WORD = Pattern.compile("\\w+");

    /** A source without its comments and texts. */
    private record Source(Path file, String room, String name, boolean open, Set<String> words) {
        static Source of(Path file) {
            String code;
            try {
                code = COMMENT_OR_TEXT.matcher(Files.readString(file)).replaceAll(" ");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            Matcher room = Pattern.compile("(?m)^package ([\\w.]+)").matcher(code);
            Matcher type = PUBLIC_TYPE.matcher(code);
            boolean open = type.find();
            return new Source(file, room.find() ? room.group(1) : "", open ? type.group(2) : "", open, wordsOf(code));
        }

        boolean isOfTheLibrary() {
            String path = ROOT.relativize(file).toString().replace('\\', '/');
            return path.startsWith("core/src/main/") || path.startsWith("tables/src/main/");
        }
    }

    private static final List<Source> SOURCES = new ArrayList<>();

    private static Set<String> wordsOf(String text) {
        Set<String> words = new HashSet<>();
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            words.add(word.group());
        }
        return words;
    }

    @BeforeAll
    static void read() throws IOException {
        try (Stream<Path> files = Files.walk(ROOT)) {
            files.filter(file -> file.toString().matches(".*\\.(java|kt)"))
                    .filter(file -> ROOT.relativize(file)
                            .toString()
                            .replace('\\', '/')
                            .matches("(core|tables|benchmarks|examples/\\w+)/src/(main|it)/.*"))
                    .map(Source::of)
                    .forEach(SOURCES::add);
        }
    }

    @Test
    void everyPublicTypeHasAUserOutsideItsPackageOrALineInTheTour() throws IOException {
        Set<String> toured = wordsOf(Files.readString(TOUR));
        List<String> idle = SOURCES.stream()
                .filter(source -> source.open() && source.isOfTheLibrary() && !toured.contains(source.name()))
                .filter(source -> SOURCES.stream()
                        .noneMatch(user -> !user.room().equals(source.room())
                                && user.words().contains(source.name())))
                .map(source -> source.room() + "." + source.name())
                .toList();
        assertThat(idle)
                .as("make it package-private, or say in the tour what it is for")
                .isEmpty();
    }

    @Test
    void theScanSeesAllModulesAndTheirTypes() {
        assertThat(SOURCES.stream().map(Source::room))
                .contains("org.satline.charge", "org.satline.tables", "org.satline.program", "consumer");
        assertThat(SOURCES.stream().filter(source -> source.open() && source.isOfTheLibrary()))
                .hasSizeGreaterThan(200);
    }
}
