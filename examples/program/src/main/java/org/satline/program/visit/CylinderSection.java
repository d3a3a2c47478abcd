package org.satline.program.visit;

import java.util.Optional;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessment.CandidateOutcome;
import org.satline.filling.FillRule;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Room;
import org.satline.filling.RuleOutcome;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.program.page.Page;
import org.satline.program.page.Printed;
import org.satline.quantity.Mass;
import org.satline.visit.CylinderReport;
import org.satline.visit.VisitReport;

/** The part of the page on the room in the recovery cylinder, with every fill rule beside the others. */
final class CylinderSection {
    private final Page page;

    CylinderSection(Page page) {
        this.page = page;
    }

    void room(VisitReport report) {
        report.cylinder().ifPresent(this::cylinder);
    }

    void rules(VisitReport report) {
        report.cylinder().ifPresent(this::rules);
    }

    private void cylinder(CylinderReport cylinder) {
        page.heading("Cylinder");
        page.row(
                "cylinder",
                cylinder.cylinder().name() + "; " + stamps(cylinder.cylinder().stamps()));
        for (Refusal refusal : cylinder.refusals()) {
            page.row("DO NOT FILL", refusal.text() + " [" + refusal.basis() + "]");
        }
        if (!cylinder.isRefused()) {
            cylinder.assessment().governing().ifPresent(limit -> page.row("limit", limit(limit)));
        }
        cylinder.room().ifPresent(this::room);
    }

    private static String stamps(CylinderStamps stamps) {
        return stamps.specification().map(mark -> mark + ", ").orElse("") + "WC " + Printed.both(stamps.waterCapacity())
                + ", TW " + Printed.both(stamps.tare());
    }

    private void rules(CylinderReport cylinder) {
        FillAssessment assessment = cylinder.assessment();
        Optional<Mass> contents = cylinder.room().map(Room::contents);
        page.heading("Fill rules side by side"
                + (cylinder.isRefused() ? "; the cylinder MUST NOT BE FILLED all the same" : ""));
        String governing =
                assessment.governing().map(limit -> limit.rule().name()).orElse("");
        for (CandidateOutcome each : assessment.outcomes()) {
            FillRule rule = each.outcome().rule();
            boolean chosen = assessment.question().jurisdiction().rules().contains(rule);
            page.item((rule.basis() == FillRule.Basis.LAW ? "law" : "practice")
                    + (chosen
                            ? ""
                            : ", not in the set "
                                    + assessment.question().jurisdiction().name())
                    + (rule.name().equals(governing) ? ", GOVERNS" : "") + ": " + rule.name() + ": "
                    + outcome(each.outcome(), contents));
        }
    }

    private static String outcome(RuleOutcome outcome, Optional<Mass> contents) {
        if (outcome instanceof MassLimit limit) {
            return "at most " + Printed.bothDown(limit.maximumContents())
                    + contents.map(inside -> margin(FillAssessment.marginKilograms(limit, inside)))
                            .orElse("");
        }
        if (outcome instanceof RuleOutcome.PressureTest test) {
            return (test.passed() ? "kept, margin " : "BROKEN by ")
                    + Printed.both(test.margin().abs());
        }
        if (outcome instanceof RuleOutcome.NotApplicable none) {
            return "does not apply: " + none.reason();
        }
        if (outcome instanceof RuleOutcome.NotTested open) {
            return "not tested: " + open.missing();
        }
        return "FORBIDS it: " + ((RuleOutcome.Forbidden) outcome).reason();
    }

    private static String margin(double kilograms) {
        Mass amount = Mass.ofKilograms(Math.abs(kilograms));
        return kilograms < 0 ? ", OVER IT by " + Printed.both(amount) : ", " + Printed.bothDown(amount) + " left";
    }

    private static String limit(MassLimit limit) {
        return "contents at most " + Printed.bothDown(limit.maximumContents()) + ", gross at most "
                + Printed.bothDown(limit.maximumGross()) + ", by rule "
                + limit.rule().name() + ": "
                + limit.rule().inequality() + " [" + limit.rule().citation() + "]";
    }

    private void room(Room room) {
        if (room instanceof Room.Left left) {
            page.row("contents", Printed.both(left.contents()));
            page.row("room", Printed.bothDown(left.room()));
            page.row("stop at", "scale reading " + Printed.bothDown(left.stopReading()));
        } else if (room instanceof Room.Overfilled over) {
            page.row("contents", Printed.both(over.contents()) + ", OVER THE LIMIT by " + Printed.both(over.excess()));
        } else if (room instanceof Room.Full full) {
            page.row("contents", Printed.both(full.contents()) + "; full: nothing more may go in");
        } else if (room instanceof Room.Contradiction contradiction) {
            page.row("room", "not known: " + contradiction.refusal().text());
        }
    }
}
