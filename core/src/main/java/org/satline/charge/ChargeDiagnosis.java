package org.satline.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.satline.quantity.Parts;
import org.satline.saturation.SaturationCurve;

/**
 * Diagnoses a running system: conditions first, then the charge with its doubt, then whether another fault explains the readings better.
 * Immutable, thread-safe. {@link ChargeJudge} is the published check alone.
 *
 * @param rule when a probability is enough
 * @param expectations fault-free values; the target replaces the expectation of the quantity that is judged
 */
public record ChargeDiagnosis(DecisionRule rule, Expectations expectations) {
    /** For charge advice an error of the charge must be this many times as likely as all other faults together that readings speak for; our choice. */
    private static final double LEAST_ODDS = 2;

    /** {@inheritDoc} */
    public ChargeDiagnosis {
        Parts.required("rule expectations", rule, expectations);
    }

    /**
     * Returns the diagnosis with risks of 5 % and the expectations of common practice.
     *
     * @return the diagnosis
     */
    public static ChargeDiagnosis usual() {
        return new ChargeDiagnosis(DecisionRule.usual(), Expectations.usual());
    }

    /**
     * Diagnoses.
     *
     * @param curve saturation curve of the refrigerant
     * @param readings what was read
     * @param question metering device, target and tolerance
     * @param conditions how the system ran
     * @return the outcome
     * @throws IllegalArgumentException if the readings are physically impossible
     * @throws org.satline.quantity.OutOfValidityException if a pressure lies outside the saturation line
     */
    public Diagnosis of(
            SaturationCurve curve, SystemReadings readings, ChargeQuestion question, OperatingConditions conditions) {
        Verdict verdict = ChargeJudge.judge(curve, readings, question, rule);
        Margins margins = Margins.of(curve, readings);
        Optional<Deviation> deviation = deviationOf(verdict);
        List<Gate> gates = Gates.check(curve, readings, conditions, margins);
        Optional<RestEvidence> rest = RestEvidence.of(curve, conditions);
        List<FaultLikelihood> faults = deviation
                .map(d -> FaultRanking.of(question.metering(), sharpened(d).residuals(curve, readings, margins), rest))
                .orElse(List.of());
        Draft draft = new Draft(verdict, margins, deviation, gates, faults);
        Optional<Diagnosis> closed = closedGate(
                draft,
                question.metering(),
                Airflows.probabilityOfLow(readings, conditions),
                rest.filter(found -> found.excessK() > 0).isPresent());
        if (closed.isPresent()) {
            return closed.get();
        }
        if (deviation.isEmpty()) {
            return new Diagnosis.Undecided(Optional.empty(), draft.evidence(verdict.reasons(), verdict.advice()));
        }
        Deviation d = deviation.get();
        Optional<Contradictions.Contradiction> contradiction = Contradictions.between(margins, question.metering(), d);
        if (contradiction.isPresent()) {
            return contradicted(draft, contradiction.get(), question.metering());
        }
        Diagnosis diagnosis = byProbability(draft, d);
        if (diagnosis instanceof Diagnosis.NotCharge) {
            return diagnosis;
        }
        List<Residual> residuals = expectations.residuals(curve, readings, margins);
        Optional<String> doubt = rule.decide(d).flatMap(level -> CondensingDoubt.of(level, gates, residuals));
        if (doubt.isPresent()) {
            List<String> reasons = new ArrayList<>(diagnosis.evidence().reasons());
            reasons.add(doubt.get());
            return new Diagnosis.Undecided(Optional.empty(), draft.evidence(reasons, CondensingDoubt.ADVICE));
        }
        return diagnosis;
    }

