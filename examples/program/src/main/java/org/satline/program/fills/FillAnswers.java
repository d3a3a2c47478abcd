package org.satline.program.fills;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.satline.cylinder.CylinderContents;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRule;
import org.satline.filling.Jurisdiction;
import org.satline.cylinder.Refusal;
import org.satline.filling.RuleOutcome;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.program.file.CsvAnswer;
import org.satline.program.file.CsvRow;
import org.satline.program.file.Shown;
import org.satline.program.page.Printed;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.safety.Caution;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * Answers rows of {@code fills}. A cylinder that must not be filled gets no limit but the reasons. Stamps that a row leaves out do not
 * hinder {@code maximum_contents_kg}, which is what the one rule says; the note says what could not be tested and what to supply. The last column,
 * {@code allowed_contents_kg}, is the smallest of what that rule and its set allow, and empty where nothing may be filled in or a test that applies
 * could not be made: a program that reads numbers alone goes by it. Nothing is thrown. Thread-safe.
 */
public final class FillAnswers {
    /** Columns that the input has to have. */
    public static final List<String> INPUT =
            List.of("id", "refrigerant", "water_capacity_kg", "tare_kg", "rule", "maximum_temperature_K");

    /** Columns that it may have. */
    public static final List<String> OPTIONAL = List.of(
            "service_pressure_Pa_gauge",
            "test_pressure_Pa_gauge",
            "specification",
            "flammable_mark",
            "refillable",
            "retest_due",
            "fill_date",
            "jurisdiction");

    /** Columns of the output. */
    public static final List<String> OUTPUT = List.of(
            "id", "refrigerant", "rule", "maximum_contents_kg", "maximum_gross_kg", "note", "allowed_contents_kg");

    private final FillAssessor assessor = FillAssessor.standard();
    private final Catalogue catalogue = Catalogue.standard();
    private final Map<String, SaturationCurve> curves = new ConcurrentHashMap<>();

    /** Makes an answerer with the rules that ship with the library. */
    public FillAnswers() {}

    /**
     * Lists the rules.
     *
     * @return one line for each: name, inequality, citation
     */
    public List<String> rules() {
        return assessor.rules().all().stream().map(FillRule::toString).toList();
    }

    /**
     * Answers one row.
     *
     * @param row a row with the columns of {@link #INPUT} and any of {@link #OPTIONAL}
     * @return cells for the columns of {@link #OUTPUT}
     */
    public CsvAnswer answer(CsvRow row) {
        List<String> cells = new ArrayList<>(List.of(row.raw("id"), row.raw("refrigerant")));
        try {
            row.fault().ifPresent(fault -> {
                throw new IllegalArgumentException(fault + "; give each cell, empty where it has no value");
            });
            cells.addAll(computed(row));
            return new CsvAnswer(cells, true);
        } catch (RuntimeException e) {
            // Whatever stopped this row must not stop the others; the note carries it.
            String reason = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            cells.addAll(List.of(row.raw("rule"), "", "", Shown.line(reason), ""));
            return new CsvAnswer(cells, false);
        }
    }

    private List<String> computed(CsvRow row) {
        Optional<FillRule> rule = row.text("rule").map(assessor.rules()::rule);
        Jurisdiction chosen =
                row.text("jurisdiction").map(assessor.rules()::jurisdiction).orElseGet(() -> setOf(rule));
        FillQuestion question = FillQuestion.of(
                        StampCells.read(row), new CylinderContents.Known(curve(row.required("refrigerant"))))
                .acceptingPartialStamps()
                .under(chosen);
        Optional<Double> warmest = row.number("maximum_temperature_K");
        if (warmest.isPresent()) {
            question = question.warmestAt(Temperature.ofKelvins(warmest.get()));
        }
        if (row.text("fill_date").isPresent()) {
            question = question.on(StampCells.date(row, "fill_date"));
        }
        FillAssessment assessment = assessor.assess(question);
        List<String> cells = new ArrayList<>(
                rule.isPresent() ? ofRule(assessment, rule.get(), chosen) : governing(assessment, chosen));
        List<String> notes = new ArrayList<>(List.of(cells.get(cells.size() - 1)));
        notes.addAll(curve(row.required("refrigerant")).warnings());
        OptionalDouble allowed = allowed(assessment, rule);
        if (allowed.isEmpty()) {
            assessment.refusals().forEach(refusal -> notes.add("NOTHING IS ALLOWED: " + Shown.line(refusal.text())));
        }
        if (!assessment.everyTestMade()) {
            notes.add(OpenTests.note(assessment));
        }
        notes.removeIf(String::isEmpty);
        cells.set(cells.size() - 1, String.join("; ", notes));
        cells.add(allowed.isPresent() ? kilograms(allowed.getAsDouble()) : "");
        return cells;
    }

