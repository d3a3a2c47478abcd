package org.satline.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.json.JsonFields;
import org.satline.quantity.UnitSystem;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Language;
import org.satline.wording.VisitLines;
import org.satline.wording.Wording;

/** The page in a browser, as a person with a phone uses it. The visit is the invented one of the program's sample. */
class PageDriveTest {
    private static final Path PAGE = Path.of("target", "satline-page.html").toAbsolutePath();
    private static final Path PICTURES = Path.of("target", "pictures");
    private static final Path AXE = Path.of("target", "axe", "package", "axe.min.js");

    private final Chromium browser = new Chromium();

    private Chromium browser() {
        return browser;
    }

    @AfterEach
    void close() {
        browser.close();
    }

    @ParameterizedTest
    @CsvSource({"en,us", "en,si", "es,us", "es,si"})
    void aVisitFromTheFirstQuestionToTheNextReadings(String language, String units) throws IOException {
        PageDriver page = new PageDriver(browser());
        page.begin(PAGE, language, units);
        picture(language, units, "01-first");
        story(page, language, units);
        page.go("plan");
        assertThat(page.lines())
                .as("the lines that matter, as the library words them on a JVM")
                .isEqualTo(expected(language, units));
        picture(language, units, "20-plan");
        accessible(page);
        browser().touch("document.getElementById('act-0')");
        browser().until("document.getElementById('item-1').className === 'now'");
        picture(language, units, "21-second-act");
        browser().touch("document.getElementById('wait')");
        browser().until("document.getElementById('clock').className.includes('runs')");
        picture(language, units, "22-wait");
        for (String screen : new String[] {"cylinder", "chart", "why", "more"}) {
            page.go(screen);
            picture(language, units, "30-" + screen);
            accessible(page);
            assertThat(page.clipped()).as(screen).isEmpty();
        }
        everyNumberOpensItsDerivation(page);
        page.go("chart");
        browser().until("document.querySelectorAll('#cycle .point').length === 4");
        browser().run("document.getElementById('cycle').scrollIntoView()");
        picture(language, units, "31-cycle");
        accessible(page);
        assertThat(page.clipped()).as("cycle").isEmpty();
        page.go("plan");
        browser().touch("document.getElementById('again')");
        picture(language, units, "40-next");
        page.number("118", units.equals("us") ? "psig" : "kPa");
        calm();
    }

    /** What the library says of the visit that the device keeps. */
    private String expected(String language, String units) {
        String kept = browser().run("localStorage.getItem('satline.visit')").asText();
        boolean us = units.equals("us");
        assertThat(kept)
                .as("readings as they were typed")
                .contains(us ? "\"388 psig\"" : "\"2675.2 kPa gauge\"", us ? "\"98 degF\"" : "\"36.7 degC\"");
        VisitReport report = VisitReporter.report(VisitFile.read(JsonFields.read(kept)));
        Wording wording = Wording.of(new Language(language), us ? UnitSystem.US : UnitSystem.SI);
        return VisitLines.of(report, wording).top().stream()
                .map(line -> line.name() + line.text())
                .collect(Collectors.joining());
    }

    /** Lines on top that tell a number, and the figures of cylinder and chart. */
    private void everyNumberOpensItsDerivation(PageDriver page) {
        for (String screen : new String[] {"plan", "cylinder", "chart"}) {
            String touchable = screen.equals("plan") ? "#answer .touch" : "#screen .facts .touch";
            page.go(screen);
            int count = browser()
                    .run("document.querySelectorAll('" + touchable + "').length")
                    .asInt();
            assertThat(count).as(screen).isPositive();
            for (int i = 0; i < count; i++) {
                page.go(screen);
                String number = "document.querySelectorAll('" + touchable + "')[" + i + "]";
                String text = browser().run(number + ".textContent").asText();
                browser().touch(number);
                browser().until("document.getElementById('way-why').getAttribute('aria-current') === 'page'");
                int open = browser()
                        .run("document.querySelectorAll('.derivation[open]').length")
                        .asInt();
                assertThat(open > 0 || !text.matches(".*\\d.*"))
                        .as(screen + ": " + text)
                        .isTrue();
            }
        }
    }

