package org.satline.program.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

/** Writes a page as one HTML file that stands alone and is well-formed XML too: style inside, no script, nothing fetched. */
public final class PageHtml {
    /** Labels that warn stand in capitals, such as DO NOT FILL. */
    private static final Pattern ALARM = Pattern.compile("[A-Z][A-Z ]{3,}");

    private static final List<String> ALARMING = List.of("FORBIDDEN", "DO NOT", "DANGER", "LIQUID-FULL", "CAUTION");

    /** What a page looks like. */
    public enum Style {
        /** A report: reads on a phone, prints in black and white. */
        REPORT("report.css"),
        /** Exercises: made for paper. */
        EXERCISE("exercise.css");

        private final String resource;

        Style(String resource) {
            this.resource = resource;
        }

        private String text() {
            try (InputStream stream = Objects.requireNonNull(PageHtml.class.getResourceAsStream(resource), resource)) {
                return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private final StringBuilder html = new StringBuilder();
    private boolean inSection;
    private boolean inQuestions;

    private PageHtml() {}

    /**
     * Writes a page in English.
     *
     * @param title name of the document
     * @param style what it looks like
     * @param blocks what stands on it
     * @return the whole document
     */
    public static String of(String title, Style style, List<Block> blocks) {
        return of(title, style, "en", blocks);
    }

    /**
     * Writes a page.
     *
     * @param title name of the document
     * @param style what it looks like
     * @param language tag of the language of its words
     * @param blocks what stands on it
     * @return the whole document
     */
    public static String of(String title, Style style, String language, List<Block> blocks) {
        PageHtml page = new PageHtml();
        blocks.forEach(page::write);
        if (page.inQuestions) {
            page.html.append("</div>\n");
        }
        page.endSection();
        return """
                <!DOCTYPE html>
                <html lang="%s" xmlns="http://www.w3.org/1999/xhtml">
                <head>
                <meta charset="utf-8"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'"/>
                <title>%s</title>
                <style>
                %s</style>
                </head>
                <body>
                <main>
                %s</main>
                </body>
                </html>
                """.formatted(Escape.html(language), Escape.html(title), style.text(), page.html);
    }

    private void write(Block block) {
        if (block instanceof Block.Question != inQuestions) {
            html.append(inQuestions ? "</div>\n" : "<div class=\"questions\">\n");
            inQuestions = !inQuestions;
        }
        if (block instanceof Block.Begin begin) {
            endSection();
            html.append(
                    switch (begin.sheet()) {
                        case NEW -> "<section class=\"page\">\n";
                        case WHOLE -> "<section class=\"whole\">\n";
                        case SAME -> "<section>\n";
                    });
            inSection = true;
        } else if (block instanceof Block.Heading heading) {
            element("h" + heading.level(), "", heading.text()).append('\n');
        } else if (block instanceof Block.Paragraph paragraph) {
            element("p", "", paragraph.text()).append('\n');
        } else if (block instanceof Block.Rows rows) {
            rows(rows.rows());
        } else if (block instanceof Block.Brief brief) {
            html.append("<div class=\"summary\">\n");
            brief.lines()
                    .forEach(line -> labelled(
                            line.warns() ? "<p class=\"alarm\">" : "<p>",
                            new Block.Row(line.name(), String.join(" ", line.rows()))));
            html.append("</div>\n");
        } else if (block instanceof Block.Points points) {
            html.append("<ul>\n");
            points.items()
                    .forEach(item -> element("li", alarm(ALARMING.stream().anyMatch(item::startsWith)), item)
                            .append('\n'));
            html.append("</ul>\n");
        } else if (block instanceof Block.Acts acts) {
            html.append("<ol>\n");
            acts.items().forEach(item -> element("li", "", item).append('\n'));
            html.append("</ol>\n");
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Question question) {
            question(question);
        } else if (block instanceof Block.Blanks blanks) {
            html.append("<div class=\"blanks\">");
            blanks.labels().forEach(label -> element("span", "", label));
            html.append("</div>\n");
        } else if (block instanceof Block.Chart chart) {
            html.append("<figure class=\"chart\">\n").append(chart.svg()).append("\n</figure>\n");
        } else if (block instanceof Block.Figure figure) {
            html.append("<figure>\n").append(figure.svg()).append("\n<figcaption>\n");
            figure.notes().forEach(note -> element("p", "", note).append('\n'));
            html.append("</figcaption>\n</figure>\n");
        }
    }

    private void rows(List<Block.Row> rows) {
        html.append("<dl>\n");
        boolean first = true;
        for (Block.Row row : rows) {
            String label = row.label().strip();
            if (first || !label.isEmpty()) {
                html.append(first ? "" : "</div>\n")
                        .append("<div")
                        .append(alarm(ALARM.matcher(label).matches()))
                        .append('>');
                element("dt", "", label);
                first = false;
            }
            element("dd", "", row.text());
        }
        html.append(first ? "" : "</div>\n").append("</dl>\n");
    }

    private static String alarm(boolean warns) {
        return warns ? " class=\"alarm\"" : "";
    }

    private void labelled(String tag, Block.Row row) {
        html.append(tag);
        element("strong", "", row.label() + ":").append(' ');
        html.append(Escape.html(row.text())).append("</p>\n");
    }

    private void question(Block.Question question) {
        html.append("<div class=\"question\">");
        element("b", "", question.letter() + ")").append(' ').append(Escape.html(question.text()));
        if (!question.choices().isEmpty()) {
            html.append("<ul class=\"choices\">");
            question.choices().forEach(choice -> element("li", "", choice));
            html.append("</ul>");
        }
        html.append("<div class=\"space\"></div>".repeat(question.lines()));
        if (!question.answer().isEmpty()) {
            html.append(' ');
            element("span", " class=\"answer\"", question.answer());
        }
        html.append("</div>\n");
    }

    private void table(Block.Table table) {
        html.append("<table>\n");
        if (!table.title().isEmpty()) {
            element("caption", "", table.title()).append('\n');
        }
        cells("th", table.head());
        table.rows().forEach(row -> cells("td", row));
        html.append("</table>\n");
    }

    private void cells(String tag, List<String> cells) {
        html.append("<tr>");
        cells.forEach(cell -> element(tag, "", cell));
        html.append("</tr>\n");
    }

    private StringBuilder element(String tag, String attributes, String text) {
        return html.append('<')
                .append(tag)
                .append(attributes)
                .append('>')
                .append(Escape.html(text))
                .append("</")
                .append(tag)
                .append('>');
    }

    private void endSection() {
        if (inSection) {
            html.append("</section>\n");
            inSection = false;
        }
    }
}
