package org.satline.program.visit;

import java.util.List;
import org.satline.explanation.Step;
import org.satline.program.file.Sheet;
import org.satline.program.file.TextSheet;

/** Lays out how each number was found. */
public final class ExplainPage {
    private ExplainPage() {}

    /**
     * Lays out steps.
     *
     * @param steps in order
     * @return numbered steps, each with formula, numbers, result and source
     */
    public static String of(List<Step> steps) {
        TextSheet sheet = new TextSheet();
        write(steps, sheet);
        return sheet.toString();
    }

    /**
     * Writes steps on a sheet.
     *
     * @param steps in order
     * @param sheet receives them
     */
    public static void write(List<Step> steps, Sheet sheet) {
        sheet.heading("How each number was found");
        int number = 1;
        for (Step step : steps) {
            sheet.subheading(number++ + ". " + step.name());
            sheet.row("   formula", step.formula());
            sheet.row("   numbers", step.substitution());
            sheet.row("   result", step.result());
            sheet.row("   source", step.source());
        }
    }
}
