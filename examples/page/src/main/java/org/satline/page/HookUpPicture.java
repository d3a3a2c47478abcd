package org.satline.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.transfer.hookup.Act;
import org.satline.visit.VisitReport;

/**
 * The hook-up as a plain drawing: the machine with its ports on top, the manifold below it, the cylinder on its scale at the foot. Valves are the two
 * triangles of ISO 14617-8, joints are circles. What the act is about has a thick ring and the number of the act.
 */
final class HookUpPicture {
    private static final int RING = 15;

    private final Page page;
    private final List<String> lit = new ArrayList<>();
    private final int number;
    private final boolean manifold;
    private final boolean pump;
    private final boolean machine;
    private final boolean source;
    private final boolean single;
    private final Node drawing = Node.svg("svg");

    HookUpPicture(Page page, VisitReport report, Optional<Act> act, int number) {
        this.page = page;
        this.number = number;
        act.ifPresent(each -> {
            lit.add(each.target());
            each.to().ifPresent(lit::add);
        });
        manifold = report.visit().hookUp().manifold().isPresent();
        List<String> places = new ArrayList<>();
        report.actsNow()
                .ifPresent(plan -> plan.acts().forEach(each -> {
                    places.add(each.target());
                    each.to().ifPresent(places::add);
                }));
        pump = places.stream().anyMatch(place -> place.startsWith("pump") || place.equals("vacuum-valve"));
        machine = places.stream().anyMatch(place -> place.startsWith("machine"));
        single = places.contains("cylinder.valve");
        source = report.connected()
                .filter(each -> each.cylinder().role() == org.satline.cylinder.Role.SOURCE)
                .isPresent();
    }

    Node node() {
        drawing.set("viewBox", "0 0 340 330").set("role", "img").set("class", "hookup");
        String said = lit.isEmpty() ? page.text("picture.hookUp") : page.text("picture.hookUp") + ": " + number;
        drawing.set("aria-label", said);
        system();
        if (manifold) {
            manifold();
        } else {
            hose("direct-hose", 250, 66, 170, 214, 215, 140);
        }
        cylinder();
        if (pump) {
            box(300, 205, "pump", "P");
            hose("pump-hose", 238, 158, 300, 187, 290, 158);
        }
        if (machine) {
            box(40, 225, "machine", "R");
        }
        return drawing;
    }

    private void system() {
        shape("rect", "body")
                .set("x", 20)
                .set("y", 8)
                .set("width", 300)
                .set("height", 40)
                .set("rx", 4);
        label(170, 33, page.text("picture.system"), "middle");
        port(90, "low-side", page.text("picture.low"));
        port(250, "liquid-line", page.text("picture.high"));
    }

    private void port(double x, String name, String word) {
        line(x, 48, x, 60, "pipe");
        joint(x, 66, name);
        label(x + 14, 62, word, "start");
    }

    private void manifold() {
        hose("low-hose", 90, 66, 90, 128, 70, 97);
        hose("high-hose", 250, 66, 250, 128, 270, 97);
        shape("rect", "body")
                .set("x", 76)
                .set("y", 128)
                .set("width", 188)
                .set("height", 34)
                .set("rx", 6);
        valve(122, 145, "low-valve");
        valve(218, 145, "high-valve");
        if (pump) {
            valve(190, 118, "vacuum-valve");
        }
        joint(90, 128, "manifold.low");
        joint(250, 128, "manifold.high");
        joint(170, 162, "manifold.centre");
        label(128, 122, page.text("picture.lowValve"), "middle");
        label(212, 122, page.text("picture.highValve"), "middle");
        hose("centre-hose", 170, 166, single ? 170 : vapour() ? 140 : 200, 232, 150, 200);
    }

    private boolean vapour() {
        return !source;
    }

    private void cylinder() {
        shape("rect", "cylinder")
                .set("x", 115)
                .set("y", 258)
                .set("width", 110)
                .set("height", 52)
                .set("rx", 16);
        shape("rect", "scale")
                .set("x", 95)
                .set("y", 313)
                .set("width", 150)
                .set("height", 9)
                .set("rx", 2);
        label(170, 290, page.text(source ? "picture.source" : "picture.receiver"), "middle");
        if (lit.contains("scale")) {
            ring(170, 317);
        }
        if (single) {
            valve(170, 245, "cylinder.valve");
            return;
        }
        valve(140, 245, "cylinder.vapour");
        valve(200, 245, "cylinder.liquid");
        label(110, 249, page.text("picture.vapour"), "end");
        label(230, 249, page.text("picture.liquid"), "start");
        if (lit.contains("cylinder")) {
            ring(170, 284);
        }
    }

    private void box(double x, double y, String name, String letter) {
        shape("circle", "body").set("cx", x).set("cy", y).set("r", 18);
        label(x, y + 5, letter, "middle");
        if (lit.stream().anyMatch(each -> each.equals(name) || each.startsWith(name + "."))) {
            ring(x, y);
        }
    }

    /** A hose with an end at each side; the end at which something is done is ringed. */
    private void hose(String name, double x, double y, double toX, double toY, double bendX, double bendY) {
        String path = "M" + x + " " + y + " Q" + bendX + " " + bendY + " " + toX + " " + toY;
        shape("path", lit.contains(name) ? "hose lit" : "hose").set("d", path);
        if (lit.contains(name + ".system")) {
            ring(x, name.equals("centre-hose") ? y + 8 : y + 6);
        }
        if (lit.contains(name + ".cylinder")) {
            ring(toX, toY - 6);
        }
    }

    private void valve(double x, double y, String name) {
        boolean now = lit.contains(name);
        shape("path", now ? "valve lit" : "valve")
                .set(
                        "d",
                        "M" + (x - 11) + " " + (y - 8) + " L" + (x + 11) + " " + (y + 8) + " L" + (x + 11) + " "
                                + (y - 8) + " L" + (x - 11) + " " + (y + 8) + " Z");
        if (now) {
            ring(x, y);
        }
    }

    private void joint(double x, double y, String name) {
        shape("circle", lit.contains(name) ? "joint lit" : "joint")
                .set("cx", x)
                .set("cy", y)
                .set("r", 6);
        if (lit.contains(name)) {
            ring(x, y);
        }
    }

    private void ring(double x, double y) {
        shape("circle", "ring").set("cx", x).set("cy", y).set("r", RING);
        shape("circle", "badge").set("cx", x + 15).set("cy", y - 15).set("r", 9);
        Node text = label(x + 15, y - 11, String.valueOf(number), "middle");
        text.set("class", "badge-number");
    }

    private void line(double x, double y, double toX, double toY, String style) {
        shape("line", style).set("x1", x).set("y1", y).set("x2", toX).set("y2", toY);
    }

    private Node label(double x, double y, String text, String anchor) {
        Node label = Node.svg("text")
                .set("x", x)
                .set("y", y)
                .set("text-anchor", anchor)
                .text(text);
        drawing.add(label);
        return label;
    }

    private Node shape(String tag, String style) {
        Node shape = Node.svg(tag).set("class", style);
        drawing.add(shape);
        return shape;
    }
}
