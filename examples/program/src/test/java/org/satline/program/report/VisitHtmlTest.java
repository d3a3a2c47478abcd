package org.satline.program.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.json.JsonFields;
import org.satline.program.page.PageText;
import org.satline.program.pictures.PictureUnits;
import org.satline.program.visit.Detail;
import org.satline.program.visit.VisitPage;
import org.satline.quantity.UnitSystem;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Language;
import org.satline.wording.Wording;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class VisitHtmlTest {
    private static final Path SAMPLE = Path.of("samples", "boathouse.json");
    private static final Pattern ADDRESS = Pattern.compile("https?://[^\"'\\s<)]*");

    @TempDir
    Path folder;

    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.US);

    private static VisitReport report(Path file) {
        try {
            return VisitReporter.report(VisitFile.read(JsonFields.read(Files.readString(file))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String html(VisitReport report) {
        return html(report, PictureUnits.US);
    }

    private static String html(VisitReport report, PictureUnits units) {
        return VisitHtml.of(report, WORDING, Detail.EXPLAINED, units);
    }

    private static String page(VisitReport report) {
        return PageText.of(VisitPage.blocks(report, WORDING, Detail.EXPLAINED));
    }

    private VisitReport changed(String part, String other) throws IOException {
        String sample = Files.readString(SAMPLE);
        assertThat(sample).contains(part);
        return report(Files.writeString(folder.resolve("visit.json"), sample.replace(part, other)));
    }

    private static Document parsed(String html) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    }

    private static List<Element> elements(Document document, String tag) {
        NodeList found = document.getElementsByTagNameNS("*", tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    @Test
    void holdsEachSectionAndEachStepOfThePlainPage() throws Exception {
        VisitReport report = report(SAMPLE);
        Document document = parsed(html(report, PictureUnits.US));
        List<String> headings =
                elements(document, "h2").stream().map(Element::getTextContent).toList();
        List<String> lines = page(report).lines().toList();
        for (int i = 1; i < lines.size(); i++) {
            if (lines.get(i).matches("-{5,}")) {
                assertThat(headings).contains(lines.get(i - 1));
            }
        }
        assertThat(elements(document, "h3"))
                .hasSizeGreaterThanOrEqualTo(report.steps().size());
        String words = document.getDocumentElement().getTextContent();
        report.steps().forEach(step -> assertThat(words).contains(step.formula(), step.source()));
        report.cautions().forEach(caution -> assertThat(words).contains(WORDING.of(caution)));
        assertThat(words).contains("does not replace it.", "Local codes");
    }

    @Test
    void everyWordOfThePlainPageIsThere() throws Exception {
        VisitReport report = report(SAMPLE);
        String words = " "
                + parsed(html(report, PictureUnits.SI))
                        .getDocumentElement()
                        .getTextContent()
                        .replaceAll("\\s+", " ")
                + " ";
        for (String word : page(report).split("\\s+", -1)) {
            if (!word.matches("[-=]*")) {
                assertThat(words).contains(word);
            }
        }
    }

    @Test
    void picturesStandInItWithNamesThatDoNotMeet() throws Exception {
        Document document = parsed(html(report(SAMPLE), PictureUnits.US));
        assertThat(elements(document, "svg"))
                .hasSize(3)
                .allMatch(svg -> svg.getAttribute("role").equals("img"));
        List<String> ids = elements(document, "*").stream()
                .map(element -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThanOrEqualTo(9);
        String html = html(report(SAMPLE), PictureUnits.US);
        for (Matcher use = Pattern.compile("url\\(#([^)]+)\\)").matcher(html); use.find(); ) {
            assertThat(ids).contains(use.group(1));
        }
    }

    @Test
    void aBlendWithGlideGetsItsGlidePictureToo() throws Exception {
        String sample = Files.readString(SAMPLE)
                .replace("\"R-410A\"", "\"R-407C\"")
                .replace("\"118 psig\"", "\"62 psig\"")
                .replace("\"388 psig\"", "\"270 psig\"");
        VisitReport report = report(Files.writeString(folder.resolve("visit.json"), sample));
        assertThat(html(report, PictureUnits.SI)).contains("R-407C: glide against pressure");
    }

    @Test
    void nothingOutsideIsAskedForAndNoScriptIsInIt() {
        String html = html(report(SAMPLE), PictureUnits.US);
        for (Matcher address = ADDRESS.matcher(html); address.find(); ) {
            assertThat(address.group()).isIn("http://www.w3.org/2000/svg", "http://www.w3.org/1999/xhtml");
        }
        assertThat(html)
                .doesNotContainPattern("(?i)<script|<link|<img|<iframe|@import|\\son[a-z]+=|javascript:|src=|href=");
        assertThat(html).contains("default-src 'none'", "name=\"viewport\"");
    }

    @Test
    void whatPeopleEnteredIsShownAndNotObeyed() throws Exception {
        String nasty = "<script>alert('x')</script> & <b onload=\\\"y\\\">";
        String shown = "<script>alert('x')</script> & <b onload=\"y\">";
        String sample = Files.readString(SAMPLE)
                .replace("Boathouse on Lake Tervo: the upstairs workshop is warm", nasty)
                .replace("boathouse, slipway side", nasty)
                .replace("split air conditioner, one indoor unit", nasty)
                .replace("grey and yellow recovery cylinder no. 4", nasty)
                .replace("digital gauge, low side", nasty);
        String html = html(report(Files.writeString(folder.resolve("visit.json"), sample)), PictureUnits.US);
        Document document = parsed(html);
        assertThat(elements(document, "title").get(0).getTextContent()).isEqualTo(shown);
        assertThat(elements(document, "h1").get(0).getTextContent()).isEqualTo(shown);
        assertThat(elements(document, "script")).isEmpty();
        assertThat(elements(document, "b")).isEmpty();
    }

    @Test
    void theLinesThatMatterAreInTheHead() throws Exception {
        String late = html(changed("2029-04-30", "2024-04-30"));
        assertThat(late.substring(0, late.indexOf("<h2>")))
                .contains("class=\"summary\"", "<strong>do:</strong> prepare first", "retest was due 2024-04-30");
        String heavy = html(changed("\"41.35 lb\"", "\"90 lb\""));
        assertThat(heavy.substring(0, heavy.indexOf("<h2>"))).contains("<p class=\"alarm\"><strong>DANGER:</strong>");
    }

    @Test
    void aVisitWithoutCylinderOrReadingsGetsItsReport() throws Exception {
        String sample = Files.readString(SAMPLE);
        String bare = sample.substring(0, sample.indexOf(",\n  \"conditions\"")) + "\n}\n";
        String empty = bare.replaceAll("(?s)\"readings\": \\{.*?\\}", "\"readings\": {}");
        assertThat(empty).isNotEqualTo(bare);
        Document document =
                parsed(html(report(Files.writeString(folder.resolve("visit.json"), empty)), PictureUnits.US));
        assertThat(elements(document, "svg")).isEmpty();
        assertThat(document.getDocumentElement().getTextContent()).contains("read again");
    }

    @Test
    void theSameVisitGivesTheSameBytes() {
        assertThat(html(report(SAMPLE), PictureUnits.US)).isEqualTo(html(report(SAMPLE), PictureUnits.US));
    }
}
