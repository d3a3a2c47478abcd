package org.satline.program.visit;

import java.util.List;
import org.satline.explanation.Finding;
import org.satline.program.page.Block;
import org.satline.program.page.Page;
import org.satline.visit.ActionKind;
import org.satline.visit.VisitReport;
import org.satline.wording.Language;
import org.satline.wording.VisitLines;
import org.satline.wording.Wording;

/**
 * Lays out the report of a visit as one page: the lines that matter, the plan, what is to be supplied, why; all the rest where it is asked
 * for.
 */
public final class VisitPage {
    private VisitPage() {}

    /**
     * Lays out a report.
     *
     * @param report the report
     * @param wording the reader's language and units
     * @param detail how much is shown
     * @return the page, with the places for its pictures
     */
    public static List<Block> blocks(VisitReport report, Wording wording, Detail detail) {
        Page page = new Page();
        VisitLines lines = VisitLines.of(report, wording);
        String title = report.visit().title();
        page.title(title.isBlank() ? wording.message("page.untitled") : title);
        page.add(brief(lines.top()));
        plan(report, lines, wording, page);
        section("page.supply", lines.supply(), wording, page);
        section("page.because", lines.because(), wording, page);
        if (detail == Detail.SHORT) {
            report.properties()
                    .warnings()
                    .forEach(warning -> page.row(wording.message("page.warning"), wording.of(warning)));
            page.add(new Block.Place(Block.Spot.SYSTEM)).add(new Block.Place(Block.Spot.CYLINDER));
        } else {
            new FullPage(report, wording, detail, page).write();
        }
        page.add(new Block.Gap());
        page.line(wording.message("page.footer"));
        page.line(wording.message("page.footer.codes"));
        if (!wording.language().equals(Language.ENGLISH)) {
            page.line(wording.message("page.footer.translated"));
        }
        return page.blocks();
    }

    /**
     * Lays out the dangers of a visit that cannot be read as a whole.
     *
     * @param dangers what the readable part shows
     * @param wording the reader's language and units
     * @return the page
     */
    public static List<Block> dangers(List<Finding> dangers, Wording wording) {
        return List.of(
                brief(VisitLines.dangers(dangers, wording)), new Block.Paragraph(wording.message("page.unreadable")));
    }

    private static Block brief(List<VisitLines.Line> lines) {
        return new Block.Brief(lines.stream()
                .map(line -> new Block.BriefLine(line.name(), line.rows(), line.topic() == VisitLines.Topic.DANGER))
                .toList());
    }

    private static void plan(VisitReport report, VisitLines lines, Wording wording, Page page) {
        if (report.action().kind() == ActionKind.PREPARE && report.noPlan().isPresent()) {
            page.heading(wording.message("page.plan"));
            page.line(
                    wording.message("finding." + report.noPlan().get().reason().word()));
            page.line(VisitLines.parts(report.noPlan().get(), wording));
        } else if (!lines.plan().isEmpty()) {
            page.heading(wording.message("page.plan"));
        }
        for (VisitLines.Phase phase : lines.plan()) {
            page.subheading(phase.name());
            page.add(new Block.Acts(phase.acts()));
            phase.notes().forEach(note -> page.row(wording.message("page.note"), note));
        }
    }

    private static void section(String key, List<String> items, Wording wording, Page page) {
        if (!items.isEmpty()) {
            page.heading(wording.message(key));
            page.add(new Block.Points(items));
        }
    }
}
