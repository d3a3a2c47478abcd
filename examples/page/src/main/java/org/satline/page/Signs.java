package org.satline.page;

/** The signs on the ways at the foot: plain forms, each with its word below. */
final class Signs {
    private Signs() {}

    static Node of(Page.Screen screen) {
        Node svg = Node.svg("svg")
                .set("viewBox", "0 0 24 24")
                .set("aria-hidden", "true")
                .set("class", "sign");
        return svg.add(Node.svg("path")
                .set(
                        "d",
                        switch (screen) {
                            // lines to fill in
                            case ASK -> "M4 6h10M4 12h16M4 18h7";
                            // the two triangles of a valve in a line, ISO 14617-8
                            case PLAN -> "M1 12h4M19 12h4M5 6v12L19 6v12Z";
                            // an upright vessel with its neck
                            case CYLINDER -> "M10 2h4v4h-4zM6 9a3 3 0 0 1 3-3h6a3 3 0 0 1 3 3v13H6Z";
                            // a rising line between two axes
                            case CHART -> "M3 2v19h19M6 17c7 0 11-4 13-12";
                            // a sum: what goes in, a stroke, what comes out
                            case WHY -> "M5 5h14M5 11h14M3 16h18M9 21h10";
                            // three knobs on their slots
                            case MORE, UNIT, SHEET, AUDIT -> "M3 6h18M3 12h18M3 18h18M8 4v4M15 10v4M10 16v4";
                        }));
    }
}
