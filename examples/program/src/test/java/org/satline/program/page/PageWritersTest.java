package org.satline.program.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class PageWritersTest {
    private static final String NASTY = "a <b> & \"c\" | *d* _e_ [f](g) `h`";
    private static final String STEERING = "a\u202eb\u0007\u009b2J\u2066c\u200fd";

    /** Each block that holds text, {@code text} in each of its places: 17 in all. */
    private static List<Block> everywhere(String text) {
        return List.of(
                new Block.Heading(1, text),
                new Block.Brief(List.of(
                        new Block.BriefLine("x", List.of(text), false),
                        new Block.BriefLine(text, List.of(text), true))),
                new Block.Begin(Block.Sheet.NEW),
                new Block.Heading(2, text),
                new Block.Paragraph(text),
                new Block.Rows(List.of(new Block.Row(text, text), new Block.Row("", text))),
                new Block.Begin(Block.Sheet.SAME),
                new Block.Heading(3, text),
                new Block.Question("a", text, List.of(), text, 0),
                new Block.Question("b", text, List.of(), "", 2),
                new Block.Question("c", "", List.of(text), "", 0),
                new Block.Blanks(List.of(text)),
                new Block.Points(List.of(text)),
                new Block.Gap(),
                new Block.Place(Block.Spot.SYSTEM),
                new Block.Table(text, List.of("y"), List.of(List.of(text))),
                new Block.Figure("<svg/>", List.of(text)));
    }

    private static Document parsed(String html) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(html.replaceFirst("<!DOCTYPE html>", ""))));
    }

    @Test
    void whatLooksLikeMarkupIsPrintedAsItStands() throws Exception {
        for (PageHtml.Style style : PageHtml.Style.values()) {
            Document document = parsed(PageHtml.of(NASTY, style, everywhere(NASTY)));
            String text = document.getDocumentElement().getTextContent();
            assertThat(text.split(Pattern.quote(NASTY), -1)).hasSize(20 + 1); // and the name of the document
            assertThat(document.getElementsByTagName("section").getLength()).isEqualTo(2);
        }
        assertThat(PageMarkdown.of(everywhere(NASTY)))
                .contains("# a \\<b> & \"c\" | \\*d\\* \\_e\\_ \\[f\\](g) \\`h\\`")
                .contains("| a \\<b> & \"c\" \\| \\*d\\* \\_e\\_ \\[f\\](g) \\`h\\` |")
                .contains("- **a \\<b>");
        assertThat(PageText.of(everywhere(NASTY)).split(Pattern.quote(NASTY), -1))
                .hasSize(19 + 1);
    }

    @Test
    void noCharacterThatSteersLeavesAnyWriter() {
        for (String page : List.of(
                PageText.of(everywhere(STEERING)),
                PageMarkdown.of(everywhere(STEERING)),
                PageHtml.of(STEERING, PageHtml.Style.REPORT, everywhere(STEERING)))) {
            assertThat(page).contains("ab 2Jcd");
            assertThat(page.codePoints())
                    .allMatch(c -> c == '\n' || !Character.isISOControl(c))
                    .allMatch(c -> Character.getType(c) != Character.FORMAT);
        }
    }

    @Test
    void plainTextIsWrappedBesideItsLabel() {
        Page page = new Page()
                .title("Title")
                .heading("Part")
                .row("label", "word ".repeat(30).strip())
                .row("", "more");
        assertThat(PageText.of(page.item("one").item("two").subheading("Below").blocks()))
                .isEqualTo("""
                        Title
                        =====

                        Part
                        ----
                        label           %s
                                        %s
                                        more
                        - one
                        - two

                        Below
                        """.formatted(
                                "word ".repeat(17).strip(), "word ".repeat(13).strip()));
    }

    @Test
    void columnsOfATableStandBelowEachOther() {
        assertThat(PageText.of(List.of(
                        new Block.Table("t", List.of("a", "b"), List.of(List.of("long", "1"), List.of("x", "2"))))))
                .isEqualTo("t:\na     b\nlong  1\nx     2\n");
    }

    @Test
    void aWarningIsMarkedInHtml() {
        Page page =
                new Page().row("DO NOT FILL", "x").row("", "y").row("room", "z").item("DANGER: w");
        assertThat(PageHtml.of("t", PageHtml.Style.REPORT, page.blocks()))
                .contains("<div class=\"alarm\"><dt>DO NOT FILL</dt><dd>x</dd><dd>y</dd></div>")
                .contains("<div><dt>room</dt><dd>z</dd></div>")
                .contains("<li class=\"alarm\">DANGER: w</li>");
    }
}
