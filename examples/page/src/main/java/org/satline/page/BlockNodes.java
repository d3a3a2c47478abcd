package org.satline.page;

import java.util.List;
import org.satline.program.page.Block;

/** Blocks of a printed page as elements of this one. */
final class BlockNodes {
    private final String wideTable;
    private final Node whole = Node.of("div", "paper");
    private Node section = Node.of("section");

    private BlockNodes(String wideTable) {
        this.wideTable = wideTable;
    }

    /** The blocks in order; a table wider than the display scrolls by itself, under a name for screen readers. */
    static Node of(List<Block> blocks, String wideTable) {
        BlockNodes nodes = new BlockNodes(wideTable);
        nodes.whole.add(nodes.section);
        blocks.forEach(nodes::write);
        return nodes.whole;
    }

    private void write(Block block) {
        if (block instanceof Block.Begin begin) {
            section = Node.of("section", begin.sheet() == Block.Sheet.WHOLE ? "whole" : "");
            whole.add(section);
        } else if (block instanceof Block.Heading heading) {
            section.add(Node.of("h" + (heading.level() + 2)).text(heading.text()));
        } else if (block instanceof Block.Paragraph paragraph) {
            section.add(Node.of("p").text(paragraph.text()));
        } else if (block instanceof Block.Points points) {
            Node list = Node.of("ul");
            points.items().forEach(item -> list.add(Node.of("li").text(item)));
            section.add(list);
        } else if (block instanceof Block.Blanks blanks) {
            Node row = Node.of("div", "blanks");
            blanks.labels().forEach(label -> row.add(Node.of("span").text(label)));
            section.add(row);
        } else if (block instanceof Block.Table table) {
            section.add(table(table));
        } else if (block instanceof Block.Chart chart) {
            section.add(table(chart.rows()));
        } else if (block instanceof Block.Question question) {
            section.add(question(question));
        } else {
            throw new IllegalArgumentException("no place for " + block + " on a sheet; lay it out here");
        }
    }

    private Node table(Block.Table table) {
        Node element = Node.of("table");
        if (!table.title().isEmpty()) {
            element.add(Node.of("caption").text(table.title()));
        }
        Node head = Node.of("tr");
        // a heading without words tells a screen reader nothing
        table.head()
                .forEach(cell -> head.add(
                        cell.isEmpty()
                                ? Node.of("td")
                                : Node.of("th").set("scope", "col").text(cell)));
        element.add(Node.of("thead").add(head));
        Node body = Node.of("tbody");
        for (List<String> row : table.rows()) {
            Node line = Node.of("tr");
            row.forEach(cell -> line.add(Node.of("td").text(cell)));
            body.add(line);
        }
        return Node.of("div", "wide-table")
                .set("tabindex", "0")
                .set("role", "group")
                .set("aria-label", table.title().isEmpty() ? wideTable : table.title())
                .add(element.add(body));
    }

    private static Node question(Block.Question question) {
        Node element = Node.of("div", "question")
                .add(
                        Node.of("b").text(question.letter() + ") "),
                        Node.of("span").text(question.text()));
        if (!question.choices().isEmpty()) {
            Node list = Node.of("ul", "boxes");
            question.choices().forEach(choice -> list.add(Node.of("li").text(choice)));
            element.add(list);
        }
        for (int i = 0; i < question.lines(); i++) {
            element.add(Node.of("div", "space"));
        }
        return question.answer().isEmpty()
                ? element
                : element.add(Node.of("p", "answered").text(question.answer()));
    }
}
