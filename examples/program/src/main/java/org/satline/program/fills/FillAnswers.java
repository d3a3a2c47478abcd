package org.satline.program.fills;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRule;
import org.satline.filling.FillingCode;
import org.satline.filling.Jurisdiction;
import org.satline.filling.RuleOutcome;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.program.file.CsvAnswer;
import org.satline.program.file.CsvRow;
import org.satline.program.file.Shown;
import org.satline.program.page.Printed;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * Answers rows of {@code fills}. A cylinder that must not be filled gets no limit but the reasons. Stamps that a row leaves out do not
 * hinder {@code maximum_contents_kg}, which is what the one rule says; the note says what could not be tested and what to supply. The last
 * column, {@code allowed_contents_kg}, is the smallest of what that rule and its set allow, and empty where nothing may be filled in or a
 * test that applies could not be made: a program that reads only numbers uses it. Nothing is thrown. Thread-safe.
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

    private static final Wording WORDS = Wording.of(Language.ENGLISH, UnitSystem.US);

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
        return assessor.rules().all().stream().map(FillAnswers::line).toList();
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
        FillQuestion question = FillQuestion.of(StampCells.read(row), curve(row.required("refrigerant")))
                .under(chosen);
        Optional<Double> warmest = row.number("maximum_temperature_K");
        if (warmest.isPresent()) {
            question = question.warmestAt(Temperature.ofKelvins(warmest.get()));
        }
        if (row.text("fill_date").isPresent()) {
            question = question.on(StampCells.date(row, "fill_date"));
        }
        FillAssessment fill = assessor.assess(question);
        FillAssessment number = fill instanceof FillAssessment.Allowed ? fill : assessor.assess(question.calculating());
        List<String> cells =
                new ArrayList<>(rule.isPresent() ? ofRule(number, rule.get(), chosen) : governing(number, chosen));
        List<String> notes = new ArrayList<>(List.of(cells.get(cells.size() - 1)));
        curve(row.required("refrigerant")).warnings().forEach(warning -> notes.add(WORDS.of(warning)));
        OptionalDouble allowed = allowed(fill, rule);
        if (allowed.isEmpty()) {
            fill.objections().stream()
                    .filter(each -> each.severity() == Severity.FORBIDS)
                    .forEach(each -> notes.add("NOTHING IS ALLOWED: " + says(each)));
        }
        if (fill.objections().stream().anyMatch(FillAnswers::isOpen)) {
            notes.add(OpenTests.note(fill));
        }
        notes.removeIf(String::isEmpty);
        cells.set(cells.size() - 1, String.join("; ", notes));
        cells.add(allowed.isPresent() ? kilograms(allowed.getAsDouble()) : "");
        return cells;
    }

    private static boolean isOpen(Finding finding) {
        return finding.severity() == Severity.MUST_BE_SUPPLIED || finding.code() == FillingCode.RULE_NOT_TESTED;
    }

    /** The smallest of what the rule and its set allow; nothing unless the set allows it and no pressure rule asked for is broken. */
    private static OptionalDouble allowed(FillAssessment fill, Optional<FillRule> rule) {
        if (!(fill instanceof FillAssessment.Allowed allowed)) {
            return OptionalDouble.empty();
        }
        double ofSet = allowed.limit().kilograms();
        Optional<RuleOutcome> own = rule.map(allowed.answers()::outcomeOf);
        if (own.isEmpty()) {
            return OptionalDouble.of(ofSet);
        }
        if (own.get() instanceof MassLimit limit) {
            return OptionalDouble.of(Math.min(ofSet, limit.maximumContents().kilograms()));
        }
        boolean kept = own.get() instanceof RuleOutcome.PressureTest test && test.passed();
        return kept ? OptionalDouble.of(ofSet) : OptionalDouble.empty();
    }

    /** A rule asked for by name brings the refusals of its own set; one that is in no set, those of the usual set. */
    private Jurisdiction setOf(Optional<FillRule> rule) {
        Jurisdiction usual = assessor.rules().defaultJurisdiction();
        Jurisdiction other = assessor.rules().jurisdiction("adr");
        return rule.filter(other.rules()::contains).isPresent() ? other : usual;
    }

    private static List<String> governing(FillAssessment number, Jurisdiction set) {
        if (number instanceof FillAssessment.Allowed allowed) {
            MassLimit limit = allowed.governing();
            return cells(
                    number,
                    limit,
                    "governing rule of " + set.name() + ": " + line(limit.rule()),
                    number.answers().cautions());
        }
        throw refused(number.objections());
    }

    private static List<String> ofRule(FillAssessment number, FillRule rule, Jurisdiction set) {
        RuleOutcome outcome = number.answers().outcomeOf(rule);
        if (outcome instanceof RuleOutcome.PressureTest test) {
            refuse(number, Set.of(FillingCode.NO_LIMIT, FillingCode.PRESSURE_TOO_LOW));
            return List.of(
                    rule.name(),
                    "",
                    "",
                    (test.passed() ? "passed" : "FAILED") + ", margin "
                            + WORDS.numbers().print(test.margin()) + ": " + rule.inequality()
                            + "; this rule gives no mass");
        }
        if (outcome instanceof RuleOutcome.NotApplicable not) {
            throw none(rule, "does not apply", not.reason(), not.figures());
        }
        if (outcome instanceof RuleOutcome.NotTested not) {
            throw none(rule, "could not be applied", not.reason(), not.figures());
        }
        if (outcome instanceof RuleOutcome.Forbidden forbidden) {
            throw none(rule, "forbids it", forbidden.reason(), forbidden.figures());
        }
        refuse(number, Set.of(FillingCode.NO_LIMIT));
        MassLimit limit = (MassLimit) outcome;
        Set<Finding> cautions = new LinkedHashSet<>(limit.cautions());
        cautions.addAll(number.answers().cautions());
        return cells(number, limit, lessAllowed(number, limit, set), cautions);
    }

    private static IllegalArgumentException none(
            FillRule rule, String what, RuleOutcome.Reason reason, List<Figure> figures) {
        return new IllegalArgumentException("rule " + rule.name() + " " + what + ": "
                + WORDS.message("filling.reason." + reason.word(), figures.toArray(new Figure[0])));
    }

    private static String lessAllowed(FillAssessment number, MassLimit limit, Jurisdiction set) {
        if (!(number instanceof FillAssessment.Allowed allowed)
                || !(allowed.limit().kilograms() < limit.maximumContents().kilograms())) {
            return "";
        }
        return "ONLY " + Printed.down(allowed.limit().kilograms(), 4) + " kg ARE ALLOWED by "
                + allowed.governing().rule().name() + " of the set " + set.name() + "; fill no more than that";
    }

    /** Whatever stands against filling it, but for what is told in another way. */
    private static void refuse(FillAssessment number, Set<FindingCode> toldElsewhere) {
        List<Finding> why = number.objections().stream()
                .filter(each -> !toldElsewhere.contains(each.code()))
                .toList();
        if (!why.isEmpty()) {
            throw refused(why);
        }
    }

    private static IllegalArgumentException refused(List<Finding> why) {
        return new IllegalArgumentException("must not be filled: "
                + why.stream()
                        .map(each -> says(each) + " [" + each.basis() + "]")
                        .collect(Collectors.joining("; ")));
    }

    /** A gross weight to fill to is told only where the cylinder may be filled. */
    private static List<String> cells(
            FillAssessment number, MassLimit limit, String lead, Collection<Finding> cautions) {
        List<String> notes = new ArrayList<>();
        if (!lead.isEmpty()) {
            notes.add(lead);
        }
        cautions.forEach(caution -> notes.add(says(caution)));
        Mass gross = number.answers().question().stamps().tare().plus(limit.maximumContents());
        return List.of(
                limit.rule().name(),
                kilograms(limit.maximumContents().kilograms()),
                number instanceof FillAssessment.Allowed ? kilograms(gross.kilograms()) : "",
                String.join("; ", notes));
    }

    /** The code first, for programs that read the note. */
    private static String says(Finding finding) {
        return finding.code().word() + ": " + Shown.line(WORDS.of(finding));
    }

    private static String line(FillRule rule) {
        return rule.name() + ": " + rule.inequality() + " [" + rule.source() + "]";
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
