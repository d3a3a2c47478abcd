package org.satline.program.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonFieldsTest {
    @TempDir
    Path folder;

    @Test
    void readsWhatIsThere() {
        JsonFields root = read("{\"name\": \"x\", \"flag\": true, \"list\": [{\"a\": \"1\"}, {\"a\": \"2\"}]}");
        String name = root.value("name", "text", text -> text);
        assertThat(name).isEqualTo("x");
        assertThat(root.optionalFlag("flag")).contains(true);
        assertThat(root.objects("list", List.of("a")))
                .extracting(item -> item.value("a", "1", Integer::valueOf))
                .containsExactly(1, 2);
        assertThat(root.optionalObject("part", List.of("a"))).isEmpty();
    }

    @Test
    void namesThePathOfAnUnknownField() {
        JsonFields root = read("{\"list\": [{\"a\": \"1\"}, {\"b\": \"2\"}]}");
        assertThatThrownBy(() -> root.objects("list", List.of("a")))
                .isInstanceOf(BadInputException.class)
                .hasMessageEndingWith("in.json: list[1].b: unknown field; allowed here: a");
    }

    @Test
    void namesThePathOfAMissingField() {
        JsonFields part = read("{\"part\": {}}").object("part", List.of("a"));
        assertThatThrownBy(() -> part.value("a", "118 psig", text -> text))
                .hasMessageEndingWith("in.json: part.a: is missing; expected \"118 psig\"");
    }

    @Test
    void aBareNumberIsNoQuantity() {
        JsonFields root = read("{\"name\": 118}");
        assertThatThrownBy(() -> root.value("name", "118 psig", text -> text))
                .hasMessageEndingWith(
                        "in.json: name: is the bare number 118; a text in quotes is expected, like \"118 psig\"");
    }

    @Test
    void wrapsTheErrorOfTheReader() {
        JsonFields root = read("{\"name\": \"x\"}");
        assertThatThrownBy(() -> root.value("name", "1", Integer::valueOf))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("in.json: name: ");
        assertThatThrownBy(() -> root.choice("name", Map.of("north", 1, "south", 2)))
                .hasMessageEndingWith("in.json: name: \"x\" is not known; allowed: north, south");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"name\": ",
                "{\"name\": \"x\",}",
                "{\"name\": \"x\"} {}",
                "{name: 1}",
                "{\"flag\": NaN}",
                "{\"name\": \"x\", \"name\": \"y\"}"
            })
    void brokenJsonNamesLineAndColumn(String content) {
        assertThatThrownBy(() -> read(content))
                .isInstanceOf(BadInputException.class)
                .hasMessageMatching(".*in\\.json:\\d+:\\d+: broken JSON: .*")
                .hasMessageNotContaining("\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "\"x\"", "null", "17"})
    void somethingElseThanAnObjectIsRefused(String content) {
        assertThatThrownBy(() -> read(content))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("object");
    }

    @Test
    void endlessNestingIsRefused() {
        assertThatThrownBy(() -> read("[".repeat(100_000))).isInstanceOf(BadInputException.class);
    }

    private JsonFields read(String content) {
        try {
            Path file = folder.resolve("in.json");
            Files.writeString(file, content);
            return JsonFields.of(file, List.of("name", "flag", "list", "part"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
