package org.satline.program.audit;

import java.util.List;
import java.util.StringJoiner;
import org.satline.audit.AuditSummary;
import org.satline.audit.AuditSummary.Bias;
import org.satline.audit.AuditSummary.Constant;
import org.satline.audit.answer.AuditOutcome.Compared;
import org.satline.audit.answer.AuditOutcome.NotComparable;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.answer.Comparison;
import org.satline.audit.cause.LikelyCause;
import org.satline.audit.cause.Mistake;
import org.satline.program.file.Shown;
import org.satline.program.page.Page;
import org.satline.program.page.PageText;
import org.satline.program.page.Printed;
import org.satline.refrigerant.Catalogue;

/** An audit as a page of text: what probably went wrong first, then the rows farthest off. */
public final class AuditPage {
    private static final int MOST_IDS = 8;

    private AuditPage() {}

    /**
     * Returns the page of a report.
     *
     * @param file name of the file that was audited
     * @param summary the summary
     * @param met what was met on the way
     * @return the page
     */
    public static String of(String file, AuditSummary summary, RowNotes met) {
        Page page = new Page().title("Answers compared with the equations");
        int rows = summary.within() + summary.outside() + summary.notComparable();
        page.row("file", file)
                .row("data", Catalogue.standard().dataVersion())
                .row(
                        "rows",
                        rows + ": " + summary.within() + " within tolerance, " + summary.outside() + " outside, "
                                + summary.notComparable() + " not comparable");
        if (!met.repeatedIds().isEmpty()) {
            page.row(
                    "note",
                    "ids that more than one row has, so that a cause may name the wrong one: "
                            + ids(met.repeatedIds(), met.repeatedIds().size()));
        }
        causes(page, summary);
        worst(page, summary);
        biases(page, summary);
        refused(page, summary, met);
        return PageText.of(page.blocks());
    }

    private static void causes(Page page, AuditSummary summary) {
        if (summary.outside() == 0 && summary.causes().isEmpty()) {
            return;
        }
        page.heading("Likely causes");
        for (LikelyCause cause : summary.causes()) {
            page.row(cause.refrigerant(), AuditWords.of(cause))
                    .row(
                            "",
                            "explains " + cause.explained() + " of " + rows(cause.candidates())
                                    + (cause.withinTolerance()
                                            ? " within tolerance that differ by more than their digits and"
                                            : " outside")
                                    + " to which it could apply: " + ids(cause.ids(), cause.explained())
                                    + "; chance of coincidence "
                                    + chance(cause.coincidence()));
            for (Mistake other : cause.alternatives()) {
                page.row("", "fits as many: " + AuditWords.of(other));
            }
        }
        for (LikelyCause cause : summary.unproven()) {
            page.row(
                    cause.refrigerant(),
                    "fits, but these digits cannot prove it: " + AuditWords.of(cause) + " (" + cause.explained()
                            + " of "
                            + rows(cause.candidates()) + " outside; chance of coincidence "
                            + chance(cause.coincidence())
                            + "); more digits or more rows would tell");
        }
        for (Constant each : summary.constants()) {
            boolean ratio = each.kind() == Constant.Kind.RATIO;
            page.row(
                    each.refrigerant(),
                    each.quantity().label()
                            + (ratio ? " in " + each.unit() + ": constant ratio " : ": constant difference ")
                            + (ratio
                                    ? Printed.figure("%.4g", each.value()) + " of answer to ours over all "
                                    : Printed.figure("%+.3g ", each.value()) + each.unit()
                                            + " of answer less ours over all ")
                            + rows(each.rows()) + (ratio ? " outside" : " compared")
                            + "; no mistake that is tried makes it");
        }
        if (summary.unexplained() > 0) {
            page.row("no cause", rows(summary.unexplained()) + " outside fit no mistake that is tried");
        }
    }

    private static String rows(int count) {
        return count + (count == 1 ? " row" : " rows");
    }

    private static String chance(double chance) {
        return chance < 1e-4 ? "below 1 in 10000" : Printed.figure("about %.2g", chance);
    }

    private static String ids(List<String> ids, int all) {
        String first = String.join(", ", ids.subList(0, Math.min(MOST_IDS, ids.size())));
        return Shown.line(all > MOST_IDS ? first + " and " + (all - MOST_IDS) + " more" : first);
    }

    private static void worst(Page page, AuditSummary summary) {
        if (summary.worst().isEmpty()) {
            return;
        }
        page.heading("Farthest outside");
        for (Compared row : summary.worst()) {
            Comparison c = row.comparison();
            page.row(
                    Shown.line(row.row().id()),
                    row.designation() + " " + row.row().quantity() + " at " + asked(row.row()) + ": answer "
                            + row.row().answer() + ", ours " + figure(c.ours()) + ", difference "
                            + figure(c.difference()) + ", tolerance "
                            + figure(c.tolerance().width()) + " "
                            + c.unit() + " (" + AuditWords.of(c.tolerance().origin()) + ")");
        }
    }

    private static String asked(AuditRow row) {
        StringJoiner asked = new StringJoiner(", ");
        row.temperatureK().ifPresent(t -> asked.add(Printed.given(t) + " K"));
        row.pressurePa().ifPresent(p -> asked.add(Printed.given(p) + " Pa"));
        row.altitude().ifPresent(h -> asked.add(Printed.given(h.metres()) + " m"));
        return asked.toString();
    }

    private static void biases(Page page, AuditSummary summary) {
        if (summary.biases().isEmpty()) {
            return;
        }
        page.heading("Mean of answer less ours");
        for (Bias bias : summary.biases()) {
            page.row(
                    bias.refrigerant(),
                    bias.quantity().label() + ": " + figure(bias.meanDifference()) + " +/- "
                            + Printed.figure("%.2g", bias.uncertainty()) + " " + bias.unit() + ", "
                            + tenths(bias.meanInTolerances())
                            + " times the tolerance"
                            + bias.ratio().map(AuditPage::ratio).orElse("")
                            + ", over "
                            + rows(bias.rows()));
        }
    }

    private static String ratio(AuditSummary.Ratio ratio) {
        return "; ratio " + Printed.figure("%.6g", ratio.mean()) + " +/- "
                + Printed.figure("%.2g", ratio.uncertainty());
    }

    private static void refused(Page page, AuditSummary summary, RowNotes met) {
        if (met.refused().isEmpty()) {
            return;
        }
        page.heading("Not comparable");
        for (NotComparable row : met.refused()) {
            page.row(Shown.line(row.row().id()), Shown.line(row.explanation()));
        }
        int more = summary.notComparable() - met.refused().size();
        if (more > 0) {
            page.line(rows(more) + " more; --csv lists them all");
        }
    }

    private static String tenths(double value) {
        String rounded = Printed.figure("%.1f", value);
        return rounded.equals("-0.0") ? "0.0" : rounded;
    }

    private static String figure(double value) {
        return Printed.figure("%.6g", value);
    }
}
