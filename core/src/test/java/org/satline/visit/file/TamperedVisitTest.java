package org.satline.visit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.json.JsonFields;
import org.satline.visit.ActionKind;
import org.satline.visit.FieldException;
import org.satline.visit.NextAction;
import org.satline.visit.VisitCode;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue.Fields;
import org.satline.visit.file.FieldValue.Flag;
import org.satline.visit.file.FieldValue.Items;
import org.satline.visit.file.FieldValue.Plain;
import org.satline.visit.file.FieldValue.Text;

/**
 * Two visits on which refrigerant may move, each with one thing made wrong: then nothing moves. Basis: pressures of one system agree, a
 * cylinder that receives grows heavier and one that gives lighter (physics); order of hoses and valves: common practice, no source.
 */
class TamperedVisitTest {
    private static final String UNIT = """
            "date": "2026-07-14",
            "site": {"name": "quay", "altitude": "0 m"},
            "instruments": {
              "suctionGauge": {"name": "low", "percentOfReading": "0.5 %", "limitOfError": "0.5 psi"},
              "liquidGauge": {"name": "high", "percentOfReading": "0.5 %", "limitOfError": "0.5 psi"},
              "thermometer": {"name": "clamps", "accuracyClass": "thermocouple-k-class-1", "resolution": "0.1 K", "pipeContact": "0.5 K"},
              "scale": {"name": "scale", "resolution": "0.02 lb", "percentOfReading": "0.05 %"}
            },
            "conditions": {"running": "25 min", "settled": true, "airflow": "1200 cfm", "nominalCooling": "36000 Btu/h"},
            "manifold": {"valves": 2, "holds": "vapour"},
            """;
    private static final String OVERFULL = "{" + UNIT + """
            "system": {"name": "split unit", "refrigerant": "R-22", "metering": "expansion-valve", "fullCharge": "2.89 kg",
              "owner": "the mill", "targetSubcooling": "5.6 K"},
            "readings": {"suctionPressure": "5.155 bar gauge", "suctionLine": "14.8 degC", "liquidPressure": "15.794 bar gauge",
              "liquidLine": "32.3 degC", "outdoorAir": "32.0 degC", "returnDryBulb": "26.0 degC", "returnWetBulb": "18.3 degC"},
            "cylinder": {"name": "receiver", "valve": "recovery-vapour", "specification": "DOT-4BW400", "tare": "6.96 kg",
              "waterCapacity": "11.99 kg", "retestDue": "2029-04-30", "holding": "R-22", "temperature": "24.3 degC",
              "pressure": "9.236 bar gauge", "owner": "the mill", "provenance": "recovered", "scaleReading": "9.65 kg",
              "hoses": [{"port": "centre", "systemEnd": "plain-flare", "cylinderEnd": "open-close-valve", "length": "5 ft",
                "holds": "vapour", "contentsFrom": "system"}]}}
            """;
    private static final String SHORT = "{" + UNIT + """
            "system": {"name": "split unit", "refrigerant": "R-22", "metering": "fixed-orifice", "fullCharge": "8 lb",
              "owner": "the mill"},
            "readings": {"suctionPressure": "72.4 psig", "suctionLine": "81 degF", "liquidPressure": "177.4 psig",
              "liquidLine": "89.8 degF", "outdoorAir": "70.0 degF", "returnDryBulb": "80.6 degF", "returnWetBulb": "66.0 degF"},
            "moved": {"net": "-0.6 kg", "earlier": [{"net": "0 kg", "measured": "16.8 degF"}]},
            "cylinder": {"name": "source", "valve": "source-liquid", "specification": "DOT-4BW400", "tare": "15.34 lb",
              "waterCapacity": "26.43 lb", "retestDue": "2029-04-30", "holding": "R-22", "temperature": "80.4 degF", "pressure": "144.5 psig",
              "owner": "the mill", "provenance": "new", "grossBefore": "31.7 lb", "scaleReading": "0 lb",
              "hoses": [{"port": "centre", "systemEnd": "plain-flare", "cylinderEnd": "open-close-valve", "length": "5 ft",
                "holds": "vapour", "contentsFrom": "source"}]}}
            """;

    private static Fields fields(String json) {
        return JsonFields.read(json);
    }

