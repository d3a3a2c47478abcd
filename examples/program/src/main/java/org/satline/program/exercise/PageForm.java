package org.satline.program.exercise;

import java.util.List;
import java.util.Locale;
import org.satline.program.page.Block;
import org.satline.program.page.PageHtml;
import org.satline.program.page.PageMarkdown;

/** What a page is written in. */
public enum PageForm {
    /** Markdown with tables. */
    MARKDOWN {
        @Override
        String write(String title, String language, List<Block> blocks) {
            return PageMarkdown.of(blocks);
        }
    },
    /** One HTML file to print: no script, no reference to anything outside, black on white. */
    HTML {
        @Override
        String write(String title, String language, List<Block> blocks) {
            return PageHtml.of(title, PageHtml.Style.EXERCISE, language, blocks);
        }
    };

    abstract String write(String title, String language, List<Block> blocks);

    /**
     * The form that a file name asks for.
     *
     * @param fileName a name ending in .md, .html or .htm
     * @return the form
     * @throws IllegalArgumentException if the ending is another one
     */
    public static PageForm ofFileName(String fileName) {
        String name = fileName.toLowerCase(Locale.ROOT);
        if (name.endsWith(".md")) {
            return MARKDOWN;
        }
        if (name.endsWith(".html") || name.endsWith(".htm")) {
            return HTML;
        }
        throw new IllegalArgumentException(fileName + ": a file name that ends in .md or .html is expected");
    }
}
