package org.satline.visit.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.refrigerant.Catalogue;
import org.satline.visit.ActionKind;
import org.satline.visit.NextAction;
import org.satline.visit.StepOrder;

/** The fields of a report, which programs read: their names, their types and that none of them is a sentence. */
class ReportFieldsTest {
    private static final Set<String> GIVEN_BY_THE_PERSON = Set.of(
            "cylinder no. 4", "split air conditioner", "digital gauge", "pipe clamps", "the sailing club", "scale");

    private static Map<String, FieldValue> of(AVisit visit) {
        return ReportFields.of(visit.report()).values();
    }

    private static String text(@Nullable FieldValue value) {
        return ((FieldValue.Text) Objects.requireNonNull(value)).value();
    }

    private static double number(@Nullable FieldValue value) {
        return ((FieldValue.Plain) Objects.requireNonNull(value)).value();
    }

    private static List<FieldValue> items(@Nullable FieldValue value) {
        return ((FieldValue.Items) Objects.requireNonNull(value)).values();
    }

    private static List<String> texts(@Nullable FieldValue value) {
        return items(value).stream().map(ReportFieldsTest::text).toList();
    }

    @Test
    void aStepOutHasAllItsFields() {
        AVisit visit = AVisit.overcharged();
        Map<String, FieldValue> fields = of(visit);
        StepOrder step = ((NextAction.Move) visit.report().action()).step();
        assertThat(fields.keySet())
                .containsExactly(
                        "schemaVersion",
                        "action",
                        "movesNow",
                        "because",
                        "level",
                        "levelProbability",
                        "amountKg",
                        "stopReadingKg",
                        "neverPassReadingKg",
                        "port",
                        "valve",
                        "phase",
                        "hose",
                        "waitS",
                        "readThen",
                        "ask",
                        "plan",
                        "cautions",
                        "findings",
                        "dataVersion");
        assertThat(number(fields.get("schemaVersion"))).isEqualTo(ReportFields.SCHEMA_VERSION);
        assertThat(text(fields.get("action"))).isEqualTo("takeOut");
        assertThat(fields.get("movesNow")).isEqualTo(new FieldValue.Flag(true));
        assertThat(texts(fields.get("because"))).contains("againstTarget").doesNotHaveDuplicates();
        assertThat(text(fields.get("level"))).isEqualTo("high");
        assertThat(number(fields.get("levelProbability"))).isBetween(0.5, 1.0);
        assertThat(number(fields.get("amountKg"))).isEqualTo(step.amount().kilograms());
        assertThat(number(fields.get("stopReadingKg")))
                .isEqualTo(step.stopReading().value().kilograms());
        assertThat(number(fields.get("neverPassReadingKg")))
                .isEqualTo(step.neverPass().kilograms());
        assertThat(text(fields.get("port"))).isEqualTo("high-side-liquid");
        assertThat(text(fields.get("valve"))).isEqualTo("recovery-vapour");
        assertThat(text(fields.get("phase"))).isEqualTo("liquid");
        assertThat(text(fields.get("hose"))).isEqualTo("ready");
        assertThat(number(fields.get("waitS")))
                .isEqualTo((double) step.settling().toSeconds());
        assertThat(texts(fields.get("readThen")))
                .containsExactly(
                        "cylinder.scaleReading",
                        "readings.suctionPressure",
                        "readings.suctionLine",
                        "readings.liquidPressure",
                        "readings.liquidLine");
        assertThat(items(fields.get("ask"))).isEmpty();
        assertThat(items(fields.get("plan"))).isNotEmpty();
        assertThat(text(fields.get("dataVersion")))
                .isEqualTo(Catalogue.standard().find("R-410A").dataVersion());
    }

