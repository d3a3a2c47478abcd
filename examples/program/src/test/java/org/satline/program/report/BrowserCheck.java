package org.satline.program.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.satline.json.JsonFields;
import org.satline.program.exercise.ExerciseSheet;
import org.satline.program.exercise.PageForm;
import org.satline.program.exercise.SheetOrder;
import org.satline.program.pictures.PictureUnits;
import org.satline.program.visit.Detail;
import org.satline.quantity.UnitSystem;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * Looks at the report of a visit in a real browser. Not part of the ordinary build: run {@code examples/program/src/test/sh/browser.sh},
 * which brings the browser along. Pictures of the page are left in {@code target/browser} for people to look at.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BrowserCheck {
    private static final Path FOLDER = Path.of("target", "browser").toAbsolutePath();
    private static final int PHONE = 360;
    /** Letters smaller than this on a phone cannot be read at arm's length; common practice, no source. */
    private static final double LEAST_LETTERS = 8.8;

    private static final String FETCHED =
            "<script>addEventListener('load', () => document.body.setAttribute('data-fetched', performance.getEntriesByType('resource').length))</script>";

    private static final String POLICY = "<meta http-equiv=\"Content-Security-Policy\"[^>]*>";

    private Path page = FOLDER;
    private RequestTrap trap = openedTrap();
    private Browser browser = new Browser(FOLDER, trap.port());

    private static RequestTrap openedTrap() {
        try {
            return RequestTrap.opened();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @BeforeAll
    void writeTheReport() throws IOException {
        Files.createDirectories(FOLDER);
        String sample = Files.readString(Path.of("samples", "boathouse.json"))
                .replace("the upstairs workshop is warm", "<script>document.title='run'</script> is warm");
        Path visit = Files.writeString(FOLDER.resolve("visit.json"), sample);
        String html = VisitHtml.of(
                VisitReporter.report(VisitFile.read(JsonFields.read(Files.readString(visit)))),
                Wording.of(Language.ENGLISH, UnitSystem.US),
                Detail.EXPLAINED,
                PictureUnits.US);
        page = Files.writeString(FOLDER.resolve("report.html"), html);
    }

    @AfterAll
    void closeTheTrap() throws IOException {
        trap.close();
    }

    /** A copy of the report with something added before its end, and without the policy that would forbid it. */
    private Path copy(String name, String added) throws IOException {
        String html = Files.readString(page).replaceFirst(POLICY, "").replace("</body>", added + "</body>");
        return Files.writeString(FOLDER.resolve(name), html);
    }

    @Test
    void itAsksTheNetworkForNothingAndComplainsOfNothing() throws Exception {
        int before = trap.requests().size();
        Browser.Look look = browser.at(page, 1100, "--dump-dom");
        assertThat(look.messages()).isEmpty();
        assertThat(look.out()).contains("<title>Boathouse on Lake Tervo: &lt;script&gt;");
        // The browser itself looks for its maker now and then; what the page causes goes to a host that the page names.
        String html = Files.readString(page);
        for (String host : hosts(trap.requests().subList(before, trap.requests().size()))) {
            assertThat(html).doesNotContain(host);
        }
        // What the page fetched, or tried to, by its own account, without the policy that would stop it.
        assertThat(fetched(copy("fetched.html", FETCHED))).isEqualTo("0");
    }

    private static List<String> hosts(List<String> requests) {
        return requests.stream()
                .map(line -> line.replaceFirst("^[A-Z]+ (?:http://)?([^/: ]+).*$", "$1"))
                .toList();
    }

    private String fetched(Path copy) throws Exception {
        String out = browser.at(copy, 1100, "--dump-dom").out();
        Matcher seen = Pattern.compile("data-fetched=\"(\\d+)\"").matcher(out);
        assertThat(seen.find()).as(out).isTrue();
        return seen.group(1);
    }

    @Test
    void theTrapCatchesARequestAndTheLogAnError() throws Exception {
        Path asking = copy(
                "asking.html", "<img src=\"http://outside.invalid/x.png\"/><script>throw new Error('loud')</script>");
        int before = trap.requests().size();
        Browser.Look look = browser.at(asking, 1100, "--dump-dom");
        assertThat(hosts(trap.requests().subList(before, trap.requests().size())))
                .contains("outside.invalid");
        assertThat(fetched(copy("asking-too.html", "<img src=\"http://outside.invalid/x.png\"/>" + FETCHED)))
                .isEqualTo("1");
        assertThat(look.messages()).anyMatch(line -> line.contains("loud"));
    }

    @Test
    void aPhoneNeedsNoScrollingSidewaysAndItsLettersCanBeRead() throws Exception {
        double[] seen = onPhone("");
        assertThat(seen[1]).as("width of the frame").isEqualTo(PHONE);
        assertThat(seen[0]).as("width of the page").isLessThanOrEqualTo(PHONE);
        assertThat(seen[2]).as("elements that stick out").isZero();
        assertThat(seen[3]).as("smallest letters of the text").isGreaterThanOrEqualTo(12);
        // the smallest letters of a picture are 15 of its units high
        assertThat(15 * seen[4]).as("smallest letters of a picture").isGreaterThanOrEqualTo(LEAST_LETTERS);
    }

    @Test
    void aPageThatIsTooWideIsNoticed() throws Exception {
        double[] seen = onPhone("<div style=\"width: 500px\">wide</div>");
        assertThat(seen[0]).isGreaterThan(PHONE);
        assertThat(seen[2]).isPositive();
    }

    /** Width of the page, of the window, number of elements that stick out, size of the smallest letters, smallest scale of a picture. */
    private double[] onPhone(String added) throws Exception {
        copy("measured.html", added + """
                <script>
                addEventListener('load', () => {
                  const wide = [...document.querySelectorAll('body *')].filter(e => !e.closest('svg') && e.getBoundingClientRect().right > innerWidth + 0.5);
                  const sizes = [...document.querySelectorAll('p, dd, dt, li')].map(e => parseFloat(getComputedStyle(e).fontSize));
                  const svg = [...document.querySelectorAll('svg')].map(e => e.getBoundingClientRect().width / e.viewBox.baseVal.width);
                  parent.postMessage([document.documentElement.scrollWidth, innerWidth, wide.length, Math.min(...sizes), Math.min(...svg)].join(' '), '*');
                });
                </script>
                """);
        // A window of the browser cannot be as narrow as a phone; a frame can.
        Path frame = Files.writeString(FOLDER.resolve("phone.html"), """
                <!DOCTYPE html><html><body><script>
                addEventListener('message', e => document.body.setAttribute('data-seen', e.data));
                </script><iframe src="measured.html" width="%d" height="1500" style="border:0"></iframe></body></html>
                """.formatted(PHONE));
        String out = browser.at(frame, 1100, "--dump-dom").out();
        Matcher seen = Pattern.compile("data-seen=\"([^\"]+)\"").matcher(out);
        assertThat(seen.find()).as(out).isTrue();
        return Arrays.stream(seen.group(1).split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private long printed(Path html) throws Exception {
        Path pdf = FOLDER.resolve("printed.pdf");
        browser.at(html, 1100, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
        String text = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        assertThat(text).startsWith("%PDF-");
        return Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(text).results().count();
    }

    @Test
    void itPrints() throws Exception {
        assertThat(printed(page)).isBetween(4L, 20L);
    }

    /** Where the browser breaks a page is known to it alone, so that only here the pages can be counted. */
    @Test
    void withoutDerivationsItPrintsOnFourPages() throws Exception {
        List<Path> samples;
        try (Stream<Path> files = Files.list(Path.of("samples"))) {
            samples = files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
        assertThat(samples).isNotEmpty();
        for (Path sample : samples) {
            String html = VisitHtml.of(
                    VisitReporter.report(VisitFile.read(JsonFields.read(Files.readString(sample)))),
                    Wording.of(Language.ENGLISH, UnitSystem.US),
                    Detail.SHORT,
                    PictureUnits.US);
            assertThat(printed(Files.writeString(FOLDER.resolve("short.html"), html)))
                    .as("%s", sample)
                    .isLessThanOrEqualTo(4);
        }
    }

    @Test
    void nineExercisesPrintOnSixPages() throws Exception {
        for (long seed = 1; seed <= 5; seed++) {
            String html = ExerciseSheet.of(SheetOrder.usual(seed)).questions(PageForm.HTML);
            assertThat(printed(Files.writeString(FOLDER.resolve("sheet.html"), html)))
                    .as("sheet %d", seed)
                    .isLessThanOrEqualTo(6);
        }
    }

    @Test
    void picturesOfItAreLeftToBeLookedAt() throws Exception {
        for (String name : List.of("colour", "grey")) {
            String style = name.equals("grey") ? "<style>html { filter: grayscale(1); }</style>" : "";
            Path shot = FOLDER.resolve(name + ".png");
            browser.at(copy(name + ".html", style), 1100, "--screenshot=" + shot);
            assertThat(Files.size(shot)).isGreaterThan(20_000);
        }
    }
}
