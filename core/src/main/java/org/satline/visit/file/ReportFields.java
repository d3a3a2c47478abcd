package org.satline.visit.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.satline.charge.Judgement;
import org.satline.charge.margin.ChargeLevel;
import org.satline.explanation.Coded;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.measurement.Place;
import org.satline.quantity.Quantity;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.visit.ActionKind;
import org.satline.visit.HookUpFacts.HosePort;
import org.satline.visit.NextAction;
import org.satline.visit.StepOrder;
import org.satline.visit.VisitReport;

/**
 * The report of a visit as plain fields, without a sentence. The fields are part of the promise of the library: {@link #SCHEMA_VERSION}
 * rises when one changes its meaning or goes. Stateless, thread-safe.
 */
public final class ReportFields {
    /** Version of these fields. */
    public static final int SCHEMA_VERSION = 1;

    private ReportFields() {}

    /**
     * Writes a report.
     *
     * @param report the report
     * @return its fields, in the order in which a person needs them
     */
    public static FieldValue.Fields of(VisitReport report) {
        Objects.requireNonNull(report, "report");
        Map<String, FieldValue> fields = new LinkedHashMap<>();
        fields.put("schemaVersion", number(SCHEMA_VERSION));
        fields.put("action", text(report.action().kind()));
        fields.put("movesNow", new FieldValue.Flag(report.action().movesNow()));
        fields.put(
                "because",
                items(report.action().because().stream()
                        .map(each -> each.code().word())
                        .distinct()
                        .map(FieldValue.Text::new)
                        .toList()));
        level(report, fields);
        if (report.action() instanceof NextAction.Move move) {
            step(move.step(), fields);
        }
        fields.put("hose", text(report.hose()));
        afterwards(report, fields);
        fields.put("ask", items(report.ask().stream().map(FieldValue.Text::new).toList()));
        fields.put("plan", plan(report));
        noPlan(report, fields);
        fields.put(
                "cautions",
                items(report.leadingCautions().stream()
                        .map(each -> new FieldValue.Text(each.id()))
                        .toList()));
        fields.put(
                "findings",
                items(report.findings().stream().map(ReportFields::finding).toList()));
        fields.put(
                "dataVersion",
                new FieldValue.Text(report.properties().refrigerant().dataVersion()));
        return new FieldValue.Fields(fields);
    }

    private static void level(VisitReport report, Map<String, FieldValue> fields) {
        fields.put("level", new FieldValue.Text(report.judgement().label()));
        probability(report).ifPresent(p -> fields.put("levelProbability", number(p)));
    }

    /**
     * The chance of the level that is named; of an undecided one that of the likeliest level, of another fault that of the fault.
     *
     * @param report the report
     * @return the chance in [0, 1], where there is one
     */
    public static Optional<Double> probability(VisitReport report) {
        Judgement judgement = report.judgement();
        if (judgement instanceof Judgement.Decided decided) {
            return Optional.of(decided.probability());
        } else if (judgement instanceof Judgement.OtherFault other) {
            return Optional.of(other.probability());
        }
        Optional<ChargeLevel> likeliest = ((Judgement.Undecided) judgement).likeliest();
        return likeliest.map(level -> judgement.evidence().weighed().belief().probability(level));
    }

    private static void step(StepOrder step, Map<String, FieldValue> fields) {
        fields.put("amountKg", number(step.amount().kilograms()));
        fields.put("stopReadingKg", number(step.stopReading().value().kilograms()));
        fields.put("neverPassReadingKg", number(step.neverPass().kilograms()));
        fields.put("port", new FieldValue.Text(HosePort.field(step.port())));
        fields.put("valve", new FieldValue.Text(valveWord(step.valve())));
        fields.put("phase", text(step.phase()));
    }

    private static String valveWord(PointKind valve) {
        return switch (valve) {
            case RECOVERY_CYLINDER_VAPOUR_VALVE -> "recovery-vapour";
            case RECOVERY_CYLINDER_LIQUID_VALVE -> "recovery-liquid";
            case SOURCE_CYLINDER_VAPOUR_VALVE -> "source-vapour";
            case SOURCE_CYLINDER_LIQUID_VALVE -> "source-liquid";
            default -> valve.word();
        };
    }

