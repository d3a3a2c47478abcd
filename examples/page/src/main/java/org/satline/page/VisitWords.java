package org.satline.page;

import org.satline.visit.VisitReport;
import org.satline.wording.VisitLines;
import org.satline.wording.Wording;

/** All words of a report, one after the other, for comparing them. */
final class VisitWords {
    private VisitWords() {}

    static String of(VisitReport report, Wording wording) {
        StringBuilder words = new StringBuilder();
        VisitLines lines = VisitLines.of(report, wording);
        lines.top()
                .forEach(line -> words.append(line.name())
                        .append(' ')
                        .append(line.text())
                        .append('\n'));
        lines.plan().forEach(phase -> words.append(phase).append('\n'));
        lines.supply().forEach(each -> words.append(each).append('\n'));
        report.findings().forEach(each -> words.append(wording.of(each)).append('\n'));
        report.cautions().forEach(each -> words.append(wording.of(each)).append('\n'));
        report.steps().forEach(each -> words.append(wording.of(each)).append('\n'));
        return words.toString();
    }
}
