package org.satline.program.report;

import java.util.List;
import org.satline.charge.Diagnosis;
import org.satline.cylinder.Refusal;
import org.satline.visit.CylinderReport;
import org.satline.visit.HookUpReport;
import org.satline.visit.NextStep;
import org.satline.visit.VisitReport;

/** The head of the report: what it comes to, before all detail. */
final class VisitSummary {
    private VisitSummary() {}

    static String of(VisitReport report) {
        StringBuilder html = new StringBuilder("<div class=\"summary\">\n");
        Diagnosis diagnosis = report.diagnosis();
        paragraph(html, "", "Charge", diagnosis.label().replace('-', ' '));
        List<String> reasons = diagnosis.evidence().reasons();
        if (!reasons.isEmpty()) {
            paragraph(html, "", "Because", reasons.get(0));
        }
        List<NextStep> steps = report.nextSteps();
        if (!steps.isEmpty()) {
            paragraph(html, "", "Next", steps.get(0).text());
        }
        for (Refusal refusal : report.cylinder().map(CylinderReport::refusals).orElse(List.of())) {
            paragraph(html, " class=\"alarm\"", "DO NOT FILL the cylinder", refusal.text());
        }
        for (Refusal refusal : report.hookUp().map(HookUpReport::refusals).orElse(List.of())) {
            paragraph(html, " class=\"alarm\"", "DO NOT CONNECT the cylinder", refusal.text());
        }
        return html.append("</div>\n").toString();
    }

    private static void paragraph(StringBuilder html, String attributes, String label, String text) {
        html.append("<p").append(attributes).append("><strong>").append(label).append(":</strong> ");
        html.append(Html.escaped(text)).append("</p>\n");
    }
}
