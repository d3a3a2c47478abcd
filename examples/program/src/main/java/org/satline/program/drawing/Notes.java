package org.satline.program.drawing;

import java.util.ArrayList;
import java.util.List;

/** What stands below a chart, as text that can be searched and copied. */
final class Notes {
    private static final int SIZE = 11;
    private static final int LINE = 15;
    private static final int LEFT = 12;

    private final List<String> lines = new ArrayList<>();

    Notes(List<String> notes) {
        notes.forEach(this::wrap);
    }

    private void wrap(String note) {
        StringBuilder line = new StringBuilder();
        for (String word : note.split(" ", -1)) {
            String longer = line.length() > 0 ? line + " " + word : word;
            if (line.length() > 0 && TextWidth.atMost(longer, SIZE, Shape.Weight.PLAIN) > Chart.WIDTH - 2 * LEFT) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
    }

    int height() {
        return lines.isEmpty() ? 0 : 8 + LINE * lines.size();
    }

    List<Shape> shapes(double top) {
        List<Shape> shapes = new ArrayList<>();
        double y = top + SIZE;
        for (String line : lines) {
            shapes.add(new Shape.Text(
                    line,
                    new Point(LEFT, y),
                    Shape.Anchor.START,
                    SIZE,
                    Shape.Weight.PLAIN,
                    Shape.Turn.LEVEL,
                    Shape.Rim.NONE));
            y += LINE;
        }
        return shapes;
    }
}
