package org.satline.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.satline.audit.AuditReport;
import org.satline.audit.Auditor;
import org.satline.program.audit.AuditRows;
import org.satline.program.audit.CaloricZero;
import org.satline.program.file.CsvRow;
import org.satline.quantity.Temperature;

/** For those who check: answers of another calculator, pasted, and what the audit finds. For the one thread of a page. */
final class AuditScreen {
    /** Invented answers: gauge pressures called absolute, and a comma for a point. */
    private static final String EXAMPLE =
            """
            id,refrigerant,quantity,temperature_K,pressure_Pa,answer,unit,altitude_m
            a-20,R-134a,dew_pressure,253.15,,31.4,kPa,
            a0,R-134a,dew_pressure,FREEZING,,191.5,kPa,
            a20,R-134a,dew_pressure,293.15,,470.4,kPa,
            a40,R-134a,dew_pressure,313.15,,915.3,kPa,
            b0,R-32,dew_pressure,FREEZING,,813.1,kPa,
            b20,R-32,dew_pressure,293.15,,1474.6,kPa,
            c0,R-600a,bubble_liquid_density,FREEZING,,580.6,kg/m3,
            c20,R-600a,bubble_liquid_density,293.15,,556.9,kg/m3,
            comma,R-22,dew_pressure,283.15,,"6,8",bar,
            """.replace("FREEZING", String.valueOf(Temperature.ofCelsius(0).kelvins()));

    private final Page page;
    private final Node outcome = Node.of("div").set("id", "audited").set("role", "status");
    private String pasted = "";
    private CaloricZero zero = CaloricZero.IIR;

    AuditScreen(Page page) {
        this.page = page;
    }

    Node node() {
        Node problem = Node.of("p", "problem").set("role", "alert").set("id", "problem");
        Node input = Node.of("textarea")
                .set("id", "answers")
                .set("rows", "8")
                .set("wrap", "off")
                .set("spellcheck", "false")
                .set("aria-describedby", "columns problem")
                .value(pasted);
        input.on("input", () -> pasted = input.value());
        Node file = Node.of("input")
                .set("type", "file")
                .set("accept", ".csv,text/csv")
                .set("id", "answers-file");
        file.on(
                "change",
                () -> Browser.read(file.element(), text -> {
                    pasted = text;
                    input.value(text);
                }));
        Node zeros = Choices.of(
                "zero",
                page.text("audit.zero"),
                Stream.of(CaloricZero.values()).map(PageTexts::word).toList(),
                word -> page.text("audit.zero." + word),
                PageTexts.word(zero),
                word -> zero = CaloricZero.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')));
        Node columns = Node.of("ul").set("id", "columns");
        columns.add(
                Node.of("li").text(page.text("audit.needed") + " " + String.join(", ", AuditRows.REQUIRED)),
                Node.of("li").text(page.text("audit.may") + " " + String.join(", ", AuditRows.OPTIONAL)));
        return Node.of("section", "card")
                .set("aria-labelledby", "heading")
                .add(
                        Node.of("h2").set("id", "heading").set("tabindex", "-1").text(page.text("audit.heading")),
                        Node.of("p").text(page.text("audit.what")),
                        columns,
                        UnitScreen.labelled(page.text("audit.answers"), input),
                        Node.of("label", "file")
                                .text(page.text("file.in") + " ")
                                .add(file),
                        Node.of("p", "where").text(page.text("audit.zero")),
                        zeros,
                        Node.of("div", "steps")
                                .add(
                                        Node.button("step", page.text("audit.example"), () -> {
                                                    pasted = EXAMPLE;
                                                    input.value(EXAMPLE);
                                                })
                                                .set("id", "example"),
                                        Node.button("step next", page.text("audit.compare"), () -> compare(problem))
                                                .set("id", "compare")),
                        problem,
                        outcome);
    }

    /** The equations are solved for each row, which takes a moment: that is said before. */
    private void compare(Node problem) {
        outcome.cleared();
        problem.text("");
        List<CsvRow> rows;
        try {
            rows = PastedRows.of(pasted);
        } catch (PastedRows.HeaderException e) {
            problem.text(page.text(e.key) + " " + e.column);
            return;
        }
        if (rows.isEmpty()) {
            problem.text(page.text("audit.noRows"));
            return;
        }
        outcome.add(Node.of("p").text(page.text("audit.comparing")));
        Browser.later(() -> audit(rows), 30);
    }

    private void audit(List<CsvRow> rows) {
        double start = Browser.stopwatch();
        outcome.cleared();
        AuditReport report = AuditRows.audited(rows, Auditor.of(zero.state()));
        outcome.add(new AuditOutcomes(page, report).node());
        Browser.note("audit", Browser.stopwatch() - start);
    }
}
