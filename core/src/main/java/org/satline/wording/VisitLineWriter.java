package org.satline.wording;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.satline.charge.Judgement;
import org.satline.cylinder.Weighing;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.transfer.HoseState;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.PlanNote;
import org.satline.transfer.hookup.SystemPort;
import org.satline.visit.ActionKind;
import org.satline.visit.NextAction;
import org.satline.visit.StepOrder;
import org.satline.visit.VisitReport;
import org.satline.visit.file.ReportFields;
import org.satline.wording.VisitLines.Line;
import org.satline.wording.VisitLines.Phase;
import org.satline.wording.VisitLines.Topic;

/** Writes the lines of one report. */
record VisitLineWriter(VisitReport report, Wording wording) {
    /** What has less than this is not told as fact. */
    private static final double SURE = 0.95;

    private static final int ROWS_OF_DANGER = 6;
    private static final int ROWS_OF_REASONS = 3;
    private static final int ROWS_OF_SUPPLY = 2;

    VisitLines written() {
        List<String> inFull = report.ask().stream()
                .map(path -> wording.of(Subject.reading(path)))
                .distinct()
                .toList();
        return new VisitLines(top(), plan(), inFull, because());
    }

    List<Line> top() {
        List<Line> lines = new ArrayList<>();
        NextAction action = report.action();
        if (action.kind() == ActionKind.MAKE_SAFE) {
            addDangers(lines);
        }
        add(lines, Topic.ACTION, wording.name(action.kind()), 1);
        if (action instanceof NextAction.Hold) {
            addReasons(lines);
        }
        add(lines, Topic.LEVEL, level(), 2);
        if (action instanceof NextAction.Move move) {
            addStep(lines, move);
        }
        if (action.movesNow() || action.kind() == ActionKind.PREPARE) {
            add(lines, Topic.HOSE, hose(), 1);
        }
        if (action instanceof NextAction.Move move) {
            addAfterwards(lines, move.step());
        }
        if (!report.ask().isEmpty()) {
            add(lines, Topic.SUPPLY, String.join(", ", supply()), ROWS_OF_SUPPLY);
        }
        report.leadingCautions().forEach(each -> {
            String key = "brief.caution." + each.id();
            add(lines, Topic.CAUTION, wording.has(key) ? wording.message(key) : wording.of(each), 1);
        });
        return lines;
    }

    private void add(List<Line> lines, Topic topic, String text, int most) {
        lines.add(new Line(topic, wording.name(topic), RowBreaker.rows(text, VisitLines.TEXT_COLUMNS, most)));
    }

    /** All of them where they fit; else as many as leave a row that says how many more there are. */
    private void addDangers(List<Line> lines) {
        List<String> texts =
                report.action().because().stream().map(this::danger).distinct().toList();
        int whole = texts.stream()
                .mapToInt(text -> RowBreaker.rows(text, VisitLines.TEXT_COLUMNS, Integer.MAX_VALUE)
                        .size())
                .sum();
        int left = whole <= ROWS_OF_DANGER ? ROWS_OF_DANGER : ROWS_OF_DANGER - 1;
        int shown = 0;
        for (String text : texts) {
            if (left > 0) {
                List<String> rows = RowBreaker.rows(text, VisitLines.TEXT_COLUMNS, left);
                lines.add(new Line(Topic.DANGER, wording.name(Topic.DANGER), rows));
                left -= rows.size();
                shown++;
            }
        }
        if (shown < texts.size()) {
            add(
                    lines,
                    Topic.DANGER,
                    wording.message("visit.moreDangers", Figure.of("number", String.valueOf(texts.size() - shown))),
                    1);
        }
    }

    /** With several cylinders on site the one in danger may be none that is connected, so it is named. */
    private String danger(Finding finding) {
        String text = VisitLines.brief(finding, wording);
        boolean oneOfSeveral = finding.subject().kind() == Subject.Kind.CYLINDER
                && report.visit().cylinders().size() > 1;
        return oneOfSeveral ? wording.of(finding.subject()) + ": " + text : text;
    }

    private void addReasons(List<Line> lines) {
        Set<String> reasons = new LinkedHashSet<>();
        for (Finding each : report.action().because()) {
            if (each.severity() != Severity.CAUTION && each.code() != CommonCode.NOT_GIVEN) {
                reasons.add(VisitLines.brief(each, wording));
            }
        }
        int left = ROWS_OF_REASONS;
        for (String reason : reasons) {
            List<String> rows = RowBreaker.rows(reason, VisitLines.TEXT_COLUMNS, left);
            if (left > 0 && rows.size() <= left) {
                lines.add(new Line(Topic.REASON, wording.name(Topic.REASON), rows));
                left -= rows.size();
            }
        }
    }

    private String level() {
        Judgement judgement = report.judgement();
        String level = judgement instanceof Judgement.OtherFault other
                ? wording.message("visit.level.notCharge", Figure.of("fault", wording.name(other.fault())))
                : wording.message("visit.level." + word(judgement));
        Optional<Double> chance = ReportFields.probability(report);
        boolean fact = judgement instanceof Judgement.Undecided
                || chance.filter(p -> p < SURE).isEmpty();
        String stated = fact ? level : wording.message("visit.level.probably", Figure.of("level", level));
        return chance.map(p -> wording.message(
                        judgement instanceof Judgement.Undecided
                                ? "visit.level.withLikeliest"
                                : "visit.level.withChance",
                        Figure.of("level", stated),
                        Figure.of("likeliest", likeliest(judgement)),
                        Figure.of("chance", p, "1")))
                .orElse(stated);
    }

