package org.satline.program.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Room;
import org.satline.cylinder.VesselCondition;
import org.satline.cylinder.VesselStates;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessment.CandidateOutcome;
import org.satline.filling.Jurisdiction;
import org.satline.filling.RuleOutcome;
import org.satline.filling.VesselPoint;
import org.satline.program.page.Page;
import org.satline.quantity.MassDifference;
import org.satline.wording.Wording;

/** A cylinder of the visit: what is in it, what may still go in, every fill rule beside the others, how it behaves as it warms. */
final class CylinderSection {
    private final Wording wording;
    private final Detail detail;
    private final Page page;

    CylinderSection(Wording wording, Detail detail, Page page) {
        this.wording = wording;
        this.detail = detail;
        this.page = page;
    }

    void write(CheckedCylinder checked) {
        page.heading(wording.message(
                "page.cylinder", Figure.of("cylinder", checked.cylinder().name())));
        checked.contents()
                .ifPresent(contents -> row(
                        "page.contents",
                        wording.numbers()
                                .within(contents.value(), MassDifference.ofKilograms(contents.expandedUncertainty()))));
        for (Finding each : checked.findings()) {
            if (each.severity() != Severity.CAUTION || detail == Detail.EXPLAINED) {
                page.row(wording.name(each.severity()), wording.of(each));
            }
        }
        if (checked.fill() instanceof FillAssessment.Allowed allowed) {
            row(
                    "page.governs",
                    wording.numbers().down(allowed.limit()) + ": "
                            + allowed.governing().rule().name());
        }
        room(checked.room());
        rules(checked);
        checked.vessel().ifPresent(this::vessel);
    }

    private void row(String key, String text) {
        page.row(wording.message(key), text);
    }

    private void room(Optional<Room> room) {
        if (room.orElse(null) instanceof Room.Left left) {
            row("page.room", wording.numbers().down(left.room()));
            row("page.neverPass", wording.numbers().down(left.neverPass()));
        }
    }

    /** Limits are of the whole contents; what is left is said once, by the rule that governs. */
    private void rules(CheckedCylinder checked) {
        page.subheading(wording.message("page.rules"));
        for (CandidateOutcome each : checked.fill().answers().outcomes()) {
            Optional.of(each.outcome())
                    .filter(outcome -> detail == Detail.EXPLAINED || isAsked(checked, outcome))
                    .flatMap(this::answer)
                    .ifPresent(answer -> page.row(
                            each.outcome().rule().name(),
                            answer + " [" + each.outcome().rule().source() + "]"));
        }
    }

    private static boolean isAsked(CheckedCylinder checked, RuleOutcome outcome) {
        Jurisdiction rules = checked.fill().answers().question().jurisdiction();
        return rules.rules().contains(outcome.rule()) || rules.forRecovered().contains(outcome.rule());
    }

    private Optional<String> answer(RuleOutcome outcome) {
        if (outcome instanceof RuleOutcome.MassLimit limit) {
            return Optional.of(wording.message("page.limit", Figure.of("limit", limit.maximumContents())));
        } else if (outcome instanceof RuleOutcome.PressureTest test) {
            return Optional.of(
                    wording.message(test.passed() ? "page.passed" : "page.failed", Figure.of("margin", test.margin())));
        } else if (outcome instanceof RuleOutcome.Forbidden forbidden) {
            return Optional.of(
                    wording.message("page.forbidden", Figure.of("reason", wording.name(forbidden.reason()))));
        } else if (outcome instanceof RuleOutcome.NotTested notTested) {
            return Optional.of(
                    wording.message("page.notTested", Figure.of("reason", wording.name(notTested.reason()))));
        }
        return detail == Detail.EXPLAINED && outcome instanceof RuleOutcome.NotApplicable none
                ? Optional.of(wording.message("page.notApplicable", Figure.of("reason", wording.name(none.reason()))))
                : Optional.empty();
    }

    private void vessel(VesselStates states) {
        condition(states.now());
        states.warmer().stream()
                .filter(each -> each.temperature().kelvins()
                        > states.now().temperature().kelvins())
                .forEach(this::condition);
        if (states.liquidFull() instanceof VesselPoint.At at) {
            row("page.liquidFull", wording.numbers().down(at.temperature()));
        }
        if (states.reachesService().orElse(null) instanceof VesselPoint.At at) {
            row("page.reachesService", wording.numbers().down(at.temperature()));
        }
    }

    private void condition(VesselCondition each) {
        List<Figure> figures = new ArrayList<>(
                List.of(Figure.of("temperature", each.temperature()), Figure.of("pressure", each.pressure())));
        each.liquidVolumeFraction().ifPresent(level -> figures.add(Figure.of("level", level, "1")));
        row(
                "page.asItWarms",
                wording.message(
                        each.liquidVolumeFraction().isPresent() ? "page.vessel" : "page.vesselWithoutLevel",
                        figures.toArray(Figure[]::new)));
    }
}
