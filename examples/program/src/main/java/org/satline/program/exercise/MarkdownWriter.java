package org.satline.program.exercise;

import java.util.List;
import java.util.stream.Collectors;

/** Writes a page as Markdown. For one page. */
final class MarkdownWriter {
    private final StringBuilder page = new StringBuilder();

    String write(List<Block> blocks) {
        blocks.forEach(this::write);
        return page.toString();
    }

    private void write(Block block) {
        if (block instanceof Block.Heading heading) {
            line("#".repeat(heading.level()) + " " + text(heading.text()));
        } else if (block instanceof Block.Text paragraph) {
            line(text(paragraph.text()));
        } else if (block instanceof Block.Question question) {
            line("**" + question.letter() + ")** " + text(question.text())
                    + (question.answer().isEmpty() ? "" : " **" + text(question.answer()) + "**"));
        } else if (block instanceof Block.Points points) {
            line(points.items().stream().map(item -> "- " + text(item)).collect(Collectors.joining("\n")));
        } else if (block instanceof Block.Table table) {
            table(table);
        }
    }

    private void table(Block.Table table) {
        if (!table.title().isEmpty()) {
            line(text(table.title()) + ":");
        }
        page.append(row(table.head()))
                .append("|")
                .append(" --- |".repeat(table.head().size()))
                .append('\n');
        table.rows().forEach(cells -> page.append(row(cells)));
        page.append('\n');
        if (!table.note().isEmpty()) {
            line(text(table.note()));
        }
    }

    private static String row(List<String> cells) {
        return cells.stream()
                .map(cell -> text(cell).replace("|", "\\|"))
                .collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    private void line(String text) {
        page.append(text).append("\n\n");
    }

    /** What Markdown would take for emphasis, code, a link or a tag is meant as it stands. */
    static String text(String plain) {
        return plain.replaceAll("([\\\\`*<\\[\\]])", "\\\\$1")
                .replaceAll("(?<![A-Za-z0-9])_|_(?![A-Za-z0-9])", "\\\\_");
    }
}
