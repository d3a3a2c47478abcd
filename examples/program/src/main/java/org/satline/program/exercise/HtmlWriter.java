package org.satline.program.exercise;

import java.util.List;

/** Writes a page as HTML that is well-formed XML too, for printing. For one page. */
final class HtmlWriter {
    private static final String STYLE = """
            body { font: 11pt/1.4 serif; color: #000; background: #fff; max-width: 48em; margin: 1.5em auto; padding: 0 1em; }
            h1, h2, h3, h4 { font-family: sans-serif; line-height: 1.2; break-after: avoid; }
            h2 { border-top: 2px solid #000; padding-top: .5em; margin-top: 1.8em; }
            table { border-collapse: collapse; margin: .5em 0; break-inside: avoid; max-width: 100%; }
            th, td { border: 1px solid #000; padding: .1em .5em; text-align: left; vertical-align: top; }
            td:last-child { overflow-wrap: anywhere; }
            caption { text-align: left; font-weight: bold; break-after: avoid; }
            .note { font-size: 8.5pt; }
            .question { break-inside: avoid; margin: .6em 0; }
            .answer { font-weight: bold; border: 1px solid #000; padding: 0 .3em; }
            .space { border-bottom: 1px dotted #000; height: 2.2em; }
            @page { margin: 18mm 16mm; }
            @media print {
              body { margin: 0; max-width: none; padding: 0 1px; font-size: 10pt; line-height: 1.25; }
              section.page { break-before: page; }
              section:not(.page) table { break-inside: auto; }
              tr { break-inside: avoid; }
            }
            """;

    private final StringBuilder page = new StringBuilder();
    private boolean open;

    String write(String title, List<Block> blocks) {
        page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"UTF-8\"/>\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>")
                .append(text(title))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n");
        blocks.forEach(this::write);
        if (open) {
            page.append("</section>\n");
        }
        return page.append("</body>\n</html>\n").toString();
    }

    private void write(Block block) {
        if (block instanceof Block.Begin begin) {
            page.append(open ? "</section>\n" : "")
                    .append(begin.newPage() ? "<section class=\"page\">\n" : "<section>\n");
            open = true;
        } else if (block instanceof Block.Heading heading) {
            element("h" + heading.level(), heading.text());
        } else if (block instanceof Block.Text paragraph) {
            element("p", paragraph.text());
        } else if (block instanceof Block.Question question) {
            question(question);
        } else if (block instanceof Block.Points points) {
            page.append("<ul>\n");
            points.items().forEach(item -> element("li", item));
            page.append("</ul>\n");
        } else if (block instanceof Block.Table table) {
            table(table);
        }
    }

    private void question(Block.Question question) {
        page.append("<div class=\"question\"><b>")
                .append(text(question.letter()))
                .append(")</b> ")
                .append(text(question.text()));
        if (!question.answer().isEmpty()) {
            page.append(" <span class=\"answer\">")
                    .append(text(question.answer()))
                    .append("</span>");
        }
        page.append(question.lines() ? "<div class=\"space\"></div></div>\n" : "</div>\n");
    }

    private void table(Block.Table table) {
        page.append("<table>\n");
        if (!table.title().isEmpty()) {
            element("caption", table.title());
        }
        row("th", table.head());
        table.rows().forEach(cells -> row("td", cells));
        page.append("</table>\n");
        if (!table.note().isEmpty()) {
            page.append("<p class=\"note\">").append(text(table.note())).append("</p>\n");
        }
    }

    private void row(String cell, List<String> cells) {
        page.append("<tr>");
        cells.forEach(each -> page.append('<')
                .append(cell)
                .append('>')
                .append(text(each))
                .append("</")
                .append(cell)
                .append('>'));
        page.append("</tr>\n");
    }

    private void element(String name, String content) {
        page.append('<')
                .append(name)
                .append('>')
                .append(text(content))
                .append("</")
                .append(name)
                .append(">\n");
    }

    static String text(String plain) {
        return plain.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