    /** The same with one value at a path such as {@code cylinder.hoses.0.port}; null takes it away. */
    private static Fields with(Fields fields, String path, @Nullable Object value) {
        @Nullable
        FieldValue made = value == null
                ? null
                : value instanceof FieldValue ready
                        ? ready
                        : value instanceof Boolean flag
                                ? new Flag(flag)
                                : value instanceof Number number
                                        ? new Plain(number.doubleValue())
                                        : new Text((String) value);
        return (Fields) Objects.requireNonNull(set(fields, List.of(path.split("\\.")), made));
    }

    private static @Nullable FieldValue set(@Nullable FieldValue in, List<String> path, @Nullable FieldValue value) {
        if (path.isEmpty()) {
            return value;
        }
        List<String> rest = path.subList(1, path.size());
        if (in instanceof Items items) {
            List<FieldValue> copy = new ArrayList<>(items.values());
            int index = Integer.parseInt(path.get(0));
            copy.set(index, Objects.requireNonNull(set(copy.get(index), rest, value)));
            return new Items(copy);
        }
        Map<String, FieldValue> copy = new LinkedHashMap<>(((Fields) Objects.requireNonNull(in)).values());
        @Nullable FieldValue child = rest.isEmpty() ? null : copy.getOrDefault(path.get(0), new Fields(Map.of()));
        @Nullable FieldValue made = set(child, rest, value);
        if (made == null) {
            copy.remove(path.get(0));
        } else {
            copy.put(path.get(0), made);
        }
        return new Fields(copy);
    }

    private static VisitReport report(Fields fields) {
        return VisitReporter.report(VisitFile.read(fields));
    }

    private static VisitReport overfull(String path, @Nullable Object value) {
        return report(with(fields(OVERFULL), path, value));
    }

    private static VisitReport shortOf(String path, Object value) {
        return report(with(fields(SHORT), path, value));
    }

    private static List<String> codes(VisitReport report, Severity severity) {
        return report.findings().stream()
                .filter(each -> each.severity() == severity)
                .map(Finding::code)
                .map(each -> each.word())
                .toList();
    }

    @Test
    void untamperedTheyMove() {
        VisitReport out = report(fields(OVERFULL));
        VisitReport in = report(fields(SHORT));
        assertThat(out.action().kind()).isEqualTo(ActionKind.TAKE_OUT);
        assertThat(in.action().kind()).isEqualTo(ActionKind.PUT_IN);
        for (VisitReport each : List.of(out, in)) {
            assertThat(codes(each, Severity.DANGER_NOW)).isEmpty();
            assertThat(codes(each, Severity.FORBIDS)).isEmpty();
            assertThat(codes(each, Severity.MUST_BE_SUPPLIED)).isEmpty();
        }
    }

    /** A step that has no end is not begun: a plain end on a valve core of the liquid line cannot come off without spraying. */
    @Test
    void aStepThatHasNoEndIsNotBegun() {
        Fields direct = with(fields(OVERFULL), "manifold", null);
        VisitReport report = report(with(direct, "cylinder.hoses.0.port", "high-side-liquid"));
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(codes(report, Severity.FORBIDS)).contains("plainEndOnCore");
        assertThat(report.ask()).contains("cylinder.hoses");
    }

    /** A suction below the atmosphere draws air in at every joint. */
    @ParameterizedTest
    @ValueSource(strings = {"-5 psig", "0 psig"})
    void nothingIsAddedWhileTheSuctionIsNotAboveTheAtmosphere(String suction) {
        assertThat(shortOf("readings.suctionPressure", suction).action().movesNow())
                .isFalse();
    }

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({"low-side, 60 psig", "low-side, 230 psig", "high-side-liquid, 100 psig", "high-side-vapour, 100 psig"})
    void anOpenPortThatContradictsTheReadingsIsRefused(String port, String pressure) {
        FieldValue ports =
                new Items(List.of(new Fields(Map.of("port", new Text(port), "pressure", new Text(pressure)))));
        Fields short_ = with(fields(SHORT), "readings.suctionPressure", "115 psig");
        assertThatThrownBy(() -> VisitFile.read(with(short_, "openPorts", ports)))
                .isInstanceOf(FieldException.class)
                .hasMessageContaining("openPorts");
    }