    /** The smallest of what the rule and its set allow; nothing where one of them forbids it, a test is open or the set gives no limit. */
    private static OptionalDouble allowed(FillAssessment assessment, Optional<FillRule> rule) {
        Optional<RuleOutcome> own = rule.map(assessment::outcomeOf);
        boolean failed = own.filter(each -> each instanceof RuleOutcome.PressureTest test && !test.passed())
                .isPresent();
        if (!assessment.everyTestMade()
                || assessment.isRefused()
                || assessment.governing().isEmpty()
                || failed) {
            return OptionalDouble.empty();
        }
        double ofSet = assessment.governing().get().maximumContents().kilograms();
        return OptionalDouble.of(Math.min(
                ofSet,
                own.map(RuleOutcome::maximumKilograms)
                        .orElse(OptionalDouble.empty())
                        .orElse(ofSet)));
    }

    /** A rule asked for by name brings the refusals of its own set; one that is in no set, those of the usual set. */
    private Jurisdiction setOf(Optional<FillRule> rule) {
        Jurisdiction usual = assessor.rules().defaultJurisdiction();
        Jurisdiction other = assessor.rules().jurisdiction("adr");
        return rule.filter(other.rules()::contains).isPresent() ? other : usual;
    }

    private static List<String> governing(FillAssessment assessment, Jurisdiction set) {
        refuse(assessment.refusals());
        MassLimit limit = assessment
                .governing()
                .orElseThrow(
                        () -> new IllegalArgumentException("no rule of the set " + set.name() + " gives a limit here"));
        return cells(limit, true, "governing rule of " + set.name() + ": " + limit.rule(), assessment.cautions());
    }

    private static List<String> ofRule(FillAssessment assessment, FillRule rule, Jurisdiction set) {
        RuleOutcome outcome = assessment.outcomeOf(rule);
        if (outcome instanceof RuleOutcome.PressureTest test) {
            refuse(assessment.refusals().stream()
                    .filter(each -> each.reason() != Refusal.Reason.NO_LIMIT
                            && each.reason() != Refusal.Reason.PRESSURE_TOO_LOW)
                    .toList());
            return List.of(
                    rule.name(),
                    "",
                    "",
                    (test.passed() ? "passed" : "FAILED") + ", margin " + test.margin() + ": " + rule.inequality()
                            + "; this rule gives no mass");
        }
        if (outcome instanceof RuleOutcome.NotApplicable not) {
            throw new IllegalArgumentException("rule " + rule.name() + " does not apply: " + not.reason());
        }
        if (outcome instanceof RuleOutcome.NotTested not) {
            throw new IllegalArgumentException("rule " + rule.name() + " could not be applied: " + not.missing());
        }
        if (outcome instanceof RuleOutcome.Forbidden forbidden) {
            throw new IllegalArgumentException("rule " + rule.name() + " forbids it: " + forbidden.reason());
        }
        refuse(assessment.refusals().stream()
                .filter(each -> each.reason() != Refusal.Reason.NO_LIMIT)
                .toList());
        MassLimit limit = (MassLimit) outcome;
        List<Caution> cautions = new ArrayList<>(limit.cautions());
        assessment.cautions().stream().filter(each -> !cautions.contains(each)).forEach(cautions::add);
        return cells(limit, !assessment.isRefused(), lessAllowed(assessment, limit, set), cautions);
    }

    private static String lessAllowed(FillAssessment assessment, MassLimit limit, Jurisdiction set) {
        return assessment
                .governing()
                .filter(governing -> governing.maximumContents().kilograms()
                        < limit.maximumContents().kilograms())
                .map(governing -> Printed.figure(
                        "ONLY %s kg ARE ALLOWED by %s of the set %s; fill no more than that",
                        Printed.down(governing.maximumContents().kilograms(), 4),
                        governing.rule().name(),
                        set.name()))
                .orElse("");
    }

    private static void refuse(List<Refusal> refusals) {
        if (!refusals.isEmpty()) {
            throw new IllegalArgumentException("must not be filled: "
                    + refusals.stream()
                            .map(refusal -> refusal.text() + " [" + refusal.basis() + "]")
                            .collect(Collectors.joining("; ")));
        }
    }

    private static List<String> cells(MassLimit limit, boolean mayBeFilled, String lead, List<Caution> cautions) {
        List<String> notes = new ArrayList<>();
        if (!lead.isEmpty()) {
            notes.add(lead);
        }
        cautions.forEach(caution -> notes.add(Shown.line(caution.text())));
        return List.of(
                limit.rule().name(),
                kilograms(limit.maximumContents().kilograms()),
                mayBeFilled ? kilograms(limit.maximumGross().kilograms()) : "",
                String.join("; ", notes));
    }

    private static String kilograms(double value) {
        return Printed.exact(value);
    }

    private SaturationCurve curve(String refrigerant) {
        return curves.computeIfAbsent(
                catalogue.find(refrigerant).designation(),
                designation -> SaturationCurves.of(catalogue.find(designation)));
    }
}
