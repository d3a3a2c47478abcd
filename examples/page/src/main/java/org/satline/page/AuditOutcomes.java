package org.satline.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.audit.AuditReport;
import org.satline.audit.AuditSummary;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditOutcome.Compared;
import org.satline.audit.answer.AuditOutcome.NotComparable;
import org.satline.audit.answer.Comparison;
import org.satline.audit.cause.LikelyCause;
import org.satline.audit.cause.Mistake;
import org.satline.explanation.Step;
import org.satline.program.page.Printed;
import org.satline.wording.Wording;

/** An audit on the page: how many agree, what probably went wrong, then every row with its derivation, those outside first. */
final class AuditOutcomes {
    private static final int MOST_ROWS = 200;
    private static final int MOST_IDS = 8;

    private final Page page;
    private final Wording wording;
    private final AuditReport report;

    AuditOutcomes(Page page, AuditReport report) {
        this.page = page;
        this.wording = page.texts().wording();
        this.report = report;
    }

    Node node() {
        AuditSummary summary = report.summary();
        Node all = Node.of("div");
        all.add(
                Node.of("h3").text(page.text("audit.outcome")),
                new Facts()
                        .add(page.text("audit.within"), String.valueOf(summary.within()))
                        .add(page.text("audit.outside"), String.valueOf(summary.outside()))
                        .add(page.text("audit.notComparable"), String.valueOf(summary.notComparable()))
                        .node());
        causes(all, summary);
        biases(all, summary);
        all.add(Node.of("h3").text(page.text("audit.rows")));
        List<AuditOutcome> rows = new ArrayList<>(summary.worst());
        report.outcomes().stream()
                .filter(each -> isOutside(each) && !rows.contains(each))
                .forEach(rows::add);
        report.outcomes().stream().filter(NotComparable.class::isInstance).forEach(rows::add);
        report.outcomes().stream().filter(each -> !rows.contains(each)).forEach(rows::add);
        rows.subList(0, Math.min(MOST_ROWS, rows.size())).forEach(each -> all.add(row(each)));
        if (rows.size() > MOST_ROWS) {
            all.add(Node.of("p").text(page.text("audit.more") + " " + (rows.size() - MOST_ROWS)));
        }
        return all;
    }

    private static boolean isOutside(AuditOutcome outcome) {
        return outcome instanceof Compared compared && !compared.within();
    }

    private void causes(Node all, AuditSummary summary) {
        if (summary.outside() == 0) {
            return;
        }
        Node list = Node.of("ul");
        for (LikelyCause cause : summary.causes()) {
            String besides = cause.besides().map(other -> "; + " + words(other)).orElse("");
            Node item = Node.of("li")
                    .add(
                            Node.of("b").text(cause.refrigerant() + ": "),
                            Node.of("span").text(words(cause.mistake()) + besides),
                            Node.of("p")
                                    .text(page.text("audit.explains") + " " + cause.explained() + "/"
                                            + cause.candidates() + ": " + ids(cause.ids())),
                            Node.of("p")
                                    .text(page.text("audit.coincidence") + " "
                                            + wording.numbers().percent(cause.coincidence())));
            cause.alternatives()
                    .forEach(other -> item.add(Node.of("p").text(page.text("audit.fitsToo") + " " + words(other))));
            list.add(item);
        }
        for (AuditSummary.Constant each : summary.constants()) {
            boolean ratio = each.kind() == AuditSummary.Constant.Kind.RATIO;
            String value = ratio
                    ? page.text("audit.ratio") + " " + Printed.figure("%.4g", each.value())
                    : page.text("audit.constant") + " " + Printed.figure("%+.3g", each.value()) + " " + each.unit();
            list.add(Node.of("li")
                    .text(each.refrigerant() + ", " + each.quantity().label() + ": " + value));
        }
        if (summary.unexplained() > 0) {
            list.add(Node.of("li").text(page.text("audit.unexplained") + " " + summary.unexplained()));
        }
        all.add(Node.of("h3").text(page.text("audit.causes")), list);
    }

    private String words(Mistake mistake) {
        return wording.name(mistake.kind()) + ": " + wording.name(mistake.code(), mistake.figures());
    }

    private static String ids(List<String> ids) {
        String first = String.join(", ", ids.subList(0, Math.min(MOST_IDS, ids.size())));
        return ids.size() > MOST_IDS ? first + ", ..." : first;
    }

    private void biases(Node all, AuditSummary summary) {
        if (summary.biases().isEmpty()) {
            return;
        }
        Facts facts = new Facts();
        for (AuditSummary.Bias bias : summary.biases()) {
            facts.add(
                    bias.refrigerant() + ", " + bias.quantity().label(),
                    figure(bias.meanDifference()) + " " + bias.unit() + " (n = " + bias.rows() + ")");
        }
        all.add(Node.of("h3").text(page.text("audit.means")), facts.node());
    }

    private Node row(AuditOutcome outcome) {
        String sort = outcome instanceof Compared compared ? compared.within() ? "within" : "outside" : "notComparable";
        Node details = Node.of("details", "derivation audited-" + sort.toLowerCase(Locale.ROOT));
        details.add(Node.of("summary")
                .add(
                        Node.of("span")
                                .text(outcome.row().id() + " \u00b7 "
                                        + outcome.row().refrigerant() + ", "
                                        + outcome.row().quantity() + ": "),
                        Node.of("b").text(page.text("audit.is." + sort))));
        if (outcome instanceof NotComparable refused) {
            return details.add(
                    Node.of("p").text(page.text("audit.reason." + PageTexts.word(refused.reason()))),
                    // what the readers of the library say is English in every language
                    Node.of("p").set("lang", "en").text(refused.explanation()));
        }
        Compared compared = (Compared) outcome;
        Comparison numbers = compared.comparison();
        String unit = " " + numbers.unit();
        details.add(new Facts()
                .add(page.text("audit.answer"), compared.row().answer() + unit)
                .add(page.text("audit.ours"), figure(numbers.ours()) + unit)
                .add(page.text("audit.difference"), figure(numbers.difference()) + unit)
                .add(
                        page.text("audit.tolerance"),
                        figure(numbers.tolerance().width()) + unit + " ("
                                + wording.name(numbers.tolerance().origin()) + ")")
                .node());
        for (Step step : compared.steps()) {
            details.add(new Derivation(wording, step).node(false));
        }
        return details;
    }

    private static String figure(double value) {
        return Printed.figure("%.6g", value);
    }
}