    /** Acts of a step are an order to open valves: none where nothing may move. */
    @ParameterizedTest
    @ValueSource(strings = {"cylinder.retestDue", "conditions.running", "system.fullCharge"})
    void noActsOfAStepAreGivenWhileSomethingIsMissing(String field) {
        assertThat(report(fields(OVERFULL)).actsNow()).isPresent();
        VisitReport report = overfull(field, null);
        assertThat(report.action().movesNow()).isFalse();
        assertThat(report.ask()).contains(field);
        assertThat(report.actsNow()).isEmpty();
    }

    @Test
    void noHoseIsHookedUpToACylinderOfAnotherRefrigerant() {
        Fields air = with(fields(OVERFULL), "cylinder.hoses.0.holds", "air");
        Fields unpurged = with(air, "cylinder.hoses.0.contentsFrom", null);
        assertThat(report(unpurged).actsNow()).isPresent();
        VisitReport report = report(with(unpurged, "cylinder.holding", "R-410A"));
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(report.actsNow()).isEmpty();
        assertThat(report.ask()).isNotEmpty();
    }

    @Test
    void whoSawTheReadingsMoveIsBelievedBeforeASeries() {
        List<FieldValue> series = new ArrayList<>();
        for (int minute = 0; minute < 7; minute++) {
            series.add(new Fields(Map.of("after", new Text(minute + " min"), "measured", new Text("11.5 K"))));
        }
        Fields still = with(fields(OVERFULL), "conditions.settling", new Items(series));
        assertThat(report(still).action().kind()).isEqualTo(ActionKind.TAKE_OUT);
        assertThat(report(with(still, "conditions.settled", false)).action().kind())
                .isEqualTo(ActionKind.READ_AGAIN);
    }

    @Test
    void aManifoldHasNoHalfValves() {
        assertThatThrownBy(() -> overfull("manifold.valves", 2.5)).isInstanceOf(FieldException.class);
    }

