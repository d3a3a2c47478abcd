package org.satline.program.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.satline.program.words.ProgramWordingTest.ENGLISH;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.json.JsonFields;
import org.satline.program.file.BadInputException;
import org.satline.quantity.MassDifference;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.VisitFile;

class NextVisitTest {
    private static final String READINGS =
            "\"readings\": { \"suctionPressure\": \"118 psig\", \"suctionLine\": \"53 degF\", \"liquidPressure\": \"380 psig\","
                    + " \"liquidLine\": \"98 degF\", \"returnDryBulb\": \"78 degF\", \"outdoorAir\": \"91 degF\" }";

    @TempDir
    Path folder;

    private static FieldValue.Fields earlier() {
        return FieldTree.put(VisitStore.read(Path.of("samples", "boathouse.json")), "time", "14:35");
    }

    private static FieldValue.Fields fresh(String more) {
        return JsonFields.read("{ \"time\": \"15:05\", " + READINGS + more + " }");
    }

    private static NextVisit next(FieldValue.Fields earlier, String more) {
        FieldValue.Fields fresh = fresh(more);
        NextVisit.checkRefrigerant(earlier, fresh);
        return NextVisit.of(
                earlier,
                NextVisit.merged(earlier, FieldTree.without(fresh, "moved")),
                FieldTree.text(fresh, "moved.net"));
    }

    private static String weighed(String shown) {
        return ", \"cylinder\": { \"scaleReading\": \"" + shown + "\" }";
    }

    private static double netPounds(NextVisit next) {
        return MassDifference.parse(FieldTree.text(next.visit(), "moved.net").orElseThrow())
                .pounds();
    }

    private static List<NextVisit.Kind> kinds(NextVisit next) {
        return next.notices().stream().map(NextVisit.Notice::kind).toList();
    }

    /** The cylinder that receives weighs 0.35 lb more: so much has left the system, beside the 0.3 lb of before. The file keeps 0.1 g. */
    @Test
    void whatHasMovedIsTheDifferenceOfTheTwoWeighings() {
        NextVisit next = next(earlier(), weighed("41.70 lb"));
        assertThat(netPounds(next)).isCloseTo(-0.3 - (41.70 - 41.35), within(0.001));
        assertThat(VisitFile.read(next.visit()).moved().earlier()).hasSize(2);
        assertThat(next.notices()).isEmpty();
    }

    @Test
    void historyKeepsTheReadingsOfBefore() {
        NextVisit once = next(earlier(), weighed("41.70 lb"));
        assertThat(FieldTree.text(once.visit(), "history[0].readings.liquidPressure"))
                .contains("388 psig");
        assertThat(FieldTree.text(once.visit(), "history[0].scaleReading")).contains("41.35 lb");
        FieldValue.Fields later =
                FieldTree.put(NextVisit.merged(once.visit(), fresh(weighed("41.90 lb"))), "time", "15:40");
        NextVisit twice = NextVisit.of(once.visit(), later, Optional.empty());
        assertThat(netPounds(twice)).isCloseTo(-0.3 - (41.90 - 41.35), within(0.001));
        assertThat(FieldTree.has(twice.visit(), "history[1].readings.liquidPressure"))
                .isTrue();
        assertThat(VisitFile.read(twice.visit()).moved().earlier()).hasSize(3);
    }

    @Test
    void aStatementThatTheScalesBearOutStands() {
        assertThat(netPounds(next(earlier(), weighed("41.70 lb") + ", \"moved\": { \"net\": \"-0.65 lb\" }")))
                .isCloseTo(-0.65, within(0.001));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                ", \"cylinder\": { \"scaleReading\": \"41.70 lb\" }, \"moved\": { \"net\": \"0.65 lb\" } | 0.65 lb | -0.65 lb",
                ", \"date\": \"2026-07-13\" | 2026-07-13T15:05 | 2026-07-14T14:35",
                ", \"system\": { \"refrigerant\": \"R-22\" } | R-22 | R-410A",
                ", \"cylinder\": { \"scaleReading\": \"0.55 lb\" } | 0.55 lb | 27.40 lb"
            })
    void whatCannotFollowIsRefusedWithBothValues(String more, String now, String before) {
        assertThatThrownBy(() -> next(earlier(), more))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(now)
                .hasMessageContaining(before);
    }

    @Test
    void theSameReadingTwiceIsNoticed() {
        FieldValue.Fields same = FieldTree.put(
                NextVisit.merged(earlier(), fresh("")),
                "readings",
                FieldTree.get(earlier(), "readings").orElseThrow());
        assertThat(kinds(NextVisit.of(earlier(), same, Optional.empty()))).containsExactly(NextVisit.Kind.SAME_READING);
    }

    /** 0.2 lb went in before the scale was zeroed, 0.15 lb since. */
    @Test
    void aScaleZeroedInBetweenIsNoticedAndReckonedWith() {
        NextVisit next =
                next(earlier(), ", \"cylinder\": { \"grossBefore\": \"41.55 lb\", \"scaleReading\": \"0.15 lb\" }");
        assertThat(kinds(next)).containsExactly(NextVisit.Kind.SCALE_ZEROED);
        assertThat(netPounds(next)).isCloseTo(-0.3 - 0.35, within(0.001));
    }

    /** The step advised is about half a pound; 2.65 lb went. */
    @Test
    void aStepLargerThanAdvisedIsNoticed() {
        FieldValue.Fields ready = earlier();
        ready = FieldTree.put(ready, "cylinder.hoses[0].systemEnd", "open-close-valve");
        ready = FieldTree.put(ready, "cylinder.hoses[0].holds", "liquid");
        ready = FieldTree.put(ready, "cylinder.hoses[0].contentsFrom", "system");
        assertThat(kinds(next(ready, weighed("44.00 lb")))).containsExactly(NextVisit.Kind.STEP_LARGER);
        assertThat(kinds(next(ready, weighed("41.80 lb")))).isEmpty();
    }

    @Test
    void aSwappedCylinderIsNoticedAndCountsByItself() {
        NextVisit next = next(
                earlier(),
                ", \"cylinder\": { \"name\": \"cylinder no. 5\", \"valve\": \"recovery-vapour\", \"tare\": \"27 lb\","
                        + " \"waterCapacity\": \"47.7 lb\", \"temperature\": \"84 degF\", \"scaleReading\": \"27 lb\" }");
        assertThat(kinds(next)).containsExactly(NextVisit.Kind.CYLINDER_SWAPPED);
        assertThat(netPounds(next)).isCloseTo(-0.3, within(0.001));
        assertThat(VisitFile.read(next.visit()).connected()).contains("cylinder no. 5");
    }

    @Test
    void theFileIsReplacedOnlyByAVisitThatCanFollow() {
        Path file = folder.resolve("visit.json");
        Path readings = folder.resolve("new.json");
        VisitStore.write(file, earlier());
        VisitStore.write(readings, FieldTree.put(fresh(""), "system.refrigerant", "R-22"));
        assertThatThrownBy(() -> VisitAsk.next(file, readings, ENGLISH)).isInstanceOf(BadInputException.class);
        assertThat(VisitStore.read(file)).isEqualTo(earlier());
        VisitStore.write(readings, fresh(weighed("41.70 lb")));
        assertThat(VisitAsk.next(file, readings, ENGLISH).whole()).isTrue();
        assertThat(FieldTree.has(VisitStore.read(file), "history[0]")).isTrue();
    }
}
