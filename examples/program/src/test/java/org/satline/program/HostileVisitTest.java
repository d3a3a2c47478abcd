package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.quantity.PlainText;

/**
 * Every text of a visit in turn carries what steers a terminal and goes on for ever; no output obeys it or repeats more than 60 characters.
 */
class HostileVisitTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String STEERING = "\u001b[2K\u202e\u2066\n\u009b1A\u2028";
    private static final Path SAMPLE = Path.of("samples/boathouse.json");

    @TempDir
    Path folder;

    /** Ways to change one text each. */
    private static List<Consumer<String>> texts(JsonNode node) {
        List<Consumer<String>> ways = new ArrayList<>();
        if (node instanceof ObjectNode object) {
            object.properties().forEach(each -> {
                if (each.getValue().isTextual()) {
                    ways.add(text -> object.set(each.getKey(), TextNode.valueOf(text)));
                }
                ways.addAll(texts(each.getValue()));
            });
        } else if (node instanceof ArrayNode array) {
            array.forEach(each -> ways.addAll(texts(each)));
        }
        return ways;
    }

    private void runWith(int which, String text) throws IOException {
        JsonNode visit = JSON.readTree(Files.readString(SAMPLE));
        texts(visit).get(which).accept(text);
        Path file = Files.writeString(folder.resolve("visit.json"), JSON.writeValueAsString(visit));
        Path json = folder.resolve("report.json");
        Path html = folder.resolve("report.html");
        ProgramRun run = ProgramRun.of("visit", file, "--explain", "--json", json, "--html", html);
        assertThat(run.status()).isIn(0, 2);
        List<String> outputs = new ArrayList<>(List.of(run.out(), run.err()));
        if (run.status() == 0) {
            outputs.addAll(List.of(Files.readString(json), Files.readString(html)));
        }
        for (String output : outputs) {
            assertThat(output.codePoints().filter(c -> c != '\n'))
                    .as("text %s: %s", which, text)
                    .noneMatch(PlainText::isHidden);
        }
        assertThat(run.err()).doesNotContain("x".repeat(61)).hasSizeLessThan(1500);
    }

    @Test
    void noTextOfAVisitSteersAnyOutput() throws IOException {
        int count = texts(JSON.readTree(Files.readString(SAMPLE))).size();
        assertThat(count).isGreaterThan(20);
        for (int i = 0; i < count; i++) {
            runWith(i, "a" + STEERING + "b");
            runWith(i, STEERING + "x".repeat(99_000));
        }
    }
}
