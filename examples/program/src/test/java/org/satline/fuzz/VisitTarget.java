package org.satline.fuzz;

import org.satline.json.JsonFields;
import org.satline.program.page.PageText;
import org.satline.program.visit.Detail;
import org.satline.program.visit.VisitPage;
import org.satline.quantity.PlainText;
import org.satline.quantity.UnitSystem;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Visit files from any text: refused, or reported on a page that steers no terminal; dangers are looked for even in what is refused. */
public final class VisitTarget {
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.US);

    private VisitTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Target.refusesAtMost(() -> {
            FieldValue.Fields fields = JsonFields.read(Target.text(bytes));
            VisitFile.dangersInReadablePart(fields);
            VisitReport report = VisitReporter.report(VisitFile.read(fields));
            String page = PageText.of(VisitPage.blocks(report, WORDING, Detail.FULL));
            Target.require(
                    page.codePoints().filter(c -> c != '\n').noneMatch(PlainText::isHidden), "hidden characters");
        });
    }
}
