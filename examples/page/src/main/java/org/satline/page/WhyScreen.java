package org.satline.page;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.step.StepAdvice;
import org.satline.visit.VisitReport;
import org.satline.wording.VisitLines;
import org.satline.wording.Wording;

/** Why: what decided the action, what is to be supplied, and how each number was found. */
final class WhyScreen {
    /** How large the step is and how long it takes: found by weighing, so that reasons stand in place of a formula. */
    private static final String ADVICE = "advice";

    private static final List<String> MARGINS = List.of("superheat", "subcooling");
    private static final List<String> DEVIATIONS = List.of("superheatLessTarget", "subcoolingLessTarget");

    private final Page page;

    WhyScreen(Page page) {
        this.page = page;
    }

    /** The last steps of the derivation of what a line on top says. */
    static List<String> stepsBehind(VisitLines.Topic topic) {
        return switch (topic) {
            case ACTION, READ_THEN -> MARGINS;
            case REASON, LEVEL -> DEVIATIONS;
            case AMOUNT -> List.of(ADVICE, "chargeError");
            case WAIT -> List.of(ADVICE);
            case STOP_READING -> List.of(ADVICE, "contentsByScale");
            case NEVER_PASS -> List.of("neverPass", "roomLeft");
            case PATH, HOSE -> List.of("drivingPressure");
            case DANGER ->
                List.of("contentsByScale", "largestContents", "vesselPressure", "offSaturation", "bubblePoint");
            case SUPPLY, CAUTION -> List.of();
        };
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
        report.get().advice().filter(each -> !each.reasons().isEmpty()).ifPresent(each -> screen.add(advice(each)));
        for (Step step : report.get().steps()) {
            screen.add(new Derivation(wording, step).node(page.touched().contains(step.key())));
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

    private Node advice(StepAdvice advice) {
        Wording wording = page.texts().wording();
        Node list = Node.of("ul");
        advice.reasons().forEach(reason -> list.add(Node.of("li").text(wording.of(reason))));
        Node details = Node.of("details", "derivation")
                .add(Node.of("summary").add(Node.of("span").text(page.text("why.advice"))), list);
        return page.touched().contains(ADVICE) ? details.set("open", "") : details;
    }
}
