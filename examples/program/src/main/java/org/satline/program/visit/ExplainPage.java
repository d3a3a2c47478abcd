package org.satline.program.visit;

import java.util.List;
import org.satline.explanation.Step;
import org.satline.program.page.Block;
import org.satline.program.page.Page;
import org.satline.program.page.PageText;

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
        return PageText.of(blocks(steps));
    }

    /**
     * Lays out steps as blocks.
     *
     * @param steps in order
     * @return numbered steps
     */
    public static List<Block> blocks(List<Step> steps) {
        Page page = new Page();
        page.heading("How each number was found");
        int number = 1;
        for (Step step : steps) {
            page.subheading(number++ + ". " + step.name());
            page.row("   formula", step.formula());
            page.row("   numbers", step.substitution());
            page.row("   result", step.result());
            page.row("   source", step.source());
        }
        return page.blocks();
    }
}
