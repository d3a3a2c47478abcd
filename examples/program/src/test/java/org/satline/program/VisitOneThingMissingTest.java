package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A visit that is ready to move refrigerant, less one thing, moves none and asks for that thing; common practice, no source. */
class VisitOneThingMissingTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    /** A thing to take away: the fields that tell it, and the one that is asked for then. */
    private record Thing(String asked, List<String> fields) {
        static Thing of(String asked, String... fields) {
            return new Thing(asked, List.of(fields));
        }
    }

    private static final List<Thing> OF_THE_JUDGEMENT = List.of(
            Thing.of("conditions.running", "/conditions/running"),
            Thing.of("conditions.settled", "/conditions/settled", "/conditions/settling"));

    private static final List<Thing> OF_THE_TRANSFER = List.of(
            Thing.of("cylinder.hoses", "/cylinder/hoses"),
            Thing.of("cylinder.hoses", "/cylinder/hoses/0/holds"),
            Thing.of("cylinder.scaleReading", "/cylinder/scaleReading"),
            Thing.of("cylinder.holding", "/cylinder/holding"),
            Thing.of("cylinder.retestDue", "/cylinder/retestDue"));

    static Stream<Arguments> thingsThatMoveOthers() {
        return trials(true)
                .flatMap(trial -> Stream.concat(OF_THE_JUDGEMENT.stream(), OF_THE_TRANSFER.stream())
                        .map(thing -> Arguments.of(trial, thing)));
    }

    static Stream<Arguments> thingsThatLeaveItDone() {
        return trials(false).flatMap(trial -> OF_THE_JUDGEMENT.stream().map(thing -> Arguments.of(trial, thing)));
    }

    private static Stream<VisitTrial> trials(boolean moving) {
        return VisitTrial.ready().stream().filter(trial -> trial.expected().contains("done") != moving);
    }

    @ParameterizedTest
    @MethodSource("thingsThatMoveOthers")
    void withoutItNothingMovesAndItIsAskedFor(VisitTrial trial, Thing thing) throws IOException {
        JsonNode report = without(trial, thing);
        assertThat(report.path("action").textValue()).isIn("prepare", "readAgain");
        assertThat(report.path("movesNow").booleanValue()).isFalse();
        assertThat(report.path("ask").toString()).contains("\"" + thing.asked() + "\"");
        assertThat(reported(trial.text()).path("action").textValue())
                .isEqualTo(trial.expected().get(0));
    }

    @ParameterizedTest
    @MethodSource("thingsThatLeaveItDone")
    void aConditionThatWasNotReadLeavesItDoneAndIsAskedFor(VisitTrial trial, Thing thing) throws IOException {
        JsonNode report = without(trial, thing);
        assertThat(report.path("action").textValue()).isEqualTo("done");
        assertThat(report.path("ask").toString()).contains("\"" + thing.asked() + "\"");
    }

    private JsonNode without(VisitTrial trial, Thing thing) throws IOException {
        JsonNode visit = JSON.readTree(trial.text());
        for (String pointer : thing.fields()) {
            int end = pointer.lastIndexOf('/');
            if (visit.at(pointer.substring(0, end)) instanceof ObjectNode holder) {
                holder.remove(pointer.substring(end + 1));
            }
        }
        return reported(visit.toString());
    }

    private JsonNode reported(String visit) throws IOException {
        Path file = Files.writeString(folder.resolve("visit.json"), visit);
        Path out = folder.resolve("report.json");
        ProgramRun run = ProgramRun.of("visit", file, "--json", out);
        assertThat(run.err()).isEmpty();
        return JSON.readTree(Files.readString(out));
    }
}
