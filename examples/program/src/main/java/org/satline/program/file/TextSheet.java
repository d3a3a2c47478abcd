package org.satline.program.file;

import java.util.ArrayList;
import java.util.List;

/** A page of plain text; what stands beside a label is wrapped. For one thread. */
public final class TextSheet implements Sheet {
    private static final int WIDTH = 100;
    private static final int LABEL = 16;

    private final StringBuilder page = new StringBuilder();

    /** Makes an empty page. */
    public TextSheet() {}

    @Override
    public Sheet title(String text) {
        page.append(text)
                .append('\n')
                .append("=".repeat(Math.min(WIDTH, text.length())))
                .append('\n');
        return this;
    }

    @Override
    public Sheet heading(String text) {
        page.append('\n')
                .append(text)
                .append('\n')
                .append("-".repeat(text.length()))
                .append('\n');
        return this;
    }

    @Override
    public Sheet subheading(String text) {
        return line("").line(text);
    }

    @Override
    public Sheet row(String label, String text) {
        return hanging(label, LABEL, text);
    }

    @Override
    public Sheet item(String text) {
        return hanging("-", 2, text);
    }

    @Override
    public Sheet line(String text) {
        page.append(text.stripTrailing()).append('\n');
        return this;
    }

    private Sheet hanging(String label, int indent, String text) {
        String gap = " ".repeat(indent);
        String first = label.length() < indent ? label + " ".repeat(indent - label.length()) : label + " ";
        List<String> lines = wrapped(text, WIDTH - indent, WIDTH - first.length());
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? first : gap) + lines.get(i));
        }
        return this;
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

    @Override
    public String toString() {
        return page.toString();
    }
}
