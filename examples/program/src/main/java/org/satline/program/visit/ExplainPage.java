package org.satline.program.visit;

import java.util.List;
import org.satline.explanation.Step;
import org.satline.program.page.Page;
import org.satline.wording.StepText;
import org.satline.wording.Wording;

/** Lays out how each number was found. */
final class ExplainPage {
    private ExplainPage() {}

    static void add(List<Step> steps, Wording wording, Page page) {
        page.heading(wording.message("page.steps"));
        int number = 1;
        for (Step step : steps) {
            StepText text = wording.of(step);
            page.subheading(number++ + ". " + text.name());
            page.row(wording.message("page.formula"), text.formula());
            if (!text.given().isEmpty()) {
                page.row(wording.message("page.numbers"), String.join(", ", text.given()));
            }
            page.row(wording.message("page.result"), text.result());
            page.row(wording.message("page.source"), text.source());
        }
    }
}