    private Diagnosis byProbability(Draft draft, Deviation deviation) {
        List<String> reasons = new ArrayList<>(draft.verdict().reasons());
        Optional<ChargeLevel> level = rule.decide(deviation);
        if (level.isEmpty()) {
            DecidingInstrument deciding = DecidingInstrument.of(deviation, rule);
            reasons.add("no level reaches the wanted probability: " + deciding.text());
            return new Diagnosis.Undecided(
                    Optional.of(deciding), draft.evidence(reasons, "leave the charge as it is until it is decided"));
        }
        reasons.add(risks(level.get(), deviation));
        if (level.get() != ChargeLevel.ON_TARGET) {
            Fault expected = level.get() == ChargeLevel.LOW ? Fault.UNDERCHARGE : Fault.OVERCHARGE;
            Optional<Diagnosis> other = otherFault(draft, deviation, expected, reasons);
            if (other.isPresent()) {
                return other.get();
            }
        }
        return new Diagnosis.Decided(
                level.get(), draft.evidence(reasons, draft.verdict().advice()));
    }

    /**
     * Nothing where an error of the charge is the better explanation; adds what it finds to the reasons. Only faults count for which a reading beside the judged
     * quantity speaks: that quantity alone never condemns another part.
     */
    private static Optional<Diagnosis> otherFault(
            Draft draft, Deviation deviation, Fault expected, List<String> reasons) {
        double ofCharge = 0;
        double ofOthers = 0;
        Optional<FaultLikelihood> likeliest = Optional.empty();
        for (FaultLikelihood fault : draft.faults()) {
            if (fault.fault() == expected) {
                ofCharge = fault.probability();
            } else if (supported(fault, deviation)) {
                ofOthers += fault.probability();
                likeliest = likeliest.or(() -> Optional.of(fault));
            }
        }
        if (likeliest.isEmpty() || ofCharge >= LEAST_ODDS * ofOthers) {
            draft.faults().stream()
                    .filter(f -> f.fault() != expected)
                    .findFirst()
                    .ifPresent(fault -> reasons.add("not ruled out: " + fault));
            return Optional.empty();
        }
        FaultLikelihood other = likeliest.get();
        if (other.probability() > ofCharge && other.readingsAgainst().isEmpty()) {
            reasons.add(other + " explains the readings better than " + expected.label());
            String advice = other.fault().advice() + "; leave the charge alone until that is settled";
            return Optional.of(
                    other.fault().ofCharge()
                            ? new Diagnosis.Undecided(Optional.empty(), draft.evidence(reasons, advice))
                            : new Diagnosis.NotCharge(other.fault(), draft.evidence(reasons, advice)));
        }
        reasons.add(String.format(
                Locale.ROOT,
                "%s is not likelier by %.0f to 1 than what else the readings speak for (%.0f %% against %.0f %%): %s",
                expected.label(),
                LEAST_ODDS,
                100 * ofCharge,
                100 * ofOthers,
                other));
        String advice = other.fault().advice() + "; leave the charge alone until that is ruled out";
        return Optional.of(new Diagnosis.Undecided(Optional.empty(), draft.evidence(reasons, advice)));
    }

    private static boolean supported(FaultLikelihood fault, Deviation deviation) {
        return fault.readingsFor().stream()
                .anyMatch(reading -> !reading.startsWith(deviation.criterion().label()));
    }