    /** The sample visit, typed in; figures in SI are those of the file in other units. */
    private void story(PageDriver page, String language, String units) {
        boolean us = units.equals("us");
        page.gas("410");
        page.choose("expansion-valve");
        page.number(us ? "1017" : "310", us ? "ft" : "m");
        page.number(us ? "10" : "5.6", us ? "\u00b0F" : "K");
        page.number("3.2", "kg");
        page.answer("the sailing club");
        picture(language, units, "02-reading");
        accessible(page);
        gauge(page, us, "118", "813.6");
        temperature(page, us, "53", "11.7");
        gauge(page, us, "388", "2675.2");
        temperature(page, us, "98", "36.7");
        temperature(page, us, "78", "25.6");
        temperature(page, us, "65", "18.3");
        temperature(page, us, "59", "15");
        temperature(page, us, "91", "32.8");
        page.number("25", "min");
        page.choose("yes");
        page.number("800", "cfm");
        page.number("24000", "Btu/h");
        picture(language, units, "03-cylinder");
        page.choose("recovery-vapour");
        mass(page, us, "41.35", "18.756");
        mass(page, us, "27.4", "12.428");
        mass(page, us, "47.7", "21.637");
        page.answer("DOT-4BW400");
        page.day("2029-04-30");
        page.gas("R-410A");
        page.choose("recovered");
        page.answer("the sailing club");
        temperature(page, us, "84", "28.9");
        gauge(page, us, "252", "1737.5");
        page.choose("2");
        page.choose("vapour");
        page.choose("centre");
        page.choose("plain-flare");
        page.choose("open-close-valve");
        page.number("5", "ft");
        page.choose("vapour");
        page.choose("system");
    }

    private static void gauge(PageDriver page, boolean us, String psi, String kilopascals) {
        page.number(us ? psi : kilopascals, us ? "psig" : "kPa");
    }

    private static void temperature(PageDriver page, boolean us, String fahrenheit, String celsius) {
        page.number(us ? fahrenheit : celsius, us ? "\u00b0F" : "\u00b0C");
    }

    private static void mass(PageDriver page, boolean us, String pounds, String kilograms) {
        page.number(us ? pounds : kilograms, us ? "lb" : "kg");
    }

    private void picture(String language, String units, String name) {
        browser().picture(PICTURES.resolve(language + "-" + units + "-" + name + ".png"));
    }

    private void accessible(PageDriver page) {
        assertThat(AXE).as("axe-core, fetched by src/test/sh/browser.sh").exists();
        try {
            assertThat(page.accessibility(Files.readString(AXE))).isEmpty();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void calm() {
        assertThat(browser().requests()).as("requests that left the page").isEmpty();
        assertThat(browser().errors()).as("errors").isEmpty();
    }

    @Test
    void aDangerStandsAboveEverythingElse() throws IOException {
        PageDriver page = new PageDriver(browser());
        page.begin(PAGE, "en", "us");
        String sample = Files.readString(Path.of("..", "program", "samples", "boathouse.json"));
        take(sample.replace("\"41.35 lb\"", "\"70 lb\""));
        page.go("plan");
        assertThat(page.answer()).startsWith("DANGER");
        browser().picture(PICTURES.resolve("danger.png"));
        browser().touch("document.querySelector('#answer .danger .touch')");
        browser().until("document.querySelectorAll('.derivation[open]').length > 0");
        page.go("more");
        page.touch("way-unit");
        browser().until("document.querySelector('.dials') !== null");
        assertThat(page.answer()).as("a danger stands beside a model too").contains("DANGER");
        calm();
    }

    @Test
    void theKeyboardAloneReachesEveryScreenAndTheFileGoesInAndOut() throws IOException {
        PageDriver page = new PageDriver(browser());
        page.begin(PAGE, "en", "us");
        take(Files.readString(Path.of("..", "program", "samples", "boathouse.json")));
        browser().run("document.getElementById('way-why').focus()");
        browser().key("Enter", 13);
        browser().until("document.activeElement.id === 'heading'");
        assertThat(browser()
                        .run("document.querySelectorAll('.derivation').length")
                        .asInt())
                .isGreaterThan(10);
        browser().run("document.documentElement.style.fontSize = '200%'");
        assertThat(browser()
                        .run("document.documentElement.scrollWidth <= innerWidth")
                        .asBoolean())
                .as("text of 200 % needs no scrolling sideways")
                .isTrue();
        browser().picture(PICTURES.resolve("text-200.png"));
        calm();
    }

    /** Takes a visit file in as the input of files does. */
    private void take(String json) {
        browser()
                .run("localStorage.setItem('satline.visit', " + new com.fasterxml.jackson.databind.node.TextNode(json)
                        + ")");
        browser().open(PAGE);
    }
}
