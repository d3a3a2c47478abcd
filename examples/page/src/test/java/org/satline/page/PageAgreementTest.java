package org.satline.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.satline.json.JsonFields;
import org.satline.quantity.UnitSystem;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.ReportFields;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * The page answers what the library answers: same action, findings and keys, numbers within 1e-9, words equal but at an edge of rounding.
 */
class PageAgreementTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path PAGE = Path.of("target", "satline-page.html").toAbsolutePath();
    /** How many visits; asked for by the project. */
    private static final int VISITS = Integer.getInteger("satline.page.visits", 1000);
    /**
     * Relative; asked for by the project. Exponentials and logarithms of a browser differ in their last digits, and solvers carry that on.
     */
    private static final double CLOSE = 1e-9;
    /** Visits of which the words may differ where a number lies on an edge of rounding; asked for by the project. */
    private static final int MOST_AT_AN_EDGE = 5;

    private final List<String> atAnEdge = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();
    private final Map<String, Integer> actions = new TreeMap<>();

    @Test
    void aThousandRandomVisitsHaveOneAnswer() throws IOException, InterruptedException, ExecutionException {
        RandomVisits visits = new RandomVisits(20261130);
        ExecutorService library = Executors.newSingleThreadExecutor();
        try (Chromium browser = new Chromium()) {
            browser.open(PAGE);
            for (int i = 0; i < VISITS; i++) {
                String visit = visits.next();
                String language = i % 2 == 0 ? "en" : "es";
                boolean si = i % 4 > 1;
                // the library answers while the page does
                Future<String> here = library.submit(() -> here(visit, language, si));
                String there = browser.run("answer(" + new TextNode(visit) + ", '" + language + "', " + si + ")")
                        .asText();
                compare(i + ": " + visit, here.get(), there);
            }
        } finally {
            library.shutdownNow();
        }
        System.out.println("page against library: " + VISITS + " visits, actions " + actions
                + ", words at an edge of rounding " + atAnEdge.size());
        assertThat(wrong).isEmpty();
        assertThat(atAnEdge).hasSizeLessThanOrEqualTo(MOST_AT_AN_EDGE);
        assertThat(actions).as("the visits are of many kinds").hasSizeGreaterThan(3);
    }

    private static String here(String visit, String language, boolean si) {
        VisitReport report;
        try {
            report = VisitReporter.report(VisitFile.read(JsonFields.read(visit)));
        } catch (IllegalArgumentException e) {
            return "refused: " + e.getMessage();
        }
        Wording wording = Wording.of(new Language(language), si ? UnitSystem.SI : UnitSystem.US);
        String fields = JsonFields.write(ReportFields.of(report)).replace("\n", "");
        return fields + "\n" + VisitWords.of(report, wording);
    }

    private void compare(String visit, String here, String there) throws IOException {
        if (here.startsWith("refused: ") || there.startsWith("refused: ")) {
            actions.merge("refused", 1, Integer::sum);
            if (!here.equals(there)) {
                wrong.add(visit + "\nlibrary " + head(here) + "\npage " + head(there));
            }
            return;
        }
        String[] mine = here.split("\n", 2);
        String[] its = there.split("\n", 2);
        JsonNode fields = JSON.readTree(mine[0]);
        actions.merge(fields.path("action").asText(), 1, Integer::sum);
        List<String> different = new ArrayList<>();
        compare("", fields, JSON.readTree(its[0]), different);
        if (!different.isEmpty()) {
            wrong.add(visit + "\n" + different);
        }
        if (!mine[1].equals(its[1])) {
            atAnEdge.add(visit + "\n" + firstDifference(mine[1], its[1]));
        }
    }

    private static String head(String text) {
        return text.substring(0, Math.min(300, text.length()));
    }

    private static String firstDifference(String mine, String its) {
        List<String> a = mine.lines().toList();
        List<String> b = its.lines().toList();
        for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
            if (!a.get(i).equals(b.get(i))) {
                return "library " + a.get(i) + "\npage    " + b.get(i);
            }
        }
        return a.size() + " lines against " + b.size();
    }

    private static void compare(String path, JsonNode mine, JsonNode its, List<String> different) {
        if (mine.isNumber() && its.isNumber()) {
            double size = Math.max(1, Math.abs(mine.doubleValue()));
            if (!(Math.abs(mine.doubleValue() - its.doubleValue()) <= CLOSE * size)) {
                different.add(path + " " + mine + " " + its);
            }
        } else if (mine.isObject() && its.isObject() && mine.size() == its.size()) {
            mine.properties()
                    .forEach(each ->
                            compare(path + "." + each.getKey(), each.getValue(), its.path(each.getKey()), different));
        } else if (mine.isArray() && its.isArray() && mine.size() == its.size()) {
            for (int i = 0; i < mine.size(); i++) {
                compare(path + "[" + i + "]", mine.get(i), its.get(i), different);
            }
        } else if (!mine.equals(its)) {
            different.add(path + " " + mine + " " + its);
        }
    }
}
