package org.satline.program.page;

import java.util.ArrayList;
import java.util.List;

/** Puts a page together, block by block. For one thread. */
public final class Page {
    private final List<Block> blocks = new ArrayList<>();

    /** Begins an empty page. */
    public Page() {}

    /**
     * Begins the page.
     *
     * @param text what the page is about
     * @return this
     */
    public Page title(String text) {
        return add(new Block.Heading(1, text)).add(new Block.Begin(Block.Sheet.SAME));
    }

    /**
     * Begins a section.
     *
     * @param text what the section is about
     * @return this
     */
    public Page heading(String text) {
        return add(new Block.Begin(Block.Sheet.SAME)).add(new Block.Heading(2, text));
    }

    /**
     * Begins a part of a section.
     *
     * @param text what the part is about
     * @return this
     */
    public Page subheading(String text) {
        return add(new Block.Heading(3, text));
    }

    /**
     * Adds a label with its text.
     *
     * @param label the label; in capitals where it is a warning; empty to go on with the row before
     * @param text the text
     * @return this
     */
    public Page row(String label, String text) {
        List<Block.Row> rows = new ArrayList<>();
        if (last() instanceof Block.Rows before) {
            rows.addAll(before.rows());
            blocks.remove(blocks.size() - 1);
        }
        rows.add(new Block.Row(label, text));
        return add(new Block.Rows(rows));
    }

    /**
     * Adds an item of a list.
     *
     * @param text the item
     * @return this
     */
    public Page item(String text) {
        List<String> items = new ArrayList<>();
        if (last() instanceof Block.Points before) {
            items.addAll(before.items());
            blocks.remove(blocks.size() - 1);
        }
        items.add(text);
        return add(new Block.Points(items));
    }

    /**
     * Adds a paragraph.
     *
     * @param text the paragraph
     * @return this
     */
    public Page line(String text) {
        return add(new Block.Paragraph(text));
    }

    /**
     * Adds any block.
     *
     * @param block the block
     * @return this
     */
    public Page add(Block block) {
        blocks.add(block);
        return this;
    }

    /**
     * Returns what stands on the page so far.
     *
     * @return blocks, in order
     */
    public List<Block> blocks() {
        return List.copyOf(blocks);
    }

    private Block last() {
        return blocks.isEmpty() ? new Block.Gap() : blocks.get(blocks.size() - 1);
    }
}
