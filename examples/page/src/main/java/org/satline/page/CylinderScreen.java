package org.satline.page;

import java.util.List;
import java.util.Optional;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Room;
import org.satline.filling.FillAssessment;
import org.satline.quantity.Mass;
import org.satline.visit.VisitReport;
import org.satline.wording.NumberPrinter;
import org.satline.wording.Wording;

/** Each cylinder as a picture: what is in it, its limit, what it may still take. */
final class CylinderScreen {
    private static final double TOP = 30;
    private static final double HEIGHT = 190;
    private static final double ROUND = 14;

    private final Page page;

    CylinderScreen(Page page) {
        this.page = page;
    }

    Node node() {
        Node screen = Node.of("section", "card").set("aria-labelledby", "heading");
        screen.add(Node.of("h2").set("id", "heading").set("tabindex", "-1").text(page.text("way.cylinder")));
        Optional<VisitReport> report = page.answer().report();
        if (report.isEmpty() || report.get().cylinders().isEmpty()) {
            return screen.add(
                    Node.of("p").text(page.text("cylinder.none")),
                    Node.button("step wide", page.text("cylinder.ask"), () -> page.ask(Asks.VALVE)));
        }
        report.get().cylinders().forEach(each -> screen.add(one(each)));
        return screen;
    }

    private Node one(CheckedCylinder checked) {
        Wording wording = page.texts().wording();
        NumberPrinter numbers = wording.numbers();
        Node part = Node.of("div", "vessel").add(picture(checked));
        Facts facts = new Facts();
        List<String> inside = List.of("contentsByScale");
        List<String> limits = List.of("largestContents");
        List<String> left = List.of("roomLeft", "scaleMargin");
        checked.contents()
                .ifPresent(
                        read -> facts.add(page, wording.message("page.contents"), numbers.print(read.value()), inside));
        limit(checked).ifPresent(most -> facts.add(page, wording.message("page.governs"), numbers.down(most), limits));
        checked.room().ifPresent(room -> {
            if (room instanceof Room.Left some) {
                facts.add(page, wording.message("page.room"), numbers.down(some.room()), left);
                facts.add(
                        page, wording.message("page.neverPass"), numbers.down(some.neverPass()), List.of("neverPass"));
            } else if (room instanceof Room.Overfilled over) {
                facts.add(
                        page,
                        page.text("cylinder.over"),
                        numbers.up(over.excess()),
                        List.of("contentsByScale", "largestContents"));
            } else {
                facts.add(page, wording.message("page.room"), numbers.print(Mass.ofKilograms(0)), left);
            }
        });
        part.add(facts.node());
        checked.findings()
                .forEach(finding -> part.add(Node.of("p", "finding")
                        .add(
                                Node.of("b").text(wording.name(finding.severity()) + ": "),
                                Node.of("span").text(wording.of(finding)))));
        return part;
    }

    private static Optional<Mass> limit(CheckedCylinder checked) {
        return checked.fill() instanceof FillAssessment.Allowed allowed
                ? Optional.of(allowed.limit())
                : Optional.empty();
    }

    /** The height stands for mass: the top of the body for a fifth more than the limit, so that overfilling shows. */
    private Node picture(CheckedCylinder checked) {
        double inside = checked.contents().map(read -> read.value().kilograms()).orElse(0.0);
        double most = limit(checked).map(Mass::kilograms).orElse(Math.max(inside, 1));
        double scale = HEIGHT / (1.2 * Math.max(most, inside));
        double level = Math.max(0, inside * scale);
        double bottom = TOP + HEIGHT;
        boolean over = inside > most && limit(checked).isPresent();
        Node svg = Node.svg("svg")
                .set("viewBox", "0 0 260 235")
                .set("role", "img")
                .set("class", "tank")
                .set("aria-label", page.text("picture.cylinder"));
        svg.add(
                Node.svg("rect")
                        .set("class", "body")
                        .set("x", 105)
                        .set("y", 8)
                        .set("width", 30)
                        .set("height", 22),
                rect("body", TOP, HEIGHT),
                liquid(over ? "liquid over" : "liquid", bottom, level));
        if (limit(checked).isPresent()) {
            double at = bottom - most * scale;
            svg.add(
                    Node.svg("line")
                            .set("class", "limit")
                            .set("x1", 40)
                            .set("x2", 205)
                            .set("y1", at)
                            .set("y2", at),
                    text(208, at + 5, page.text("picture.limit")));
        }
        if (inside > 0) {
            svg.add(text(208, Math.min(bottom - level / 2, bottom - 4), page.text("picture.inside")));
        }
        return svg;
    }

    /** Flat on top, rounded at the foot as the body is. */
    private static Node liquid(String style, double bottom, double level) {
        double bend = Math.min(ROUND, level);
        String path = "M60 " + (bottom - level) + " H180 V" + (bottom - bend) + " Q180 " + bottom + " " + (180 - bend)
                + " " + bottom + " H" + (60 + bend) + " Q60 " + bottom + " 60 " + (bottom - bend) + " Z";
        return Node.svg("path").set("class", style).set("d", path);
    }

    private static Node rect(String style, double y, double height) {
        return Node.svg("rect")
                .set("class", style)
                .set("x", 60)
                .set("y", y)
                .set("width", 120)
                .set("height", height)
                .set("rx", ROUND);
    }

    private static Node text(double x, double y, String text) {
        return Node.svg("text").set("x", x).set("y", y).text(text);
    }
}
