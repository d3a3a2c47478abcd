package org.satline.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.visit.VisitReport;
import org.satline.wording.StepText;
import org.satline.wording.VisitLines;
import org.satline.wording.Wording;

/** Why: what decided the action, what is to be supplied, and how each number was found. */
final class WhyScreen {
    /** The last step of the derivation of what a line says. */
    private static final Map<String, List<String>> BEHIND = Map.of(
            "ACTION", List.of("superheat", "subcooling"),
            "LEVEL", List.of("superheatLessTarget", "subcoolingLessTarget"),
            "AMOUNT", List.of("chargeError"),
            "STOP_READING", List.of("contentsByScale"),
            "NEVER_PASS", List.of("neverPass", "roomLeft"));

    private final Page page;

    WhyScreen(Page page) {
        this.page = page;
    }

    Node node() {
        Node screen = Node.of("section", "card").set("aria-labelledby", "heading");
        screen.add(Node.of("h2").set("id", "heading").set("tabindex", "-1").text(page.text("way.why")));
        Optional<VisitReport> report = page.answer().report();
        if (report.isEmpty()) {
            return screen.add(Node.of("p").text(page.text("answer.begin")));
        }
        Wording wording = page.texts().wording();
        VisitLines lines = VisitLines.of(report.get(), wording);
        points(screen, page.text("why.because"), lines.because());
        points(screen, wording.message("page.supply"), lines.supply());
        screen.add(Node.of("h3").text(wording.message("page.steps")));
        List<String> open = BEHIND.getOrDefault(page.touched(), List.of());
        for (Step step : report.get().steps()) {
            screen.add(derivation(wording.of(step), open.contains(step.key())));
        }
        points(
                screen,
                wording.message("page.cautions"),
                report.get().cautions().stream().map(wording::of).toList());
        return screen;
    }

    private static void points(Node screen, String heading, List<String> points) {
        if (points.isEmpty()) {
            return;
        }
        Node list = Node.of("ul");
        points.forEach(point -> list.add(Node.of("li").text(point)));
        screen.add(Node.of("h3").text(heading), list);
    }

    private Node derivation(StepText step, boolean open) {
        Wording wording = page.texts().wording();
        Node details = Node.of("details", "derivation")
                .add(Node.of("summary")
                        .add(
                                Node.of("span").text(step.name() + " "),
                                Node.of("b").text(step.result())));
        Node facts = Node.of("dl", "facts");
        fact(facts, wording.message("page.formula"), step.formula());
        fact(facts, wording.message("page.numbers"), String.join(", ", step.given()));
        fact(facts, wording.message("page.source"), step.source());
        details.add(facts);
        return open ? details.set("open", "") : details;
    }

    private static void fact(Node facts, String name, String value) {
        if (!value.isEmpty()) {
            facts.add(Node.of("div").add(Node.of("dt").text(name), Node.of("dd").text(value)));
        }
    }
}