    private String likeliest(Judgement judgement) {
        return judgement instanceof Judgement.Undecided undecided
                ? undecided
                        .likeliest()
                        .map(each -> wording.message("visit.level." + each.word()))
                        .orElse("")
                : "";
    }

    private static String word(Judgement judgement) {
        return judgement instanceof Judgement.Decided decided ? decided.level().word() : "undecided";
    }

    private void addStep(List<Line> lines, NextAction.Move move) {
        StepOrder step = move.step();
        boolean out = move.kind() == ActionKind.TAKE_OUT;
        add(
                lines,
                Topic.AMOUNT,
                wording.message(out ? "visit.amount.out" : "visit.amount.in", Figure.of("amount", step.amount())),
                1);
        add(
                lines,
                Topic.PATH,
                wording.message(
                        out ? "visit.path.out" : "visit.path.in",
                        Figure.of("port", wording.name(step.port())),
                        Figure.of("valve", wording.name(step.valve())),
                        Figure.of("phase", wording.name(step.phase()))),
                1);
        add(
                lines,
                Topic.STOP_READING,
                wording.message(
                        out
                                ? shown("visit.stop.out", "visit.stop.out.zeroed")
                                : shown("visit.stop.in", "visit.stop.in.zeroed"),
                        Figure.of("reading", step.stopReading().value())),
                1);
        add(
                lines,
                Topic.NEVER_PASS,
                wording.message(
                        out
                                ? shown("visit.never.out", "visit.never.out.zeroed")
                                : shown("visit.never.in", "visit.never.in.zeroed"),
                        Figure.of("reading", step.neverPass())),
                1);
    }

    /** A zeroed scale shows something else than the gross weight, and the line says so. */
    private String shown(String gross, String zeroed) {
        return report.connected()
                        .flatMap(each -> each.cylinder().weighing())
                        .filter(Weighing.SinceZero.class::isInstance)
                        .isPresent()
                ? zeroed
                : gross;
    }

    private String hose() {
        return report.hose() == HoseState.CANNOT_BE_PURGED
                ? report.noPlan()
                        .filter(none -> !none.parts().isEmpty())
                        .map(none -> wording.message(
                                "visit.hose.without",
                                Figure.of("hose", wording.name(report.hose())),
                                Figure.of("part", VisitLines.parts(none, wording))))
                        .orElseGet(() -> wording.name(report.hose()))
                : wording.name(report.hose());
    }

    private void addAfterwards(List<Line> lines, StepOrder step) {
        Duration wait = step.settling();
        add(lines, Topic.WAIT, wording.message("visit.wait", Figure.of("wait", wait.toMillis() / 1000.0, "s")), 1);
        List<String> fields = new ArrayList<>();
        for (String path : ReportFields.readThen(report)) {
            fields.add(wording.field(path));
        }
        add(lines, Topic.READ_THEN, String.join(", ", fields), 2);
    }

    private List<Phase> plan() {
        List<Phase> phases = new ArrayList<>();
        for (HookUpPlan.Phase phase :
                report.actsNow().map(HookUpPlan.Planned::phases).orElse(List.of())) {
            List<String> acts = phase.acts().stream().map(this::act).toList();
            List<String> notes = new ArrayList<>();
            for (PlanNote note : phase.notes()) {
                notes.add(wording.message("finding." + note.word()));
            }
            if (phase.vented().kilograms() > 0) {
                notes.add(wording.message("plan.vented", Figure.of("vented", phase.vented())));
            }
            phases.add(new Phase(wording.message("phase." + phase.kind().word()), acts, notes));
        }
        return phases;
    }

    private String act(Act act) {
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.of("target", part(act.target())));
        act.to().ifPresent(to -> figures.add(Figure.of("to", part(to))));
        act.amount().ifPresent(amount -> figures.add(Figure.of("amount", amount)));
        String plain = "act." + act.kind().code();
        String key = isStem(act.target()) && wording.has(plain + "Stem") ? plain + "Stem" : plain;
        String until = key + ".amount";
        return wording.message(
                act.amount().isPresent() && wording.has(until) ? until : key, figures.toArray(new Figure[0]));
    }

    private boolean isStem(String place) {
        return report.visit().hookUp().fittings().entrySet().stream()
                .anyMatch(each -> each.getValue() == SystemPort.Fitting.STEM
                        && place.equals(
                                switch (each.getKey()) {
                                    case LOW_SIDE_PORT -> "low-side";
                                    case HIGH_SIDE_LIQUID_PORT -> "liquid-line";
                                    default -> "discharge";
                                }));
    }

    /** A place of the hook-up: its own name where there is a text for it, else as it is called. */
    private String part(String name) {
        String key = "place." + name;
        String cylinder = (name.startsWith("next-") ? report.other() : report.connected())
                .map(each -> each.cylinder().name())
                .orElseGet(() -> wording.name(Subject.Kind.CYLINDER));
        return wording.has(key) ? wording.message(key, Figure.of("name", cylinder)) : name;
    }

    private List<String> supply() {
        return report.ask().stream().map(wording::field).distinct().toList();
    }

    private List<String> because() {
        List<String> reasons = new ArrayList<>();
        for (Finding each : report.action().because()) {
            String text = wording.of(each);
            reasons.add(
                    each.severity() == Severity.CAUTION
                            ? text
                            : wording.message(
                                    "visit.because",
                                    Figure.of("severity", wording.name(each.severity())),
                                    Figure.of("finding", text)));
        }
        return reasons.stream().distinct().toList();
    }
}
