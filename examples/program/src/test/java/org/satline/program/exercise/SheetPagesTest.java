package org.satline.program.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Node;

class SheetPagesTest {
    private static Document parsed(String html) throws Exception {
        String xml = html.replaceFirst("<!DOCTYPE html>", "");
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void theHtmlPageIsWellFormedAndNeedsNothingFromOutside() throws Exception {
        ExerciseSheet sheet = new SheetMaker().sheet(SheetOrder.usual(6));
        for (String page : List.of(sheet.questions(PageForm.HTML), sheet.key(PageForm.HTML))) {
            Document document = parsed(page);
            assertThat(names(document))
                    .doesNotContain("script", "link", "img", "iframe", "a", "object", "form")
                    .contains("style", "section", "table", "h2");
            assertThat(page)
                    .doesNotContainPattern("(?i)\\b(src|href|on\\w+)\\s*=")
                    .doesNotContain("url(", "@import")
                    .contains("break-before: page", "@media print");
        }
    }

    @Test
    void theHtmlPageSaysTheSameAsTheMarkdownPage() throws Exception {
        ExerciseSheet sheet = new SheetMaker().sheet(SheetOrder.usual(8));
        String text =
                parsed(sheet.questions(PageForm.HTML)).getDocumentElement().getTextContent();
        for (Exercise exercise : sheet.exercises()) {
            assertThat(text).contains(exercise.situation());
            exercise.givens().forEach(given -> assertThat(text).contains(given.name() + given.text()));
            exercise.parts().forEach(part -> assertThat(text).contains(part.ask()));
            exercise.rules().forEach(rule -> assertThat(text).contains(rule));
        }
        String key = parsed(sheet.key(PageForm.HTML)).getDocumentElement().getTextContent();
        sheet.exercises()
                .forEach(exercise -> exercise.parts()
                        .forEach(part -> assertThat(key).contains(part.answer().text())));
    }

    @Test
    void theSheetHoldsNoAnswer() {
        ExerciseSheet sheet = new SheetMaker().sheet(SheetOrder.usual(9));
        assertThat(sheet.questions(PageForm.MARKDOWN)).doesNotContain("accept", "Working", "For the teacher");
        assertThat(sheet.questions(PageForm.HTML)).doesNotContain("class=\"answer\"", "For the teacher");
    }

    private static List<String> names(Node node) {
        List<String> found = new ArrayList<>();
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeType() == Node.ELEMENT_NODE) {
                found.add(child.getNodeName());
                found.addAll(names(child));
            }
        }
        return found;
    }
}
