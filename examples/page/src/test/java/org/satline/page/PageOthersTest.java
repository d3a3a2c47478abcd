package org.satline.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.audit.AuditReport;
import org.satline.audit.Auditor;
import org.satline.audit.cause.LikelyCause;
import org.satline.charge.margin.MeteringDevice;
import org.satline.json.JsonFields;
import org.satline.program.audit.AuditRows;
import org.satline.program.exercise.ExerciseSheet;
import org.satline.program.exercise.SheetOrder;
import org.satline.program.exercise.Topic;
import org.satline.program.page.Block;
import org.satline.quantity.UnitSystem;
import org.satline.simulation.SteadyState;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * What the page offers without a machine, in a browser as a person with a phone uses it. What is expected is what the library says on a
 * JVM.
 */
class PageOthersTest {
    private static final Path PAGE = Path.of("target", "satline-page.html").toAbsolutePath();
    private static final Path PICTURES = Path.of("target", "pictures");
    private static final Path AXE = Path.of("target", "axe", "package", "axe.min.js");

    private final Chromium browser = new Chromium();
    private final PageDriver page = new PageDriver(browser);
    private final SimulatedUnits units = new SimulatedUnits(JsonFields.read(Session.COMMON_KIT));
    private String name = "";

    @AfterEach
    void close() {
        browser.close();
    }

    private void begin(String language, String system, String screen) {
        name = language + "-" + system + "-";
        page.begin(PAGE, language, system);
        // one language in the look for the night: contrast is held to in both
        browser.run("localStorage.setItem('satline.look', '" + (language.equals("es") ? "night" : "day") + "')");
        browser.open(PAGE);
        page.go("more");
        page.touch("way-" + screen);
        browser.until("document.activeElement.id === 'heading'");
    }

    @ParameterizedTest
    @CsvSource({"en,us", "es,si"})
    void theGaugesOfASimulatedUnitFollowItsSlidersAndItsVerdictIsTheLibrarys(String language, String system)
            throws IOException {
        begin(language, system, "unit");
        Wording wording = wording(language, system);
        UnitSetting sound = UnitSetting.usual("R-410A", MeteringDevice.EXPANSION_VALVE);
        browser.until("document.querySelector('.dials') !== null");
        assertThat(browser.run("getComputedStyle(document.getElementById('answer')).display")
                        .asText())
                .as("the answer about a visit beside a model")
                .isEqualTo("none");
        shows(wording, sound);
        looked("50-unit");
        double before = needle();
        keyboard(wording, sound);
        UnitSetting low = sound.with(Knob.CHARGE, 72);
        page.slide("knob-charge", 72);
        shows(wording, low);
        assertThat(needle())
                .as("less charge, less liquid pressure: common practice, no source")
                .isLessThan(before);
        replies(low, "51-unit-low");
        UnitSetting dirty = sound.with(Knob.CONDENSER, 40);
        page.slide("knob-charge", 100);
        page.slide("knob-condenser", 40);
        replies(dirty, "52-unit-dirty");
        page.slide("unit-number", 7);
        page.touch("draw");
        browser.until("document.querySelector('.knobs') === null");
        looked("53-unit-hidden");
        UnitSetting drawn = drawn(sound, 7);
        replies(drawn, "54-unit-hidden-answered");
        page.touch("reveal");
        assertThat(browser.run("Number(document.getElementById('knob-charge').value)")
                        .asDouble())
                .isEqualTo(drawn.at(Knob.CHARGE));
        calm();
    }

    /** A slider by its keys alone, one step down and up again. */
    private void keyboard(Wording wording, UnitSetting from) {
        browser.run("document.getElementById('knob-charge').focus()");
        browser.key("ArrowLeft", 37);
        shows(wording, from.with(Knob.CHARGE, from.at(Knob.CHARGE) - 1));
        browser.key("ArrowRight", 39);
        shows(wording, from);
        System.out.println("page: gauges follow a slider in "
                + browser.run("Math.round(10 * satlineTimes.unit) / 10").asDouble() + " ms");
    }

    /** The first try that runs, as the page takes it. */
    private UnitSetting drawn(UnitSetting from, int number) {
        for (int i = 0; ; i++) {
            UnitSetting drawn = from.drawn(number, i);
            if (units.state(drawn).isPresent()) {
                return drawn;
            }
        }
    }

    private void shows(Wording wording, UnitSetting setting) {
        SteadyState state = units.state(setting).orElseThrow();
        assertThat(page.text("unit-readings"))
                .contains(wording.numbers().print(state.suctionLine()))
                .contains(wording.numbers().print(state.liquidLine()))
                .contains(wording.numbers().print(state.superheat()))
                .contains(wording.numbers().print(state.subcooling()))
                .contains(wording.numbers().print(state.supplyDryBulb()));
    }

    private double needle() {
        return browser.run("Number(document.querySelectorAll('.needle')[1].style.transform.match(/-?[\\d.]+/)[0])")
                .asDouble();
    }

    /** The answer of the library is called the same, any other another one. */
    private void replies(UnitSetting setting, String picture) throws IOException {
        Reply ours = Reply.of(units.report(setting, units.state(setting).orElseThrow()));
        for (Reply reply : Reply.values()) {
            browser.touch("document.querySelector('[data-word=\"" + reply.key() + "\"]')");
            assertThat(browser.run("document.querySelector('.verdict').classList.contains('same')")
                            .asBoolean())
                    .as(setting + " " + reply)
                    .isEqualTo(reply == ours);
        }
        browser.touch("document.querySelector('[data-word=\"" + ours.key() + "\"]')");
        browser.run("document.getElementById('outcome').scrollIntoView()");
        looked(picture);
    }

