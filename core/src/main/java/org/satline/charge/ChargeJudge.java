package org.satline.charge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.satline.charge.belief.Symptom;
import org.satline.charge.belief.Weighed;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.DecisionRule;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.charge.margin.LineMargin;
import org.satline.charge.margin.Margins;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.measurement.Place;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.DataVersion;

/**
 * Judges the charge of a running system by superheat or subcooling against its target, and says where something else
 * comes first. Immutable, thread-safe.
 *
 * <p>Expansion valve: subcooling against the maker's target, while superheat shows that the valve controls. Fixed
 * orifice: superheat against the
 * maker's target or the published chart. Readings that contradict each other give no level: another fault may be
 * behind them, and charge is never
 * adjusted to hide it. The outcome supports licensed practice and does not replace it.
 */
public final class ChargeJudge {
    private static final String MAKERS_SOURCE = "maker's charging data of this system";

    private final DecisionRule rule;
    private final Map<Symptom, Weighed.Expected> expected;

    private ChargeJudge(DecisionRule rule, Map<Symptom, Weighed.Expected> expected) {
        this.rule = rule;
        this.expected = expected;
    }

    /**
     * Returns the judge with risks of 5 % and the expectations of common practice.
     *
     * @return the judge
     */
    public static ChargeJudge usual() {
        return new ChargeJudge(DecisionRule.usual(), Map.of());
    }

    /**
     * The same judge with other accepted risks.
     *
     * @param producers largest accepted probability of touching a sound charge; in (0, 0.5)
     * @param consumers largest accepted probability of leaving a wrong charge; in (0, 0.5)
     * @return the changed judge
     * @throws IllegalArgumentException if a risk is outside its interval
     */
    public ChargeJudge accepting(double producers, double consumers) {
        return new ChargeJudge(new DecisionRule(producers, consumers), expected);
    }

    /**
     * The same judge, told what one quantity of this unit is while nothing is wrong, from its own record, a model or
     * the maker's data.
     *
     * @param symptom which quantity; the evaporating temperature counts from the dry bulb of the return air, the
     *     condensing temperature
     *     from the condenser air
     * @param kelvins its fault-free value, K; discharge: degC
     * @param standardUncertaintyK its standard uncertainty, K; not below 0
     * @return the changed judge
     * @throws IllegalArgumentException if a number is not usable
     */
    public ChargeJudge expecting(Symptom symptom, double kelvins, double standardUncertaintyK) {
        Objects.requireNonNull(symptom, "symptom");
        Map<Symptom, Weighed.Expected> more = new EnumMap<>(Symptom.class);
        more.putAll(expected);
        more.put(symptom, new Weighed.Expected(kelvins, standardUncertaintyK));
        return new ChargeJudge(rule, Collections.unmodifiableMap(more));
    }

    /**
     * Judges a charge.
     *
     * @param it readings, question and conditions
     * @return a level, an undecided answer, or the fault that comes first
     * @throws ImplausibleReadingException if the readings contradict physics
     * @throws org.satline.quantity.OutOfValidityException if a pressure is outside the saturation curve
     */
    public Judgement judge(ChargeCase it) {
        Objects.requireNonNull(it, "case");
        Margins margins = Margins.checked(
                it.curve(),
                it.readings(),
                it.question().metering(),
                it.question().makersTarget());
        List<Step> steps = new ArrayList<>();
        margins.superheat().ifPresent(m -> steps.addAll(m.steps()));
        margins.subcooling().ifPresent(m -> steps.addAll(m.steps()));
        List<Gate> gates = Gates.check(it, margins);
        Criterion criterion = it.question().metering().judgedBy();
        Optional<LineMargin> measured = margins.get(criterion);
        if (measured.isEmpty()) {
            return withoutDeviation(it, margins, gates, notRead(criterion), steps);
        }
        ChargeTarget target = target(it);
        if (target instanceof ChargeTarget.Missing missing) {
            return withoutDeviation(it, margins, gates, missing.why(), steps);
        }
        ChargeTarget.Found found = (ChargeTarget.Found) target;
        steps.addAll(found.steps());
        Deviation deviation = new Deviation(
                criterion,
                measured.get().value(),
                found.value(),
                it.question().band(),
                measured.get().budget().minus(found.budget()));
        steps.add(deviation.step(PublishedLimits.SOURCE));
        Weighed weighed = weighed(it, margins, Optional.of(deviation), found.budget());
        return new Decision(it, rule, margins, deviation, gates, weighed, steps).made();
    }

    /** A condition that is not met says so even where there is nothing to judge by. */
    private Judgement withoutDeviation(
            ChargeCase it, Margins margins, List<Gate> gates, List<Finding> why, List<Step> steps) {
        Weighed weighed = weighed(it, margins, Optional.empty(), UncertaintyBudget.none());
        Judgement.Evidence evidence =
                new Judgement.Evidence(margins, Optional.empty(), gates, weighed, why, steps, DataVersion.current());
        return new NotMet(it, evidence)
                .judgement()
                .orElseGet(() -> new Judgement.Undecided(Optional.empty(), Optional.empty(), evidence));
    }

    private Weighed weighed(ChargeCase it, Margins margins, Optional<Deviation> deviation, UncertaintyBudget target) {
        return Weighed.of(new Weighed.Observed(
                it.curve(),
                it.readings(),
                margins,
                it.question().metering(),
                deviation,
                target,
                it.question().band(),
                it.rest(),
                it.conditions().airflow().isPresent(),
                expected));
    }

    private static List<Finding> notRead(Criterion criterion) {
        List<Place> places = criterion == Criterion.SUPERHEAT
                ? List.of(Place.SUCTION_PRESSURE, Place.SUCTION_LINE)
                : List.of(Place.LIQUID_PRESSURE, Place.LIQUID_LINE);
        return places.stream().map(place -> notGiven(place.path())).toList();
    }

    private static Finding notGiven(String field) {
        return Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading(field));
    }

    private static ChargeTarget target(ChargeCase it) {
        Criterion criterion = it.question().metering().judgedBy();
        Optional<TemperatureDifference> makers = it.question().makersTarget();
        if (makers.isPresent()) {
            Step step = new Step(
                    "makersTarget",
                    criterion == Criterion.SUPERHEAT ? "SH_target" : "SC_target",
                    List.of(),
                    Figure.of("target", makers.get()),
                    MAKERS_SOURCE);
            return new ChargeTarget.Found(makers.get(), UncertaintyBudget.none(), List.of(step));
        }
        if (criterion == Criterion.SUBCOOLING) {
            return new ChargeTarget.Missing(List.of(notGiven("system.targetSubcooling")));
        }
        List<Finding> missing = new ArrayList<>();
        for (Place place : List.of(Place.RETURN_WET_BULB, Place.OUTDOOR_AIR)) {
            if (it.readings().temperature(place).isEmpty()) {
                missing.add(notGiven(place.path()));
            }
        }
        return missing.isEmpty()
                ? TargetSuperheatChart.target(
                        it.readings().temperature(Place.RETURN_WET_BULB).orElseThrow(),
                        it.readings().temperature(Place.OUTDOOR_AIR).orElseThrow())
                : new ChargeTarget.Missing(missing);
    }
}
