package org.satline.program.page;

import java.util.List;
import java.util.stream.Collectors;

/** Writes a page as Markdown with tables. */
public final class PageMarkdown {
    /** A field to write in; escaped, since a bare row of underscores is a ruling across the page. */
    private static final String RULE = "\\_".repeat(20);

    private final StringBuilder page = new StringBuilder();

    private PageMarkdown() {}

    /**
     * Writes a page.
     *
     * @param blocks what stands on it
     * @return the whole document
     */
    public static String of(List<Block> blocks) {
        PageMarkdown markdown = new PageMarkdown();
        blocks.forEach(markdown::write);
        return markdown.page.toString();
    }

    private void write(Block block) {
        if (block instanceof Block.Heading heading) {
            line("#".repeat(heading.level()) + " " + Escape.markdown(heading.text()));
        } else if (block instanceof Block.Paragraph paragraph) {
            line(Escape.markdown(paragraph.text()));
        } else if (block instanceof Block.Rows rows) {
            rows(rows.rows());
        } else if (block instanceof Block.Brief brief) {
            rows(brief.lines().stream()
                    .map(each -> new Block.Row(each.name(), String.join(" ", each.rows())))
                    .toList());
        } else if (block instanceof Block.Points points) {
            line(points.items().stream()
                    .map(item -> "- " + Escape.markdown(item))
                    .collect(Collectors.joining("\n")));
        } else if (block instanceof Block.Acts acts) {
            line(acts.items().stream()
                    .map(item -> "1. " + Escape.markdown(item))
                    .collect(Collectors.joining("\n")));
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Question question) {
            question(question);
        } else if (block instanceof Block.Blanks blanks) {
            line(blanks.labels().stream()
                    .map(label -> Escape.markdown(label) + ": " + RULE)
                    .collect(Collectors.joining(" ")));
        } else if (block instanceof Block.Chart chart) {
            table(chart.rows());
        } else if (block instanceof Block.Figure figure) {
            figure.notes().forEach(note -> line(Escape.markdown(note)));
        }
    }

    private void question(Block.Question question) {
        line(bold(question.letter() + ")") + " " + Escape.markdown(question.text())
                + (question.answer().isEmpty() ? "" : " " + bold(question.answer())));
        if (!question.choices().isEmpty()) {
            line(question.choices().stream()
                    .map(choice -> "- [ ] " + Escape.markdown(choice))
                    .collect(Collectors.joining("\n")));
        }
    }

    private void rows(List<Block.Row> rows) {
        if (!rows.isEmpty()) {
            line(rows.stream().map(PageMarkdown::row).collect(Collectors.joining("\n")));
        }
    }

    /** A row without a label goes on with the item before. */
    private static String row(Block.Row row) {
        String label = row.label().strip();
        return label.isEmpty()
                ? "  " + Escape.markdown(row.text())
                : "- " + bold(label) + ": " + Escape.markdown(row.text());
    }

    private static String bold(String text) {
        return "**" + Escape.markdown(text) + "**";
    }

    private void table(Block.Table table) {
        if (!table.title().isEmpty()) {
            line(Escape.markdown(table.title()) + ":");
        }
        page.append(cells(table.head()))
                .append("|")
                .append(" --- |".repeat(table.head().size()))
                .append('\n');
        table.rows().forEach(row -> page.append(cells(row)));
        page.append('\n');
    }

    private static String cells(List<String> cells) {
        return cells.stream().map(Escape::markdownCell).collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    private void line(String text) {
        page.append(text).append("\n\n");
    }
}