    @ParameterizedTest
    @CsvSource({"en,us", "es,si"})
    void aSheetIsTheOneThatTheProgramPrints(String language, String system) throws IOException {
        begin(language, system, "sheet");
        looked("60-sheet-order");
        for (Topic topic : Topic.values()) {
            if (!browser.run("document.getElementById('sheet-topic-" + topic.label() + "').checked")
                    .asBoolean()) {
                page.touch("sheet-topic-" + topic.label());
            }
        }
        page.pick("sheet-units", system);
        page.touch("sheet-key");
        page.touch("draw-sheet");
        browser.until("document.querySelector('.paper.key') !== null");
        browser.run("document.getElementById('paper').scrollIntoView()");
        looked("61-sheet");
        ExerciseSheet sheet = ExerciseSheet.of(
                new SheetOrder(
                        1,
                        Topic.values().length,
                        Optional.empty(),
                        List.of(Topic.values()),
                        Optional.of(UnitSystem.valueOf(system.toUpperCase(Locale.ROOT)))),
                new Language(language));
        assertThat(page.text("paper"))
                .isEqualTo(text(sheet.questions(ExerciseSheet.Answering.WRITTEN)) + text(sheet.key()));
        System.out.println("page: a sheet of all topics with its key in "
                + browser.run("Math.round(satlineTimes.sheet)").asInt() + " ms");
        calm();
    }

    private static String text(List<Block> blocks) {
        StringBuilder text = new StringBuilder();
        for (Block block : blocks) {
            if (block instanceof Block.Heading heading) {
                text.append(heading.text());
            } else if (block instanceof Block.Paragraph paragraph) {
                text.append(paragraph.text());
            } else if (block instanceof Block.Points points) {
                points.items().forEach(text::append);
            } else if (block instanceof Block.Blanks blanks) {
                blanks.labels().forEach(text::append);
            } else if (block instanceof Block.Table table) {
                text.append(table.title());
                table.head().forEach(text::append);
                table.rows().forEach(row -> row.forEach(text::append));
            } else if (block instanceof Block.Question question) {
                text.append(question.letter()).append(") ").append(question.text());
                question.choices().forEach(text::append);
                text.append(question.answer());
            }
        }
        return text.toString();
    }

    @ParameterizedTest
    @CsvSource({"en,us", "es,si"})
    void anAuditFindsWhatTheLibraryFinds(String language, String system) throws IOException {
        begin(language, system, "audit");
        page.touch("example");
        looked("70-audit");
        page.touch("compare");
        browser.until("document.querySelector('#audited .facts') !== null");
        String answers = browser.run("document.getElementById('answers').value").asText();
        AuditReport report = AuditRows.audited(PastedRows.of(answers), Auditor.standard());
        String said = page.text("audited");
        Wording wording = wording(language, system);
        assertThat(report.summary().causes()).isNotEmpty();
        for (LikelyCause cause : report.summary().causes()) {
            assertThat(said)
                    .contains(cause.refrigerant() + ": " + wording.name(cause.kind()) + ": "
                            + wording.name(
                                    cause.mistake().code(), cause.mistake().figures()));
        }
        assertThat(browser.run("document.querySelectorAll('.audited-outside').length")
                        .asInt())
                .isEqualTo(report.summary().outside());
        assertThat(browser.run("document.querySelectorAll('.audited-within').length")
                        .asInt())
                .isEqualTo(report.summary().within());
        browser.run("document.getElementById('audited').scrollIntoView()");
        looked("71-audited");
        browser.touch("document.querySelector('.audited-outside summary')");
        browser.run("document.querySelector('.audited-outside').scrollIntoView()");
        looked("72-audited-row");
        System.out.println("page: an audit of " + report.outcomes().size() + " answers in "
                + browser.run("Math.round(satlineTimes.audit)").asInt() + " ms");
        page.slide("answers", 5);
        page.touch("compare");
        browser.until("document.getElementById('problem').textContent !== ''");
        // cells from a spreadsheet stand between tabulators
        browser.run("document.getElementById('answers').value = " + new TextNode(answers.replace(',', '\t'))
                + "; document.getElementById('answers').dispatchEvent(new Event('input'))");
        page.touch("compare");
        browser.until("document.querySelectorAll('.audited-outside').length === "
                + report.summary().outside());
        calm();
    }

    private static Wording wording(String language, String system) {
        return Wording.of(new Language(language), system.equals("si") ? UnitSystem.SI : UnitSystem.US);
    }

    /** A picture for people, and what a checker can see: nothing wrong, nothing cut, neither at twice the size of letters. */
    private void looked(String picture) throws IOException {
        browser.picture(PICTURES.resolve(name + picture + ".png"));
        assertThat(AXE).as("axe-core, fetched by src/test/sh/browser.sh").exists();
        assertThat(page.accessibility(Files.readString(AXE))).as(picture).isEmpty();
        assertThat(page.clipped()).as(picture).isEmpty();
        browser.run("document.documentElement.style.fontSize = '200%'");
        browser.picture(PICTURES.resolve(name + picture + "-200.png"));
        assertThat(browser.run("document.documentElement.scrollWidth <= innerWidth")
                        .asBoolean())
                .as(picture + ": text of 200 % needs no scrolling sideways")
                .isTrue();
        browser.run("document.documentElement.style.fontSize = ''");
    }

    private void calm() {
        assertThat(browser.requests()).as("requests that left the page").isEmpty();
        assertThat(browser.errors()).as("errors").isEmpty();
    }
}
