package org.satline.program.pictures;

import java.util.List;
import java.util.Objects;
import org.knowm.xchart.XYChart;
import org.satline.program.page.Escape;

/** A finished picture: what is drawn, what it shows in words, and where the numbers come from. For one thread. */
public final class Picture {
    private final XYChart chart;
    private final int height;
    private final String description;
    private final List<String> notes;

    Picture(XYChart chart, String description, List<String> notes) {
        this.chart = Objects.requireNonNull(chart, "chart");
        this.description = Escape.plain(description);
        this.notes = notes.stream().map(Escape::plain).toList();
        Legend legend = Legend.of(chart);
        chart.addAnnotation(legend);
        this.height = Look.HEIGHT + legend.height();
    }

    /**
     * Returns what it is.
     *
     * @return title
     */
    public String title() {
        return chart.getTitle();
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
     * Draws it as a file of its own, with its notes below.
     *
     * @return an SVG document; the same picture and the same fonts of the Java at hand give the same text
     */
    public String toSvgFile() {
        return SvgText.file(this);
    }

    /**
     * Draws it to stand inside a page, without its notes.
     *
     * @param name begins every name inside, so that those of several pictures in one page do not meet; letters, digits and hyphens
     * @return an SVG element
     */
    public String toSvgElement(String name) {
        return SvgText.element(this, name);
    }

    int height() {
        return height;
    }

    XYChart chart() {
        return chart;
    }
}
