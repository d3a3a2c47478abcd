package org.satline.program.visit;

import java.util.Optional;
import org.satline.cylinder.CylinderStamps;
import org.satline.cylinder.FillAssessment;
import org.satline.cylinder.FillAssessment.CandidateOutcome;
import org.satline.cylinder.FillRule;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Room;
import org.satline.cylinder.RuleOutcome;
import org.satline.cylinder.RuleOutcome.MassLimit;
import org.satline.program.file.Sheet;
import org.satline.quantity.Mass;
import org.satline.visit.CylinderReport;
import org.satline.visit.VisitReport;

/** The part of the page on the room in the recovery cylinder, with every fill rule beside the others. */
final class CylinderSection {
    private final Sheet sheet;

    CylinderSection(Sheet sheet) {
        this.sheet = sheet;
    }

    void room(VisitReport report) {
        report.cylinder().ifPresent(this::cylinder);
    }

    void rules(VisitReport report) {
        report.cylinder().ifPresent(this::rules);
    }

    private void cylinder(CylinderReport cylinder) {
        sheet.heading("Cylinder");
        sheet.row(
                "cylinder",
                cylinder.cylinder().name() + "; " + stamps(cylinder.cylinder().stamps()));
        for (Refusal refusal : cylinder.refusals()) {
            sheet.row("DO NOT FILL", refusal.text() + " [" + refusal.basis() + "]");
        }
        if (!cylinder.isRefused()) {
            cylinder.assessment().governing().ifPresent(limit -> sheet.row("limit", limit(limit)));
        }
        cylinder.room().ifPresent(this::room);
    }

    private static String stamps(CylinderStamps stamps) {
        return stamps.specification().map(mark -> mark + ", ").orElse("") + "WC " + Both.of(stamps.waterCapacity())
                + ", TW " + Both.of(stamps.tare());
    }

    private void rules(CylinderReport cylinder) {
        FillAssessment assessment = cylinder.assessment();
        Optional<Mass> contents = cylinder.room().map(Room::contents);
        sheet.heading("Fill rules side by side"
                + (cylinder.isRefused() ? "; the cylinder MUST NOT BE FILLED all the same" : ""));
        String governing =
                assessment.governing().map(limit -> limit.rule().name()).orElse("");
        for (CandidateOutcome each : assessment.outcomes()) {
            FillRule rule = each.outcome().rule();
            boolean chosen = assessment.question().jurisdiction().rules().contains(rule);
            sheet.item((rule.basis() == FillRule.Basis.LAW ? "law" : "practice")
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
            return "at most " + Both.down(limit.maximumContents())
                    + contents.map(inside -> margin(FillAssessment.marginKilograms(limit, inside)))
                            .orElse("");
        }
        if (outcome instanceof RuleOutcome.PressureTest test) {
            return (test.passed() ? "kept, margin " : "BROKEN by ")
                    + Both.of(test.margin().abs());
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
        return kilograms < 0 ? ", OVER IT by " + Both.of(amount) : ", " + Both.down(amount) + " left";
    }

    private static String limit(MassLimit limit) {
        return "contents at most " + Both.down(limit.maximumContents()) + ", gross at most "
                + Both.down(limit.maximumGross()) + ", by rule " + limit.rule().name() + ": "
                + limit.rule().inequality() + " [" + limit.rule().citation() + "]";
    }

    private void room(Room room) {
        if (room instanceof Room.Left left) {
            sheet.row("contents", Both.of(left.contents()));
            sheet.row("room", Both.down(left.room()));
            sheet.row("stop at", "scale reading " + Both.down(left.stopReading()));
        } else if (room instanceof Room.Overfilled over) {
            sheet.row("contents", Both.of(over.contents()) + ", OVER THE LIMIT by " + Both.of(over.excess()));
        } else if (room instanceof Room.Full full) {
            sheet.row("contents", Both.of(full.contents()) + "; full: nothing more may go in");
        } else if (room instanceof Room.Contradiction contradiction) {
            sheet.row("room", "not known: " + contradiction.refusal().text());
        }
    }
}