    /** A receiver that became lighter has given to the system, a source that became heavier has taken from it. */
    @Test
    void aScaleThatMovedTheWrongWayMovesNothing() {
        Fields zeroed = with(fields(OVERFULL), "cylinder.grossBefore", "9.65 kg");
        assertThat(report(with(zeroed, "cylinder.scaleReading", "-0.02 kg"))
                        .action()
                        .kind())
                .isEqualTo(ActionKind.TAKE_OUT);
        for (VisitReport wrong : List.of(
                report(with(zeroed, "cylinder.scaleReading", "-1 kg")), shortOf("cylinder.scaleReading", "2 lb"))) {
            assertThat(wrong.action().kind()).isEqualTo(ActionKind.PREPARE);
            assertThat(codes(wrong, Severity.FORBIDS)).contains("scaleAgainstRole");
            assertThat(wrong.ask()).contains("cylinder.scaleReading");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 psia", "-14.69 psig"})
    void aVacuumInACylinderThatHoldsLiquidByItsWeightIsAContradiction(String pressure) {
        VisitReport report = overfull("cylinder.pressure", pressure);
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(codes(report, Severity.FORBIDS)).contains("wrongContents");
    }

    @Test
    void aTemperatureBelowTheSaturationLineIsAskedForAgain() {
        VisitReport report = overfull("cylinder.temperature", "-300 degF");
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(report.ask()).contains("cylinder.temperature");
    }

    /** 15 kg in 12 L are 1.25 kg/L, more than liquid R-22 at room temperature, some 1.19 kg/L (from memory). */
    @Test
    void aFullCylinderWithoutALabelIsADangerBesideTheConnectedOne() {
        Fields connected =
                (Fields) Objects.requireNonNull(fields(OVERFULL).values().get("cylinder"));
        Fields spare = with(with(with(connected, "name", "spare"), "holding", null), "hoses", null);
        Fields full = with(spare, "scaleReading", "21.96 kg");
        Fields both = with(with(fields(OVERFULL), "cylinder", null), "cylinders", new Items(List.of(connected, full)));
        VisitReport report = report(with(both, "connected", "receiver"));
        assertThat(report.action().kind()).isEqualTo(ActionKind.MAKE_SAFE);
        assertThat(codes(report, Severity.DANGER_NOW)).contains("liquidFull");
    }

    /** Two valves with a dip tube are used upright: on its head a vapour valve gives liquid. */
    @Test
    void aRefillableCylinderIsNotTurnedOver() {
        for (VisitReport report : List.of(overfull("cylinder.inverted", true), shortOf("cylinder.inverted", true))) {
            assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
            assertThat(codes(report, Severity.FORBIDS)).contains("inverted");
        }
    }

    /** What hangs on the cylinder is taken off its contents: 10 lb of hoses would be room for 10 lb too much. */
    @Test
    void moreThanHosesWeighDoesNotHangOnACylinder() {
        assertThat(overfull("cylinder.hanging", "0.4 kg").action().kind()).isEqualTo(ActionKind.TAKE_OUT);
        assertThatThrownBy(() -> overfull("cylinder.hanging", "10 lb"))
                .isInstanceOf(FieldException.class)
                .hasMessageContaining("hanging");
    }

    /**
     * Some 610 to 650 psig are the usual high-pressure switch of R-410A (common practice, no source), whose critical point is at 71 degC.
     */
    @Test
    void aSystemNearTheCriticalPointIsADanger() {
        Fields hot =
                with(with(fields(OVERFULL), "system.refrigerant", "R-410A"), "readings.suctionPressure", "120 psig");
        Fields cleared = with(
                with(with(hot, "readings.suctionLine", "10 degC"), "cylinder", null), "readings.liquidLine", "60 degC");
        VisitReport report = report(with(cleared, "readings.liquidPressure", "660 psig"));
        assertThat(report.action().kind()).isEqualTo(ActionKind.MAKE_SAFE);
        assertThat(codes(report, Severity.DANGER_NOW)).containsExactly("systemOverPressure");
    }

    @ParameterizedTest
    @ValueSource(strings = {"600 psig", "800 psig"})
    void aSystemOverItsPressureIsToldBesideAFieldThatCannotBeRead(String pressure) {
        Fields wrong = with(fields(OVERFULL), "system.metering", "guess");
        assertThat(VisitFile.dangersInReadablePart(wrong)).isEmpty();
        assertThat(VisitFile.dangersInReadablePart(with(wrong, "readings.liquidPressure", pressure)))
                .singleElement()
                .satisfies(each -> assertThat(each.code()).isEqualTo(VisitCode.SYSTEM_OVER_PRESSURE));
    }

    /**
     * 0.75 kg of R-407C in 14 L at 27 degC: some 46 kg/m3 of vapour (from memory) are 0.64 kg, so that 0.1 kg of liquid is left for a step.
     */
    @Test
    void aBlendIsGivenAsLiquidOnlyAsFarAsThereIsLiquid() {
        Fields blend = with(with(fields(SHORT), "system.refrigerant", "R-407C"), "cylinder.holding", "R-407C");
        Fields read = with(with(blend, "readings.suctionPressure", "64 psig"), "readings.liquidPressure", "190 psig");
        Fields last = with(with(read, "cylinder.waterCapacity", "30.8 lb"), "cylinder.pressure", null);
        VisitReport full = report(with(last, "readings.liquidLine", "88 degF"));
        VisitReport nearlyEmpty =
                report(with(with(last, "readings.liquidLine", "88 degF"), "cylinder.scaleReading", "-14.7 lb"));
        assertThat(full.action()).isInstanceOf(NextAction.Move.class);
        double liquid = nearlyEmpty
                .connected()
                .orElseThrow()
                .vessel()
                .orElseThrow()
                .liquid()
                .kilograms();
        assertThat(liquid).isBetween(0.01, 0.2);
        if (nearlyEmpty.action() instanceof NextAction.Move move) {
            assertThat(move.step().amount().kilograms()).isLessThanOrEqualTo(liquid);
        } else {
            assertThat(nearlyEmpty.action().kind()).isEqualTo(ActionKind.PREPARE);
        }
    }

    /** 49 CFR 180.209 knows periods of at most 12 years (from memory): 2092 is 2029 mistyped. */
    @Test
    void aRetestDateFartherAwayThanAnyPeriodIsReadAgain() {
        assertThat(overfull("cylinder.retestDue", "2038-07-14").action().kind()).isEqualTo(ActionKind.TAKE_OUT);
        VisitReport report = overfull("cylinder.retestDue", "2092-04-30");
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(report.ask()).contains("cylinder.retestDue");
    }

    /** 40 CFR 82.154(d): not into the system of another owner. */
    @Test
    void usedRefrigerantOfAnotherOwnerAsksForAnotherCylinder() {
        VisitReport report =
                report(with(with(fields(SHORT), "cylinder.provenance", "recovered"), "cylinder.owner", "another"));
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(codes(report, Severity.FORBIDS)).contains("otherOwner");
        assertThat(report.ask()).isNotEmpty();
    }
}
