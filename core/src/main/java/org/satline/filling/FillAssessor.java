package org.satline.filling;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.filling.FillAssessment.Answers;
import org.satline.filling.FillAssessment.CandidateOutcome;
import org.satline.filling.FillQuestion.Purpose;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.filling.RuleOutcome.Reason;
import org.satline.quantity.PressureDifference;
import org.satline.refrigerant.DataVersion;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;

/** Applies the book of fill rules. Holds the printed tables. Immutable, thread-safe. */
public final class FillAssessor {
    private final FillRules rules;
    private final FillingDensityTable densities = FillingDensityTable.standard();
    private final LpgTable petroleumGases = LpgTable.standard();
    private final FillingRatioTable ratios = FillingRatioTable.standard();
    private final TankTable tanks = TankTable.standard();

    /** No visit or list of cylinders goes on among more gases; the bound keeps a caller's own blends from piling up. */
    private static final int MOST_MODELS = 64;

    /** Models are costly to prepare and needed for few gases, so they are kept once made, up to that bound. */
    private final Map<Refrigerant, FluidModel> models = new ConcurrentHashMap<>();

    private FillAssessor(FillRules rules) {
        this.rules = rules;
    }

    /**
     * Makes an assessor with the book and the tables that ship with the library.
     *
     * @return the assessor
     */
    public static FillAssessor standard() {
        return new FillAssessor(FillRules.standard());
    }

    /**
     * The book.
     *
     * @return the rules
     */
    public FillRules rules() {
        return rules;
    }

    /**
     * Applies every rule of the book to the cylinder and looks for reasons not to fill it.
     *
     * @param question the cylinder, the refrigerant and the set of rules
     * @return a limit to fill to, or why there is none; with the answers of all rules side by side
     */
    public FillAssessment assess(FillQuestion question) {
        List<CandidateOutcome> outcomes = outcomes(question);
        Set<Finding> found = new LinkedHashSet<>(StampCheck.of(question));
        outcomes.stream()
                .filter(each -> question.rules().contains(each.outcome().rule()))
                .forEach(each -> found.addAll(byRule(question, each)));
        Optional<MassLimit> governing = new Answers(question, outcomes, List.of(), DataVersion.current())
                .limits(EnumSet.allOf(FillRule.Basis.class)).stream().findFirst();
        if (governing.isEmpty() && !question.contents().isEmpty()) {
            found.add(finding(
                    question,
                    Severity.FORBIDS,
                    FillingCode.NO_LIMIT,
                    Figure.of("rules", question.jurisdiction().name())));
        }
        Answers answers = new Answers(question, outcomes, weighing(found, Severity.CAUTION), DataVersion.current());
        List<Finding> forbidding = weighing(found, Severity.FORBIDS);
        List<Finding> missing = weighing(found, Severity.MUST_BE_SUPPLIED);
        if (!forbidding.isEmpty() || governing.isEmpty()) {
            List<Finding> why = new ArrayList<>(forbidding);
            why.addAll(missing);
            return new FillAssessment.Refused(why, answers);
        }
        return missing.isEmpty()
                ? new FillAssessment.Allowed(governing.get(), answers)
                : new FillAssessment.Open(missing, answers);
    }

    private static List<Finding> weighing(Set<Finding> found, Severity severity) {
        // two rules that ask for the same stamp ask once
        Set<Subject> asked = new HashSet<>();
        return found.stream()
                .filter(each -> each.severity() == severity)
                .filter(each -> each.code() != CommonCode.NOT_GIVEN || asked.add(each.subject()))
                .toList();
    }

    private static Finding finding(FillQuestion question, Severity severity, FillingCode code, Figure... figures) {
        return Finding.of(severity, code, Subject.cylinder(question.name()), figures);
    }

    private FluidModel model(Refrigerant refrigerant) {
        if (models.size() >= MOST_MODELS && !models.containsKey(refrigerant)) {
            models.clear();
        }
        return models.computeIfAbsent(refrigerant, FluidModel::of);
    }

