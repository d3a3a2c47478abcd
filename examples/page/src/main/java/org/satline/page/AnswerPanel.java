package org.satline.page;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.satline.visit.VisitReport;
import org.satline.wording.VisitLines;

/** The lines that matter, on top of every screen: the first always, all when it is opened. */
final class AnswerPanel {
    private static final String OPEN = "lines";
    private static final String SHUT = "shut";
    private static final Set<VisitLines.Topic> ALWAYS =
            EnumSet.of(VisitLines.Topic.DANGER, VisitLines.Topic.ACTION, VisitLines.Topic.LEVEL);

    private final Page page;

    AnswerPanel(Page page) {
        this.page = page;
    }

    void show() {
        Node panel = Node.known("answer")
                .cleared()
                .set("aria-label", page.text("answer"))
                .set("aria-busy", "false");
        Answer answer = page.answer();
        Optional<VisitReport> report = answer.report();
        List<VisitLines.Line> lines = report.isPresent()
                ? VisitLines.top(report.get(), page.texts().wording())
                : VisitLines.dangers(answer.dangers(), page.texts().wording());
        if (page.isAside()) {
            aside(panel, lines);
            return;
        }
        panel.without("class");
        lines(panel, lines);
        if (report.isEmpty()) {
            panel.add(Node.of("p", "lacking").text(lacking(answer)));
        }
    }

    /** Beside what is not about the visit its answer would mislead; a danger stands everywhere. */
    private void aside(Node panel, List<VisitLines.Line> lines) {
        Node list = Node.of("dl", "lines");
        List<VisitLines.Line> dangers = lines.stream()
                .filter(line -> line.topic() == VisitLines.Topic.DANGER)
                .toList();
        dangers.forEach(line -> list.add(row(line, true)));
        panel.set("class", dangers.isEmpty() ? "nothing" : "aside");
        if (!dangers.isEmpty()) {
            panel.add(Node.of("p", "lacking").text(page.text("answer.ofVisit")), list);
        }
    }

    private String lacking(Answer answer) {
        String path = answer.field();
        boolean open = Asks.ALL.stream().anyMatch(ask -> ask.path().equals(path));
        if (path.isEmpty() || path.equals("site") || path.equals("system")) {
            return answer.problem().isEmpty() || !path.isEmpty() ? page.text("answer.begin") : answer.problem();
        }
        String name = open ? page.texts().question(path) : path;
        return page.session().answer(path).isEmpty() && open
                ? page.text("answer.lacking") + " " + name
                : page.text("answer.refused") + " " + name;
    }

    private void lines(Node panel, List<VisitLines.Line> lines) {
        // above the plan all lines stand; elsewhere two, which stand still: a growing answer would push buttons from
        // under
        // the finger
        String name = page.isPlanning() ? OPEN : OPEN + ".elsewhere";
        String usual = page.isPlanning() ? "open" : SHUT;
        String known = Browser.remembered(name);
        boolean open = !(known.isEmpty() ? usual : known).equals(SHUT);
        Node list = Node.of("dl", "lines");
        for (VisitLines.Line line : lines) {
            if (open || ALWAYS.contains(line.topic())) {
                list.add(row(line, line.topic() == VisitLines.Topic.DANGER));
            }
        }
        panel.add(list);
        if (lines.stream().anyMatch(line -> !ALWAYS.contains(line.topic()))) {
            panel.add(Node.button("fold", page.text(open ? "answer.less" : "answer.more"), () -> {
                        Browser.remember(name, open ? SHUT : "open");
                        show();
                    })
                    .set("aria-expanded", String.valueOf(open)));
        }
    }

    private Node row(VisitLines.Line line, boolean danger) {
        String style = "line-" + line.topic().name().toLowerCase(java.util.Locale.ROOT);
        List<String> steps = WhyScreen.stepsBehind(line.topic());
        return Node.of("div", danger ? "line danger" : "line " + style)
                .add(
                        Node.of("dt").text(line.name()),
                        Node.of("dd").add(Node.button("touch", line.text(), () -> page.explain(steps))));
    }
}
