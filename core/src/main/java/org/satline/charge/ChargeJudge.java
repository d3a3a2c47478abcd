package org.satline.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * Judges the charge of a running system by superheat or subcooling against its target. Stateless, thread-safe.
 *
 * <p>Expansion valve: subcooling against the maker's target, while superheat shows that the valve controls. Fixed orifice: superheat against the
 * maker's target or the published chart. Readings that contradict each other give no level: another fault may be behind them, and charge is never
 * adjusted to hide it. The outcome supports licensed practice and does not replace it.
 */
public final class ChargeJudge {
    private ChargeJudge() {}

    /**
     * Judges.
     *
     * @param curve saturation curve of the refrigerant
     * @param readings what was read
     * @param question metering device, target and tolerance
     * @return a level, or why there is none
     * @throws IllegalArgumentException if the readings are physically impossible
     * @throws org.satline.quantity.OutOfValidityException if a pressure lies outside the saturation line
     */
    public static Verdict judge(SaturationCurve curve, SystemReadings readings, ChargeQuestion question) {
        return judge(curve, readings, question, DecisionRule.usual());
    }

    /** The same; the rule decides nothing here but with how many digits the probabilities are printed. */
    static Verdict judge(SaturationCurve curve, SystemReadings readings, ChargeQuestion question, DecisionRule rule) {
        Objects.requireNonNull(curve, "curve");
        Objects.requireNonNull(readings, "readings");
        Objects.requireNonNull(question, "question");
        Plausibility.check(curve, readings);
        Margins margins = Margins.of(curve, readings);
        Criterion criterion = question.metering().judgedBy();
        List<Step> steps = new ArrayList<>();
        margins.superheat().ifPresent(m -> steps.addAll(m.steps()));
        margins.subcooling().ifPresent(m -> steps.addAll(m.steps()));
        Optional<LineMargin> measured = margins.get(criterion);
        if (measured.isEmpty()) {
            return new Verdict.CannotTell(
                    Optional.empty(),
                    List.of("with " + article(question.metering()) + " the charge shows in the " + criterion.label()
                            + ", for which pressure or line temperature is missing"),
                    criterion == Criterion.SUPERHEAT
                            ? "read suction pressure and suction-line temperature"
                            : "read liquid pressure and liquid-line temperature",
                    steps);
        }
        ChargeTarget target = target(readings, question);
        steps.addAll(target.steps());
        if (target instanceof ChargeTarget.Missing missing) {
            return new Verdict.CannotTell(Optional.empty(), List.of(missing.reason()), missing.advice(), steps);
        }
        ChargeTarget.Found found = (ChargeTarget.Found) target;
        Deviation deviation = new Deviation(
                criterion,
                measured.get().value(),
                found.value(),
                question.tolerance().orElse(PublishedLimits.tolerance(criterion)),
                measured.get().budget().minus(found.budget()));
        steps.add(deviation.step());
        return Contradictions.between(margins, question.metering(), deviation)
                .<Verdict>map(c -> new Verdict.CannotTell(
                        Optional.of(deviation), List.of(sentence(deviation), c.reason()), c.advice(), steps))
                .orElseGet(() -> judged(deviation, steps, rule));
    }

    private static ChargeTarget target(SystemReadings readings, ChargeQuestion question) {
        Criterion criterion = question.metering().judgedBy();
        if (question.makersTarget().isPresent()) {
            TemperatureDifference value = question.makersTarget().get();
            Step step = new Step(
                    "target " + criterion.label(),
                    "maker's figure",
                    "from the plate or the manual",
                    String.format(Locale.ROOT, "%.2f K (%.1f degF)", value.kelvins(), value.fahrenheitDegrees()),
                    "maker's charging data of this system");
            return new ChargeTarget.Found(
                    criterion, value, UncertaintyBudget.none(), ChargeTarget.Basis.MAKER, List.of(step));
        }
        if (criterion == Criterion.SUBCOOLING) {
            return new ChargeTarget.Missing(
                    "no target subcooling is given for this system",
                    "take it from the plate or the manual; 8 to 15 degF is usual (common practice, no source) but too wide to judge by",
                    List.of());
        }
        if (readings.returnWetBulb().isEmpty() || readings.condenserAir().isEmpty()) {
            return new ChargeTarget.Missing(
                    "the target superheat of a fixed orifice depends on return wet bulb and condenser air, and one of them was not read",
                    "read the wet bulb of the return air and the dry bulb of the air entering the condenser",
                    List.of());
        }
        return TargetSuperheatChart.target(
                readings.returnWetBulb().get(), readings.condenserAir().get());
    }

    private static Verdict judged(Deviation deviation, List<Step> steps, DecisionRule rule) {
        ChargeLevel level = deviation.level();
        List<String> reasons = new ArrayList<>();
        reasons.add(sentence(deviation));
        if (deviation.standardUncertaintyK() > 0) {
            reasons.add("with these instruments: " + deviation.probabilities(rule));
        }
        String advice = switch (level) {
            case LOW -> "add refrigerant in small steps, after the leak is found and mended";
            case ON_TARGET -> "leave the charge as it is";
            case HIGH -> "take refrigerant out in small steps";
        };
        return new Verdict.Judged(level, deviation, reasons, advice, steps);
    }

    private static String sentence(Deviation deviation) {
        return String.format(
                Locale.ROOT,
                "%s is %.1f K (%.1f degF) against a target of %.1f K (%.1f degF) +/- %.1f K (%.1f degF)",
                deviation.criterion().label(),
                deviation.measured().kelvins(),
                deviation.measured().fahrenheitDegrees(),
                deviation.target().kelvins(),
                deviation.target().fahrenheitDegrees(),
                deviation.tolerance().kelvins(),
                deviation.tolerance().fahrenheitDegrees());
    }

    private static String article(MeteringDevice device) {
        return device == MeteringDevice.EXPANSION_VALVE ? "an expansion valve" : "a fixed orifice";
    }
}
