package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes the notes of a picture below it, as text that can be searched and copied. */
final class SvgNotes {
    private static final int SIZE = 11;
    private static final int LINE = 15;
    /** Characters in a line: faces of ordinary width take some 0.54 of their size on average. */
    private static final int WIDTH = (Look.WIDTH - 24) * 100 / (SIZE * 54);

    private SvgNotes() {}

    static void write(Element root, Picture picture) {
        List<String> lines = new ArrayList<>();
        picture.notes().forEach(note -> lines.addAll(wrapped(note)));
        Document document = root.getOwnerDocument();
        int height = picture.height() + 8 + LINE * lines.size();
        SvgText.size(root, height);
        int y = picture.height() + SIZE;
        for (String line : lines) {
            Element text = document.createElementNS(SvgText.SVG, "text");
            text.setAttribute("x", "12");
            text.setAttribute("y", String.valueOf(y));
            text.setAttribute("font-family", "sans-serif");
            text.setAttribute("font-size", String.valueOf(SIZE));
            text.setTextContent(line);
            root.appendChild(text);
            y += LINE;
        }
    }

    private static List<String> wrapped(String note) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : note.split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