    private static void afterwards(VisitReport report, Map<String, FieldValue> fields) {
        if (report.action() instanceof NextAction.Move move) {
            fields.put("waitS", number(move.step().settling().toMillis() / 1000.0));
        }
        fields.put(
                "readThen",
                items(readThen(report).stream().map(FieldValue.Text::new).toList()));
    }

    /**
     * What is read after the step and the wait.
     *
     * @param report the report
     * @return paths of fields of a visit file; empty where nothing moves
     */
    public static List<String> readThen(VisitReport report) {
        if (!report.action().movesNow()) {
            return List.of();
        }
        List<String> then = new ArrayList<>();
        report.connected().ifPresent(each -> then.add(each.cylinder().path("scaleReading")));
        for (Place place :
                List.of(Place.SUCTION_PRESSURE, Place.SUCTION_LINE, Place.LIQUID_PRESSURE, Place.LIQUID_LINE)) {
            then.add(place.path());
        }
        return then;
    }

    private static FieldValue plan(VisitReport report) {
        List<FieldValue> acts = new ArrayList<>();
        for (HookUpPlan.Phase phase :
                report.actsNow().map(HookUpPlan.Planned::phases).orElse(List.of())) {
            for (Act act : phase.acts()) {
                acts.add(act(phase, act));
            }
        }
        return new FieldValue.Items(acts);
    }

    private static void noPlan(VisitReport report, Map<String, FieldValue> fields) {
        report.noPlan()
                .filter(each -> report.action().kind() == ActionKind.PREPARE)
                .ifPresent(each -> {
                    Map<String, FieldValue> none = new LinkedHashMap<>();
                    none.put("reason", text(each.reason()));
                    none.put(
                            "parts",
                            items(each.parts().stream().map(ReportFields::text).toList()));
                    fields.put("noPlan", new FieldValue.Fields(none));
                });
    }

    private static FieldValue act(HookUpPlan.Phase phase, Act act) {
        Map<String, FieldValue> fields = new LinkedHashMap<>();
        fields.put("phase", text(phase.kind()));
        fields.put("act", new FieldValue.Text(act.kind().code()));
        fields.put("target", new FieldValue.Text(act.target()));
        act.to().ifPresent(to -> fields.put("to", new FieldValue.Text(to)));
        act.amount().ifPresent(amount -> fields.put("amountKg", number(amount.kilograms())));
        return new FieldValue.Fields(fields);
    }

    private static FieldValue finding(Finding finding) {
        Map<String, FieldValue> subject = new LinkedHashMap<>();
        subject.put("kind", text(finding.subject().kind()));
        subject.put("name", new FieldValue.Text(finding.subject().name()));
        Map<String, FieldValue> fields = new LinkedHashMap<>();
        fields.put("severity", text(finding.severity()));
        fields.put("code", text(finding.code()));
        fields.put("subject", new FieldValue.Fields(subject));
        fields.put(
                "numbers",
                items(finding.figures().stream()
                        .flatMap(each -> figure(each).stream())
                        .toList()));
        return new FieldValue.Fields(fields);
    }

    private static Optional<FieldValue> figure(Figure figure) {
        if (figure instanceof Figure.Amount amount) {
            Quantity<?> value = amount.value();
            return Optional.of(figure(figure.name(), value.si(), value.siUnit()));
        }
        return figure instanceof Figure.Plain plain
                ? Optional.of(figure(figure.name(), plain.value(), plain.unit()))
                : Optional.empty();
    }

    private static FieldValue figure(String name, double value, String unit) {
        Map<String, FieldValue> fields = new LinkedHashMap<>();
        fields.put("name", new FieldValue.Text(name));
        fields.put("value", number(value));
        fields.put("unit", new FieldValue.Text(unit));
        return new FieldValue.Fields(fields);
    }

    private static FieldValue text(Coded coded) {
        return new FieldValue.Text(coded.word());
    }

    private static FieldValue number(double value) {
        return new FieldValue.Plain(value);
    }

    private static FieldValue items(List<? extends FieldValue> values) {
        return new FieldValue.Items(List.copyOf(values));
    }
}
