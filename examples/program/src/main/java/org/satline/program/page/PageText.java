package org.satline.program.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.satline.wording.VisitLines;

/** Writes a page as plain text, wrapped; what stands beside a label is indented. */
public final class PageText {
    private static final int WIDTH = 100;
    private static final int LABEL = 16;
    private static final int BRIEF_LABEL = VisitLines.NAME_COLUMNS;

    private final StringBuilder page = new StringBuilder();

    private PageText() {}

    /**
     * Writes a page.
     *
     * @param blocks what stands on it
     * @return lines of at most about 100 characters
     */
    public static String of(List<Block> blocks) {
        PageText text = new PageText();
        blocks.forEach(text::write);
        return text.page.toString();
    }

    private void write(Block block) {
        if (block instanceof Block.Heading heading) {
            heading(heading);
        } else if (block instanceof Block.Paragraph paragraph) {
            line(Escape.plain(paragraph.text()));
        } else if (block instanceof Block.Gap) {
            line("");
        } else if (block instanceof Block.Rows rows) {
            rows.rows().forEach(this::row);
        } else if (block instanceof Block.Brief brief) {
            brief.lines().forEach(this::brief);
        } else if (block instanceof Block.Points points) {
            points.items().forEach(item -> hanging("-", 2, item));
        } else if (block instanceof Block.Acts acts) {
            for (int i = 0; i < acts.items().size(); i++) {
                hanging(i + 1 + ".", 4, acts.items().get(i));
            }
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Question question) {
            hanging(Escape.plain(question.letter()) + ")", 3, question.text() + spaced(question.answer()));
            question.choices().forEach(choice -> hanging("   [ ]", 7, choice));
        } else if (block instanceof Block.Blanks blanks) {
            line(blanks.labels().stream()
                    .map(label -> Escape.plain(label) + ": " + "_".repeat(20))
                    .collect(Collectors.joining(" ")));
        } else if (block instanceof Block.Chart chart) {
            table(chart.rows());
        } else if (block instanceof Block.Figure figure) {
            figure.notes().forEach(note -> hanging("", 0, note));
        }
    }

    private void heading(Block.Heading heading) {
        String text = Escape.plain(heading.text());
        switch (heading.level()) {
            case 1 -> line(text).line("=".repeat(Math.min(WIDTH, text.length())));
            case 2 -> line("").line(text).line("-".repeat(text.length()));
            default -> line("").line(text);
        }
    }

    private void row(Block.Row row) {
        hanging(Escape.plain(row.label()), LABEL, row.text());
    }

    private void brief(Block.BriefLine line) {
        String name = Escape.plain(line.name());
        for (String row : line.rows()) {
            line(name + " ".repeat(Math.max(1, BRIEF_LABEL - name.length())) + Escape.plain(row));
            name = "";
        }
    }

    private void table(Block.Table table) {
        if (!table.title().isEmpty()) {
            line(Escape.plain(table.title()) + ":");
        }
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.head());
        rows.addAll(table.rows());
        int[] widths = new int[table.head().size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], Escape.plain(row.get(i)).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder cells = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String cell = Escape.plain(row.get(i));
                cells.append(cell).append(" ".repeat(widths[i] - cell.length() + 2));
            }
            line(cells.toString());
        }
    }

    private static String spaced(String answer) {
        return answer.isEmpty() ? "" : " " + answer;
    }

    private PageText line(String text) {
        page.append(text.stripTrailing()).append('\n');
        return this;
    }

    private void hanging(String label, int indent, String text) {
        String gap = " ".repeat(indent);
        String first =
                label.length() < indent || indent == 0 ? label + " ".repeat(indent - label.length()) : label + " ";
        List<String> lines = wrapped(Escape.plain(text), WIDTH - indent, WIDTH - first.length());
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? first : gap) + lines.get(i));
        }
    }

    private static List<String> wrapped(String text, int width, int firstWidth) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            int room = lines.isEmpty() ? firstWidth : width;
            if (line.length() > 0 && line.length() + 1 + word.length() > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            if (line.length() > 0) {
                line.append(' ');
            }
            line.append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
