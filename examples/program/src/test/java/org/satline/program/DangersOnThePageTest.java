package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.json.JsonFields;
import org.satline.program.page.PageText;
import org.satline.program.visit.Detail;
import org.satline.program.visit.VisitPage;
import org.satline.quantity.UnitSystem;
import org.satline.visit.NextAction;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Language;
import org.satline.wording.VisitLines;
import org.satline.wording.Wording;

/** No danger gets lost: each is told or counted in the lines that matter, and printed in full on the short page. */
class DangersOnThePageTest {
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.US);

    @TestFactory
    List<DynamicTest> everyDangerOfATrialIsTold() {
        List<DynamicTest> tests = new ArrayList<>();
        for (VisitTrial trial : VisitTrial.all()) {
            tests.add(DynamicTest.dynamicTest(trial.toString(), () -> {
                try {
                    told(VisitReporter.report(VisitFile.read(JsonFields.read(trial.text()))));
                } catch (IllegalArgumentException refused) {
                    assertThat(trial.expected()).contains("refuse");
                }
            }));
        }
        return tests;
    }

    private static void told(VisitReport report) {
        List<Finding> dangers = report.findings().stream()
                .filter(each -> each.severity() == Severity.DANGER_NOW)
                .toList();
        if (dangers.isEmpty()) {
            return;
        }
        assertThat(report.action()).isInstanceOf(NextAction.MakeSafe.class);
        assertThat(report.action().because()).containsAll(dangers);
        VisitLines lines = VisitLines.of(report, WORDING);
        List<VisitLines.Line> said = lines.top().stream()
                .filter(line -> line.topic() == VisitLines.Topic.DANGER)
                .toList();
        assertThat(lines.top().stream().mapToInt(line -> line.rows().size()).sum())
                .isLessThanOrEqualTo(VisitLines.MOST_ROWS);
        assertThat(said.size() + more(said)).isGreaterThanOrEqualTo(distinct(dangers));
        String page = flat(PageText.of(VisitPage.blocks(report, WORDING, Detail.SHORT)));
        assertThat(dangers).allSatisfy(each -> assertThat(page).contains(flat(WORDING.of(each))));
    }

    /** How many more the last line counts; it takes a line of its own. */
    private static int more(List<VisitLines.Line> said) {
        String last = said.get(said.size() - 1).text();
        String digits = last.startsWith("and more") ? last.replaceAll("[^0-9]", "") : "";
        return digits.isEmpty() ? 0 : Integer.parseInt(digits) - 1;
    }

    private static int distinct(List<Finding> dangers) {
        return (int) dangers.stream().map(WORDING::of).distinct().count();
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** Six cylinders, each overfilled: more than the lines hold, so that the rest is counted. */
    @Test
    void whatDoesNotFitIsCounted() throws IOException {
        FieldValue.Fields one = JsonFields.read(Files.readString(Path.of("samples", "boathouse.json")));
        Map<String, FieldValue> visit = new LinkedHashMap<>(one.values());
        FieldValue.Fields cylinder = (FieldValue.Fields) Objects.requireNonNull(visit.remove("cylinder"));
        List<FieldValue> cylinders = new ArrayList<>();
        for (int i = 1; i <= 6; i++) {
            Map<String, FieldValue> full = new LinkedHashMap<>(cylinder.values());
            full.put("name", new FieldValue.Text("cylinder " + i));
            full.put("scaleReading", new FieldValue.Text("80 lb"));
            cylinders.add(new FieldValue.Fields(full));
        }
        visit.put("cylinders", new FieldValue.Items(cylinders));
        visit.put("connected", new FieldValue.Text("cylinder 1"));
        VisitReport report = VisitReporter.report(VisitFile.read(new FieldValue.Fields(visit)));
        told(report);
        assertThat(VisitLines.of(report, WORDING).top().stream()
                        .filter(line -> line.topic() == VisitLines.Topic.DANGER)
                        .map(VisitLines.Line::text))
                .last()
                .asString()
                .contains("more dangers");
    }
}