    @Test
    void aFindingHasItsWeightCodeSubjectAndNumbers() {
        Map<String, FieldValue> fields = of(AVisit.overcharged().weighing("75 lb"));
        FieldValue.Fields danger =
                (FieldValue.Fields) items(fields.get("findings")).get(0);
        assertThat(danger.values().keySet()).containsExactly("severity", "code", "subject", "numbers");
        assertThat(text(danger.values().get("severity"))).isEqualTo("dangerNow");
        assertThat(text(danger.values().get("code"))).isEqualTo("overfilled");
        FieldValue.Fields subject =
                (FieldValue.Fields) Objects.requireNonNull(danger.values().get("subject"));
        assertThat(text(subject.values().get("kind"))).isEqualTo("cylinder");
        assertThat(text(subject.values().get("name"))).isEqualTo("cylinder no. 4");
        Map<String, FieldValue> contents =
                ((FieldValue.Fields) items(danger.values().get("numbers")).get(0)).values();
        assertThat(contents.keySet()).containsExactly("name", "value", "unit");
        // by hand: (75 - 27.4) lb of 0.45359237 kg (exact)
        assertThat(number(contents.get("value")))
                .isEqualTo((75 - 27.4) * 0.45359237, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(text(contents.get("unit"))).isEqualTo("kg");
    }

    @Test
    void anActOfThePlanHasItsPhaseAndTarget() {
        for (FieldValue act : items(of(AVisit.overcharged()).get("plan"))) {
            assertThat(((FieldValue.Fields) act).values().keySet())
                    .startsWith("phase", "act", "target")
                    .isSubsetOf("phase", "act", "target", "to", "amountKg");
        }
    }

    @ParameterizedTest
    @CsvSource({"DONE", "MAKE_SAFE", "PREPARE", "READ_AGAIN", "MEND_FIRST"})
    void withoutAStepThereIsNoAmount(ActionKind kind) {
        AVisit visit = switch (kind) {
            case DONE -> AVisit.onTarget();
            case MAKE_SAFE -> AVisit.overcharged().weighing("75 lb");
            case PREPARE -> AVisit.overcharged().withAirInTheHose();
            case READ_AGAIN -> AVisit.overcharged().without("conditions.running");
            default -> AVisit.overcharged().with("readings.suctionLine", "90 degF");
        };
        Map<String, FieldValue> fields = of(visit);
        assertThat(text(fields.get("action"))).isEqualTo(kind.word());
        assertThat(fields.get("movesNow")).isEqualTo(new FieldValue.Flag(false));
        assertThat(fields)
                .doesNotContainKeys(
                        "amountKg", "stopReadingKg", "neverPassReadingKg", "port", "valve", "phase", "waitS");
        assertThat(items(fields.get("readThen"))).isEmpty();
        // a hose that can be swept is swept before anything else is known; a job that is done ends with the hoses taken
        // off
        boolean planned = kind == ActionKind.PREPARE || kind == ActionKind.DONE;
        assertThat(items(fields.get("plan")).isEmpty()).isEqualTo(!planned);
        if (kind == ActionKind.READ_AGAIN) {
            assertThat(texts(fields.get("ask"))).containsExactly("conditions.running");
        }
    }

    @Test
    void noTextIsASentence() {
        List<AVisit> visits = List.of(
                AVisit.overcharged(),
                AVisit.shortOfCharge(),
                AVisit.onTarget(),
                AVisit.overcharged().weighing("75 lb"),
                AVisit.overcharged().withoutCylinder(),
                AVisit.overcharged().withAirInTheHose(),
                AVisit.overcharged().holding("R-22").gauged(""),
                AVisit.overcharged().with("readings.suctionLine", "90 degF"),
                AVisit.overcharged().with("readings.outdoorAir", "20 degF"),
                AVisit.overcharged().with("system.mode", "heating"),
                AVisit.overcharged().without("readings.liquidLine"),
                AVisit.shortOfCharge().with("cylinder.provenance", "recovered").without("system.owner"),
                AVisit.shortOfCharge().without("cylinder.provenance").without("conditions.running"));
        for (AVisit visit : visits) {
            Map<String, String> found = new LinkedHashMap<>();
            collect("", ReportFields.of(visit.report()), found);
            found.values().removeIf(GIVEN_BY_THE_PERSON::contains);
            found.values().removeIf(text -> text.startsWith("pipe clamps at "));
            assertThat(found).allSatisfy((path, text) -> assertThat(text).doesNotContain(" "));
        }
    }

    private static void collect(String path, FieldValue value, Map<String, String> found) {
        if (value instanceof FieldValue.Text text) {
            found.put(path, text.value());
        } else if (value instanceof FieldValue.Items items) {
            List<FieldValue> each = new ArrayList<>(items.values());
            for (int i = 0; i < each.size(); i++) {
                collect(path + "[" + i + "]", each.get(i), found);
            }
        } else if (value instanceof FieldValue.Fields fields) {
            fields.values().forEach((name, each) -> collect(path + "." + name, each, found));
        }
    }
}
