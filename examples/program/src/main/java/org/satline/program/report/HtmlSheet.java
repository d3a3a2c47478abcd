package org.satline.program.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.satline.program.file.Sheet;

/** The page as HTML: the same words as the plain page, with what is given for each spot put there. For one thread. */
final class HtmlSheet implements Sheet {
    /** Labels that warn stand in capitals, such as DO NOT FILL. */
    private static final Pattern ALARM = Pattern.compile("[A-Z][A-Z ]{3,}");

    private static final List<String> ALARMING = List.of("FORBIDDEN", "DO NOT", "DANGER", "LIQUID-FULL", "CAUTION");

    /** What is open and has to be closed before something else begins. */
    private enum Open {
        NOTHING,
        ROWS,
        ITEMS
    }

    private final StringBuilder html = new StringBuilder();
    private final Map<Spot, String> atSpots = new EnumMap<>(Spot.class);
    private final String summary;
    private Open open = Open.NOTHING;
    private boolean inSection;

    HtmlSheet(String summary, Map<Spot, String> atSpots) {
        this.summary = summary;
        this.atSpots.putAll(atSpots);
    }

    @Override
    public Sheet title(String text) {
        html.append("<h1>").append(Html.escaped(text)).append("</h1>\n").append(summary);
        return beginSection();
    }

    @Override
    public Sheet heading(String text) {
        endSection();
        beginSection();
        html.append("<h2>").append(Html.escaped(text)).append("</h2>\n");
        return this;
    }

    @Override
    public Sheet subheading(String text) {
        close();
        html.append("<h3>").append(Html.escaped(text)).append("</h3>\n");
        return this;
    }

    @Override
    public Sheet row(String label, String text) {
        String name = label.strip();
        boolean first = open != Open.ROWS;
        if (first) {
            close();
            html.append("<dl>\n");
            open = Open.ROWS;
        }
        if (first || !name.isEmpty()) {
            html.append(first ? "" : "</div>\n")
                    .append(ALARM.matcher(name).matches() ? "<div class=\"alarm\">" : "<div>")
                    .append("<dt>")
                    .append(Html.escaped(name))
                    .append("</dt>");
        }
        html.append("<dd>").append(Html.escaped(text)).append("</dd>");
        return this;
    }

    @Override
    public Sheet item(String text) {
        if (open != Open.ITEMS) {
            close();
            html.append("<ul>\n");
            open = Open.ITEMS;
        }
        boolean alarm = ALARMING.stream().anyMatch(text::startsWith);
        html.append(alarm ? "<li class=\"alarm\">" : "<li>")
                .append(Html.escaped(text))
                .append("</li>\n");
        return this;
    }

    @Override
    public Sheet line(String text) {
        if (!text.isBlank()) {
            close();
            html.append("<p>").append(Html.escaped(text)).append("</p>\n");
        }
        return this;
    }

    @Override
    public Sheet spot(Spot spot) {
        close();
        html.append(atSpots.getOrDefault(spot, ""));
        return this;
    }

    /** The whole of it; nothing may be written afterwards. */
    String finished() {
        endSection();
        return html.toString();
    }

    private Sheet beginSection() {
        html.append("<section>\n");
        inSection = true;
        return this;
    }

    private void endSection() {
        close();
        if (inSection) {
            html.append("</section>\n");
            inSection = false;
        }
    }

    private void close() {
        if (open == Open.ROWS) {
            html.append("</div>\n</dl>\n");
        } else if (open == Open.ITEMS) {
            html.append("</ul>\n");
        }
        open = Open.NOTHING;
    }
}
