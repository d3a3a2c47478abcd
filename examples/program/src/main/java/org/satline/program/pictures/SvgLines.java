package org.satline.program.pictures;

import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Joins the pieces of a curve. The chart library draws each piece as a line of its own, and every one would begin its dashes anew: short
 * pieces would look like a solid line.
 */
final class SvgLines {
    private SvgLines() {}

    static void join(Element parent) {
        Element chain = null;
        for (Node child = parent.getFirstChild(); child != null; ) {
            Node next = child.getNextSibling();
            if (child instanceof Element element && element.getTagName().equals("line")) {
                if (chain != null && continues(chain, element)) {
                    chain.setAttribute("points", chain.getAttribute("points") + " " + point(element, "x2", "y2"));
                    parent.removeChild(element);
                } else {
                    chain = polyline(element);
                    parent.replaceChild(chain, element);
                }
            } else {
                chain = null;
                if (child instanceof Element inner) {
                    join(inner);
                }
            }
            child = next;
        }
    }

    private static boolean continues(Element chain, Element line) {
        return chain.getAttribute("style").equals(line.getAttribute("style"))
                && chain.getAttribute("points").endsWith(" " + point(line, "x1", "y1"));
    }

    private static Element polyline(Element line) {
        Element chain = line.getOwnerDocument().createElementNS(SvgText.SVG, "polyline");
        chain.setAttribute("style", line.getAttribute("style"));
        chain.setAttribute("points", point(line, "x1", "y1") + " " + point(line, "x2", "y2"));
        return chain;
    }

    private static String point(Element line, String x, String y) {
        return line.getAttribute(x) + "," + line.getAttribute(y);
    }
}
