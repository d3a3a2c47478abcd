package org.satline.program.pictures;

import java.util.List;
import java.util.Objects;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Drawing;
import org.satline.program.drawing.SvgWriter;
import org.satline.program.page.Escape;

/** A finished picture: what is drawn, what it shows in words, and where the numbers come from. For one thread. */
public final class Picture {
    private final Chart chart;
    private final String description;
    private final List<String> notes;

    Picture(Chart chart, String description, List<String> notes) {
        this.chart = Objects.requireNonNull(chart, "chart");
        this.description = Escape.plain(description);
        this.notes = notes.stream().map(Escape::plain).toList();
    }

    /**
     * Returns what it is.
     *
     * @return title
     */
    public String title() {
        return chart.title();
    }

    /**
     * Returns what it shows, for those who cannot see it.
     *
     * @return one or more sentences
     */
    public String description() {
        return description;
    }

    /**
     * Returns what has to stand below it: figures, assumptions, sources.
     *
     * @return lines, the source last
     */
    public List<String> notes() {
        return notes;
    }

    /**
     * Lays it out as a sheet of its own, with its notes below.
     *
     * @return the drawing
     */
    public Drawing sheet() {
        return chart.drawing(description, notes);
    }

    /**
     * Draws it to stand inside a page, without its notes.
     *
     * @param name begins every name inside, so that those of several pictures in one page do not meet; letters, digits and hyphens
     * @return an SVG element
     */
    public String toSvgElement(String name) {
        return SvgWriter.element(chart.drawing(description, List.of()), name);
    }

    Chart chart() {
        return chart;
    }
}
