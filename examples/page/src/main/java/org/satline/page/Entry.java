package org.satline.page;

import org.satline.quantity.UnitSystem;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.ReportFields;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Language;
import org.satline.wording.Wording;
import org.teavm.jso.JSExport;

/** Where the page starts, and what it offers to a script that compares it with the library elsewhere. */
public final class Entry {
    private Entry() {}

    /**
     * Shows the page.
     *
     * @param args none
     */
    public static void main(String[] args) {
        new Page().show();
    }

    /**
     * Answers one visit.
     *
     * @param json the visit file
     * @param language {@code en} or {@code es}
     * @param si whether SI units stand first
     * @return the report as JSON in one line, then its words; one line with the refusal where the file cannot be used
     */
    @JSExport
    public static String answer(String json, String language, boolean si) {
        VisitReport report;
        try {
            report = VisitReporter.report(VisitFile.read(PageJson.read(json)));
        } catch (IllegalArgumentException e) {
            return "refused: " + e.getMessage();
        }
        Wording wording = Wording.of(new Language(language), si ? UnitSystem.SI : UnitSystem.US);
        return PageJson.line(ReportFields.of(report)) + "\n" + VisitWords.of(report, wording);
    }
}
