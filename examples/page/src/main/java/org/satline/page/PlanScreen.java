package org.satline.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.visit.ActionKind;
import org.satline.visit.NextAction;
import org.satline.visit.VisitReport;
import org.satline.wording.VisitLines;
import org.satline.wording.Wording;

/** What the hands do: the picture of the hook-up, the acts with a tick for each, the wait, and the next readings. */
final class PlanScreen {
    private static final int SECOND_MS = 1000;

    private final Page page;
    private final Node picture = Node.of("div", "picture");
    private final List<Act> acts = new ArrayList<>();

    PlanScreen(Page page) {
        this.page = page;
    }

    Node node() {
        Node screen = Node.of("section", "card").set("aria-labelledby", "heading");
        screen.add(Node.of("h2").set("id", "heading").set("tabindex", "-1").text(page.text("way.plan")));
        Optional<VisitReport> report = page.answer().report();
        if (report.isEmpty()) {
            return screen.add(Node.of("p").text(page.text("answer.begin")));
        }
        plan(report.get(), screen);
        wait(report.get(), screen);
        return screen.add(Node.button("step next wide", page.text("newReadings"), page::next)
                .set("id", "again"));
    }

    private void plan(VisitReport report, Node screen) {
        Wording wording = page.texts().wording();
        Optional<HookUpPlan.Planned> planned = report.actsNow();
        if (planned.isEmpty()) {
            screen.add(Node.of("p").text(page.text("plan.none")));
            report.noPlan()
                    .filter(none -> report.action().kind() == ActionKind.PREPARE)
                    .ifPresent(none -> {
                        screen.add(Node.of("p")
                                .text(wording.message("finding." + none.reason().word())));
                        none.parts().forEach(part -> screen.add(Node.of("p").text(wording.name(part))));
                    });
            return;
        }
        planned.get().phases().forEach(phase -> acts.addAll(phase.acts()));
        page.ticks().of(acts.toString());
        screen.add(picture);
        int number = 0;
        for (VisitLines.Phase phase : VisitLines.of(report, wording).plan()) {
            screen.add(Node.of("h3").text(phase.name()));
            Node list = Node.of("ol", "acts").set("start", String.valueOf(number + 1));
            for (String act : phase.acts()) {
                list.add(act(number, act));
                number++;
            }
            screen.add(list);
            phase.notes()
                    .forEach(note -> screen.add(Node.of("p", "note").text(wording.message("page.note") + ": " + note)));
        }
        draw(report);
    }

    private Node act(int number, String text) {
        String id = "act-" + number;
        Node box = Node.of("input").set("type", "checkbox").set("id", id);
        if (page.ticks().isDone(number)) {
            box.set("checked", "");
        }
        box.on("change", () -> {
            page.ticks().turn(number);
            page.answer().report().ifPresent(this::draw);
        });
        return Node.of("li")
                .set("id", "item-" + number)
                .add(box, Node.of("label").set("for", id).text((number + 1) + ". " + text));
    }

    /** The picture with the first act that is not done lit up, and the same act marked in the list. */
    private void draw(VisitReport report) {
        int now = 0;
        while (now < acts.size() && page.ticks().isDone(now)) {
            now++;
        }
        Optional<Act> act = now < acts.size() ? Optional.of(acts.get(now)) : Optional.empty();
        for (int i = 0; i < acts.size(); i++) {
            Node item = Node.known("item-" + i);
            // the list stands in the document only after the first drawing
            if (item.element() != null) {
                item.set("class", i == now ? "now" : "");
            }
        }
        picture.cleared().add(new HookUpPicture(page, report, act, now + 1).node());
        if (Node.known("item-" + now).element() == null) {
            Browser.later(() -> mark(0), 0);
        }
    }

    private void mark(int ignored) {
        for (int i = 0; i < acts.size(); i++) {
            Node item = Node.known("item-" + i);
            if (item.element() != null && !page.ticks().isDone(i)) {
                item.set("class", "now");
                return;
            }
        }
    }

    private void wait(VisitReport report, Node screen) {
        if (!(report.action() instanceof NextAction.Move move)) {
            return;
        }
        double settling = move.step().settling().toMillis();
        Node clock = Node.of("p", "clock").set("role", "timer").set("id", "clock");
        Node start = Node.button("step wide", page.text("wait.start"), () -> {
            page.ticks().waitUntil(Browser.now() + settling);
            tick();
        });
        screen.add(
                Node.of("h3").text(page.text("wait")),
                clock.text(minutes(page.ticks().waitUntil() == 0 ? settling : left())),
                start.set("id", "wait"));
        if (page.ticks().waitUntil() != 0) {
            Browser.later(this::tick, 0);
        }
    }

    private double left() {
        return Math.max(0, page.ticks().waitUntil() - Browser.now());
    }

    private void tick() {
        Node clock = Node.known("clock");
        if (clock.element() == null || page.ticks().waitUntil() == 0) {
            return; // another screen is shown; the end of the wait is kept
        }
        if (left() > 0) {
            clock.set("class", "clock runs").text(minutes(left()));
            Browser.later(this::tick, SECOND_MS);
        } else {
            clock.set("class", "clock over").text(page.text("wait.over"));
            Browser.shake();
        }
    }

    private static String minutes(double milliseconds) {
        long seconds = (long) Math.ceil(milliseconds / SECOND_MS);
        long rest = seconds % 60;
        return seconds / 60 + ":" + (rest < 10 ? "0" : "") + rest;
    }
}