    private List<CandidateOutcome> outcomes(FillQuestion question) {
        List<CandidateOutcome> outcomes = new ArrayList<>();
        for (SaturationCurve curve : question.contents()) {
            RuleCase it = new RuleCase(question, curve, () -> model(curve.refrigerant()));
            Set<FillRule> asked = new LinkedHashSet<>(rules.all());
            asked.addAll(question.rules());
            for (FillRule rule : asked) {
                RuleOutcome outcome =
                        it.outOfScope(rule).<RuleOutcome>map(reason -> reason).orElseGet(() -> apply(rule, it));
                outcomes.add(new CandidateOutcome(it.gas(), outcome));
            }
        }
        return outcomes;
    }

    /** What a rule of the chosen set finds. */
    private static List<Finding> byRule(FillQuestion question, CandidateOutcome each) {
        FillRule rule = each.outcome().rule();
        if (each.outcome() instanceof MassLimit limit) {
            return limit.cautions();
        }
        List<Figure> figures = new ArrayList<>(List.of(Figure.of("rule", rule.name()), gas(each)));
        Severity severity = Severity.FORBIDS;
        FillingCode code = FillingCode.PRESSURE_TOO_LOW;
        if (each.outcome() instanceof RuleOutcome.Forbidden forbidden) {
            code = forbidden.reason() == Reason.CYLINDER_NOT_NAMED
                    ? FillingCode.NOT_LISTED
                    : FillingCode.TEST_PRESSURE_TOO_LOW;
            figures.addAll(forbidden.figures());
        } else if (each.outcome() instanceof RuleOutcome.PressureTest test && !test.passed()) {
            figures.add(
                    Figure.of("by", PressureDifference.ofPascals(-test.margin().pascals())));
        } else if (each.outcome() instanceof RuleOutcome.NotTested untested) {
            if (question.purpose() == Purpose.FILL && untested.missing().isPresent()) {
                return List.of(
                        notGiven(question, untested.missing().get().field()).citing(rule.source()));
            }
            severity = question.purpose() == Purpose.FILL ? Severity.FORBIDS : Severity.CAUTION;
            code = FillingCode.RULE_NOT_TESTED;
            figures.addAll(untested.figures());
        } else {
            return List.of();
        }
        return List.of(
                finding(question, severity, code, figures.stream().distinct().toArray(Figure[]::new))
                        .citing(rule.source()));
    }

    private static Figure gas(CandidateOutcome each) {
        return Figure.of("gas", each.designation());
    }

    /** That a field of the cylinder must be supplied. */
    static Finding notGiven(FillQuestion question, String part) {
        return Finding.of(
                Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading(question.field() + "." + part));
    }

    private RuleOutcome apply(FillRule rule, RuleCase it) {
        return switch (rule.method()) {
            case LIQUID_FRACTION, LIQUID_FRACTION_BELOW -> LiquidRules.liquidFraction(rule, it);
            case WATER_FRACTION -> LiquidRules.waterFraction(rule, it);
            case RATING_FRACTION -> LiquidRules.ratingFraction(rule, it);
            case FILLING_DENSITY_TABLE -> densities.apply(rule, it);
            case LPG_TABLE -> petroleumGases.apply(rule, it);
            case FILLING_RATIO_TABLE -> ratios.apply(rule, it);
            case TANK_TABLE -> tanks.apply(rule, it);
            case SETTLED_PRESSURE -> PressureRules.settledPressure(rule, it);
            case LOW_PRESSURE_FORMULA -> FormulaRules.lowPressure(rule, it, ratios);
            case HIGH_PRESSURE_FORMULA -> FormulaRules.highPressure(rule, it, ratios);
            case SERVICE_PRESSURE -> PressureRules.servicePressure(rule, it, densities);
            case TEST_PRESSURE -> PressureRules.testPressure(rule, it);
            case LEAST_TEST_PRESSURE -> PressureRules.leastTestPressure(rule, it);
        };
    }
}
