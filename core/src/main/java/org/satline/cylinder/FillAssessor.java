package org.satline.cylinder;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.cylinder.FillAssessment.CandidateOutcome;
import org.satline.cylinder.Refusal.Reason;
import org.satline.cylinder.RuleOutcome.MassLimit;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;
import org.satline.saturation.SaturationCurve;

/** Applies the book of fill rules. Holds the printed tables. Immutable, thread-safe. */
public final class FillAssessor {
    private final FillRules rules;
    private final FillingDensityTable densities = FillingDensityTable.standard();
    private final LpgTable petroleumGases = LpgTable.standard();
    private final FillingRatioTable ratios = FillingRatioTable.standard();
    private final TankTable tanks = TankTable.standard();

    /** Models are costly to prepare and needed for few gases, so they are kept once made. */
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
     * Returns the book.
     *
     * @return the rules
     */
    public FillRules rules() {
        return rules;
    }

    /**
     * Applies every rule of the book to the cylinder and looks for reasons to refuse it.
     *
     * @param question the cylinder, the refrigerant and the set of rules
     * @return the limits side by side, the governing one, and the reasons to refuse
     */
    public FillAssessment assess(FillQuestion question) {
        List<CandidateOutcome> outcomes = new ArrayList<>();
        for (SaturationCurve curve : question.contents().candidateCurves()) {
            RuleCase it = new RuleCase(
                    question.stamps(),
                    curve,
                    question.maximumTemperature(),
                    () -> models.computeIfAbsent(curve.refrigerant(), FluidModel::of));
            Set<FillRule> asked = new LinkedHashSet<>(rules.all());
            asked.addAll(question.jurisdiction().rules());
            for (FillRule rule : asked) {
                outcomes.add(new CandidateOutcome(it.gas(), apply(rule, it)));
            }
        }
        List<Refusal> refusals = new ArrayList<>(StampCheck.refusals(question));
        List<Caution> cautions = new ArrayList<>(StampCheck.untested(question));
        FillAssessment.limits(question, outcomes, EnumSet.allOf(FillRule.Basis.class)).stream()
                .findFirst()
                .ifPresentOrElse(
                        limit -> cautions.addAll(limit.cautions()),
                        () -> refusals.add(new Refusal(
                                Reason.NO_LIMIT,
                                "no rule of the set " + question.jurisdiction().name() + " gives a largest contents",
                                question.jurisdiction().description())));
        refusals.addAll(byRules(question, outcomes, cautions));
        return new FillAssessment(
                question, outcomes, refusals, cautions.stream().distinct().toList());
    }

    /** Reasons to refuse that the chosen rules themselves give; what they could not test becomes a reason or a caution. */
    private static List<Refusal> byRules(
            FillQuestion question, List<CandidateOutcome> outcomes, List<Caution> cautions) {
        List<Refusal> refusals = new ArrayList<>();
        for (CandidateOutcome each : outcomes) {
            RuleOutcome outcome = each.outcome();
            FillRule rule = outcome.rule();
            if (!question.jurisdiction().rules().contains(rule)) {
                continue;
            }
            if (outcome instanceof RuleOutcome.Forbidden forbidden) {
                refusals.add(new Refusal(Reason.CYLINDER_NOT_LISTED, forbidden.reason(), rule.source()));
            } else if (outcome instanceof RuleOutcome.PressureTest test && !test.passed()) {
                refusals.add(new Refusal(
                        Reason.PRESSURE_TOO_LOW,
                        String.format(
                                Locale.ROOT,
                                "the pressure of %s breaks the rule %s (%s) by %s; take a cylinder of higher service and test pressure",
                                each.designation(),
                                rule.name(),
                                rule.inequality(),
                                Figures.pressure(-test.margin().pascals())),
                        rule.source()));
            } else if (outcome instanceof RuleOutcome.NotTested untested) {
                if (question.partialStampsAccepted()) {
                    cautions.add(new Caution("not tested: " + rule.name() + ": " + untested.missing(), rule.source()));
                } else {
                    refusals.add(new Refusal(
                            Reason.STAMP_MISSING,
                            rule.name() + " could not be tested: " + untested.missing(),
                            rule.source()));
                }
            } else if (outcome instanceof MassLimit limit) {
                cautions.addAll(limit.cautions());
            }
        }
        return refusals;
    }

    private RuleOutcome apply(FillRule rule, RuleCase it) {
        String outOfScope = it.whyOutOfScope(rule);
        if (!outOfScope.isEmpty()) {
            return new RuleOutcome.NotApplicable(rule, outOfScope, List.of());
        }
        return switch (rule.method()) {
            case LIQUID_FRACTION -> LiquidRules.liquidFraction(rule, it, false);
            case LIQUID_FRACTION_BELOW -> LiquidRules.liquidFraction(rule, it, true);
            case WATER_FRACTION -> LiquidRules.waterFraction(rule, it);
            case RATING_FRACTION -> LiquidRules.ratingFraction(rule, it);
            case FILLING_DENSITY_TABLE -> densities.apply(rule, it);
            case LPG_TABLE -> petroleumGases.apply(rule, it);
            case FILLING_RATIO_TABLE -> ratios.apply(rule, it);
            case TANK_TABLE -> tanks.apply(rule, it);
            case SETTLED_PRESSURE -> settledPressure(rule, it);
            case LOW_PRESSURE_FORMULA -> FormulaRules.lowPressure(rule, it, ratios);
            case HIGH_PRESSURE_FORMULA -> FormulaRules.highPressure(rule, it, ratios);
            case SERVICE_PRESSURE -> PressureRules.servicePressure(rule, it, densities);
            case TEST_PRESSURE -> PressureRules.testPressure(rule, it);
            case LEAST_TEST_PRESSURE -> PressureRules.leastTestPressure(rule, it);
        };
    }

    private static RuleOutcome settledPressure(FillRule rule, RuleCase it) {
        return it.stamps()
                .testPressure()
                .map(test -> SettledPressure.limit(
                        rule, it, it.temperatureOf(rule).kelvins(), rule.factor() * test.pascals(), "test pressure"))
                .orElseGet(() -> new RuleOutcome.NotTested(
                        rule, "the test pressure is not given; read it on the collar, marked PH or TP", List.of()));
    }
}