    /** A closed gate lets no charge advice through; it names a fault only where the readings prove it. */
    private Optional<Diagnosis> closedGate(Draft draft, MeteringDevice metering, double lowAirflow, boolean gas) {
        for (Gate gate : draft.gates()) {
            if (gate.state() != Gate.State.CLOSED) {
                continue;
            }
            List<String> reasons = List.of(gate.finding());
            switch (gate.kind()) {
                case AIRFLOW -> {
                    if (!(lowAirflow > 0)) {
                        return Optional.of(
                                new Diagnosis.Undecided(Optional.empty(), draft.evidence(reasons, gate.advice())));
                    }
                    List<String> withDoubt = List.of(
                            gate.finding(),
                            String.format(
                                    Locale.ROOT,
                                    "probability that the airflow is low in truth, by the doubt of these instruments: %.0f %%",
                                    100 * lowAirflow));
                    return Optional.of(new Diagnosis.NotCharge(
                            Fault.LOW_EVAPORATOR_AIRFLOW, draft.evidence(withDoubt, gate.advice())));
                }
                case NAMEPLATE -> {
                    return Optional.of(
                            gas
                                    ? new Diagnosis.NotCharge(
                                            Fault.NON_CONDENSABLE_GAS, draft.evidence(reasons, gate.advice()))
                                    : new Diagnosis.Undecided(
                                            Optional.empty(), draft.evidence(reasons, gate.advice())));
                }
                case DRY_SUCTION -> {
                    // with a fixed orifice superheat pinned at zero is what too much refrigerant looks like; the level
                    // says so by itself
                    if (metering == MeteringDevice.EXPANSION_VALVE) {
                        return Optional.of(
                                new Diagnosis.Undecided(Optional.empty(), draft.evidence(reasons, gate.advice())));
                    }
                }
                default -> {
                    return Optional.of(
                            new Diagnosis.Undecided(Optional.empty(), draft.evidence(reasons, gate.advice())));
                }
            }
        }
        return Optional.empty();
    }

    /** A contradiction within the doubt of its readings is none yet: undecided; beyond it, another fault is at work. */
    private Diagnosis contradicted(Draft draft, Contradictions.Contradiction contradiction, MeteringDevice metering) {
        List<String> reasons = new ArrayList<>(draft.verdict().reasons());
        Criterion other = metering.judgedBy() == Criterion.SUPERHEAT ? Criterion.SUBCOOLING : Criterion.SUPERHEAT;
        double doubtK =
                draft.margins().get(other).map(LineMargin::standardUncertaintyK).orElse(0.0);
        Optional<FaultLikelihood> best =
                draft.faults().stream().filter(f -> !f.fault().ofCharge()).findFirst();
        boolean level = draft.deviation().flatMap(rule::decide).isPresent();
        if (best.isPresent() && level && contradiction.excessK() > 1.645 * doubtK) {
            reasons.add("most likely " + best.get());
            return new Diagnosis.NotCharge(best.get().fault(), draft.evidence(reasons, contradiction.advice()));
        }
        return new Diagnosis.Undecided(Optional.empty(), draft.evidence(reasons, contradiction.advice()));
    }

    private Expectations sharpened(Deviation deviation) {
        return expectations.with(
                deviation.criterion() == Criterion.SUPERHEAT ? Symptom.SUPERHEAT : Symptom.SUBCOOLING,
                deviation.target().kelvins(),
                0);
    }

    private String risks(ChargeLevel level, Deviation deviation) {
        double risk = 1 - deviation.probability(level);
        return level == ChargeLevel.ON_TARGET
                ? String.format(
                        Locale.ROOT,
                        "consumer's risk, a wrong charge left as it is: %.1f %% (accepted %.1f %%; JCGM 106:2012)",
                        100 * risk,
                        100 * rule.consumersRisk())
                : String.format(
                        Locale.ROOT,
                        "producer's risk, a sound charge touched: %.1f %% (accepted %.1f %%; JCGM 106:2012)",
                        100 * risk,
                        100 * rule.producersRisk());
    }

    private static Optional<Deviation> deviationOf(Verdict verdict) {
        return verdict instanceof Verdict.Judged judged
                ? Optional.of(judged.deviation())
                : ((Verdict.CannotTell) verdict).deviation();
    }

    private record Draft(
            Verdict verdict,
            Margins margins,
            Optional<Deviation> deviation,
            List<Gate> gates,
            List<FaultLikelihood> faults) {
        Diagnosis.Evidence evidence(List<String> reasons, String advice) {
            return new Diagnosis.Evidence(margins, deviation, gates, faults, reasons, advice, verdict.steps());
        }
    }
}
