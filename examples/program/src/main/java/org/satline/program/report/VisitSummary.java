package org.satline.program.report;

import java.util.ArrayList;
import java.util.List;
import org.satline.charge.Diagnosis;
import org.satline.cylinder.Refusal;
import org.satline.program.page.Block;
import org.satline.visit.CylinderReport;
import org.satline.visit.HookUpReport;
import org.satline.visit.VisitReport;

/** The head of the report: what it comes to, before all detail. */
final class VisitSummary {
    private VisitSummary() {}

    static Block of(VisitReport report) {
        List<Block.Row> rows = new ArrayList<>();
        Diagnosis diagnosis = report.diagnosis();
        rows.add(new Block.Row("Charge", diagnosis.label().replace('-', ' ')));
        diagnosis.evidence().reasons().stream().limit(1).forEach(reason -> rows.add(new Block.Row("Because", reason)));
        report.nextSteps().stream().limit(1).forEach(step -> rows.add(new Block.Row("Next", step.text())));
        List<Block.Row> alarms = new ArrayList<>();
        for (Refusal refusal : report.cylinder().map(CylinderReport::refusals).orElse(List.of())) {
            alarms.add(new Block.Row("DO NOT FILL the cylinder", refusal.text()));
        }
        for (Refusal refusal : report.hookUp().map(HookUpReport::refusals).orElse(List.of())) {
            alarms.add(new Block.Row("DO NOT CONNECT the cylinder", refusal.text()));
        }
        return new Block.Summary(rows, alarms);
    }
}
