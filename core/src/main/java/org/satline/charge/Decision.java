package org.satline.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.LineMargin;
import org.satline.charge.margin.Margins;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/**
 * The last part of judging: from a deviation, the conditions and the ranked faults to one outcome. A condition that is not met comes first,
 * then readings that contradict each other, then the risks, then other faults.
 */
record Decision(
        ChargeCase it,
        DecisionRule rule,
        List<Residual> residuals,
        Optional<RestEvidence> rest,
        Margins margins,
        Deviation deviation,
        List<Gate> gates,
        List<FaultLikelihood> faults,
        List<Step> steps) {
    /**
     * For charge advice an error of the charge must be this many times as likely as all other faults together that readings speak for; our
     * choice.
     */
    private static final double LEAST_ODDS = 2;
    /** Quantile of the one-sided 95 % (JCGM 106:2012): a contradiction beyond it is one in truth. */
    private static final double ONE_SIDED = 1.645;
    /**
     * Standard uncertainties of the expected value beyond which condensing is no longer hot from charge: from some 22 K over the air on;
     * common practice, no source.
     */
    private static final double CONDENSING_BEYOND = 4;

    Judgement made() {
        Optional<Judgement> closed = new NotMet(it, rest, faults, evidence(List.of())).judgement();
        if (closed.isPresent()) {
            return closed.get();
        }
        List<Finding> unknownMode = modeNotKnown();
        if (!unknownMode.isEmpty()) {
            return undecided(Optional.empty(), unknownMode);
        }
        Optional<Contradiction> contradiction =
                Contradiction.between(margins, it.question().metering(), deviation);
        if (contradiction.isPresent()) {
            return contradicted(contradiction.get());
        }
        Judgement judgement = byProbability();
        return judgement instanceof Judgement.OtherFault ? judgement : condensingChecked(judgement);
    }

    /** Without the outdoor air: whether the system cools at all, or a liquid line colder than the return air is one. */
    private List<Finding> modeNotKnown() {
        if (it.readings().temperature(Place.OUTDOOR_AIR).isPresent()
                || it.conditions().outdoorMinimumMet().isPresent()) {
            return List.of();
        }
        Optional<Reading<Temperature>> returned = it.readings().temperature(Place.RETURN_DRY_BULB);
        Optional<Reading<Temperature>> liquid = it.readings().temperature(Place.LIQUID_LINE);
        boolean colder = returned.isPresent()
                && liquid.isPresent()
                && returned.get().value().minus(liquid.get().value()).kelvins()
                        > returned.get().budget().minus(liquid.get().budget()).expanded();
        if (returned.isPresent() && !colder) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>(List.of(
                Finding.of(Severity.FORBIDS, ChargeCode.MODE_NOT_KNOWN, Subject.reading(Place.OUTDOOR_AIR.path())),
                notGiven(Place.OUTDOOR_AIR)));
        if (returned.isEmpty()) {
            findings.add(notGiven(Place.RETURN_DRY_BULB));
        }
        return findings;
    }

    private static Finding notGiven(Place place) {
        return Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading(place.path()));
    }

    /** A contradiction within the doubt of its readings is none yet: undecided; beyond it, another fault is at work. */
    private Judgement contradicted(Contradiction contradiction) {
        List<Finding> findings = new ArrayList<>(List.of(contradiction.finding(), against()));
        Criterion other =
                it.question().metering().judgedBy() == Criterion.SUPERHEAT ? Criterion.SUBCOOLING : Criterion.SUPERHEAT;
        double doubtK = margins.get(other).map(LineMargin::standardUncertaintyK).orElse(0.0);
        Optional<FaultLikelihood> best =
                faults.stream().filter(f -> !f.fault().ofCharge()).findFirst();
        boolean level = rule.decide(deviation).isPresent();
        if (best.isPresent() && level && contradiction.excessK() > ONE_SIDED * doubtK) {
            findings.add(of(ChargeCode.FAULT_LIKELIER, Severity.FORBIDS, best.get()));
            return otherFault(best.get().fault(), best.get().probability(), findings);
        }
        return undecided(Optional.empty(), findings);
    }

    private Judgement byProbability() {
        List<Finding> findings = new ArrayList<>(List.of(against()));
        if (deviation.standardUncertaintyK() > 0) {
            findings.add(probabilities());
        }
        Optional<ChargeLevel> level = rule.decide(deviation);
        if (level.isEmpty()) {
            return withoutLevel(findings);
        }
        findings.add(risk(level.get()));
        if (level.get() != ChargeLevel.ON_TARGET) {
            Fault expected = level.get() == ChargeLevel.LOW ? Fault.UNDERCHARGE : Fault.OVERCHARGE;
            Optional<Judgement> other = elsewhere(expected, findings);
            if (other.isPresent()) {
                return other.get();
            }
        }
        return new Judgement.Decided(
                level.get(), deviation.probability(level.get()), /* goodEnough= */ false, evidence(findings));
    }

    /** Inside the band as read, and likeliest there: a step that these instruments resolve would not make it better. */
    private Judgement withoutLevel(List<Finding> findings) {
        DecidingInstrument deciding = DecidingInstrument.of(deviation, rule);
        boolean enough = deviation.level() == ChargeLevel.ON_TARGET && deviation.likeliest() == ChargeLevel.ON_TARGET;
        findings.add(new Finding(
                enough ? Severity.CAUTION : Severity.FORBIDS,
                enough
                        ? ChargeCode.GOOD_ENOUGH
                        : deciding.attainable() ? ChargeCode.NOT_DECIDED : ChargeCode.EDGE_OF_BAND,
                new Subject(Subject.Kind.INSTRUMENT, String.join(" + ", deciding.origins())),
                List.of(Figure.of("share", deciding.largestShare(), "1")),
                "JCGM 106:2012"));
        if (enough) {
            return new Judgement.Decided(
                    ChargeLevel.ON_TARGET,
                    deviation.probability(ChargeLevel.ON_TARGET),
                    /* goodEnough= */ true,
                    evidence(findings));
        }
        return new Judgement.Undecided(Optional.of(deviation.likeliest()), Optional.of(deciding), evidence(findings));
    }

    /**
     * Nothing where an error of the charge is the better explanation; adds what it finds to the findings. Only faults count for which a
     * reading beside the judged quantity speaks: that quantity alone never condemns another part.
     */
    private Optional<Judgement> elsewhere(Fault expected, List<Finding> findings) {
        double ofOthers = faults.stream()
                .filter(each -> each.fault() != expected && supported(each))
                .mapToDouble(FaultLikelihood::probability)
                .sum();
        double ofCharge = probability(expected);
        Optional<FaultLikelihood> likeliest = faults.stream()
                .filter(each -> each.fault() != expected && supported(each))
                .findFirst();
        if (likeliest.isEmpty() || ofCharge >= LEAST_ODDS * ofOthers) {
            faults.stream()
                    .filter(each -> each.fault() != expected)
                    .findFirst()
                    .ifPresent(each -> findings.add(of(ChargeCode.FAULT_NOT_RULED_OUT, Severity.CAUTION, each)));
            return Optional.empty();
        }
        FaultLikelihood other = likeliest.get();
        boolean likelier =
                other.probability() > ofCharge && other.readingsAgainst().isEmpty();
        findings.add(
                of(likelier ? ChargeCode.FAULT_LIKELIER : ChargeCode.FAULT_NOT_RULED_OUT, Severity.FORBIDS, other));
        return Optional.of(
                likelier && !other.fault().ofCharge()
                        ? otherFault(other.fault(), other.probability(), findings)
                        : undecided(Optional.of(deviation.likeliest()), findings));
    }

    private boolean supported(FaultLikelihood fault) {
        Symptom judged = deviation.criterion() == Criterion.SUPERHEAT ? Symptom.SUPERHEAT : Symptom.SUBCOOLING;
        return fault.readingsFor().stream().anyMatch(reading -> reading.symptom() != judged);
    }

    /**
     * Too much refrigerant raises the condensing temperature a little. Far above what too much refrigerant does, air in the system or a
     * fouled condenser is the first suspect, and both show as subcooling too: subcooling is counted from the pressure, which air raises.
     */
    private Judgement condensingChecked(Judgement judgement) {
        boolean high = rule.decide(deviation).equals(Optional.of(ChargeLevel.HIGH));
        boolean cleared =
                gates.stream().anyMatch(gate -> gate.kind() == Gate.Kind.NAMEPLATE && gate.state() == Gate.State.MET);
        Optional<Residual> hot = residuals.stream()
                .filter(each -> each.symptom() == Symptom.CONDENSING)
                .filter(each -> each.kelvins() > CONDENSING_BEYOND * each.standardUncertaintyK())
                .findFirst();
        if (!high || cleared || hot.isEmpty()) {
            return judgement;
        }
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.of(
                Severity.FORBIDS,
                ChargeCode.CONDENSING_TOO_HOT,
                Subject.reading(Place.LIQUID_PRESSURE.path()),
                Figure.of("excess", TemperatureDifference.ofKelvins(hot.get().kelvins()))));
        findings.addAll(judgement.evidence().findings());
        return undecided(Optional.of(ChargeLevel.HIGH), findings);
    }

    private double probability(Fault fault) {
        return faults.stream()
                .filter(each -> each.fault() == fault)
                .mapToDouble(FaultLikelihood::probability)
                .findFirst()
                .orElse(0);
    }

    private Judgement otherFault(Fault fault, double probability, List<Finding> findings) {
        return new Judgement.OtherFault(fault, Math.min(1, probability), evidence(findings));
    }

    private Judgement undecided(Optional<ChargeLevel> likeliest, List<Finding> findings) {
        return new Judgement.Undecided(likeliest, Optional.empty(), evidence(findings));
    }

    private Judgement.Evidence evidence(List<Finding> findings) {
        return new Judgement.Evidence(margins, Optional.of(deviation), gates, faults, findings, steps);
    }

    private static Finding of(ChargeCode code, Severity severity, FaultLikelihood fault) {
        return Finding.of(
                severity,
                code,
                new Subject(Subject.Kind.SYSTEM, fault.fault().label()),
                Figure.of("fault", fault.fault().word()),
                Figure.of("probability", fault.probability(), "1"));
    }

    private Finding against() {
        return Finding.of(
                        Severity.CAUTION,
                        ChargeCode.AGAINST_TARGET,
                        Subject.reading(deviation.criterion().label()),
                        Figure.of("measured", deviation.measured()),
                        Figure.of("target", deviation.target()),
                        Figure.of("tolerance", deviation.tolerance()))
                .citing(PublishedLimits.SOURCE);
    }

    private Finding probabilities() {
        return new Finding(
                Severity.CAUTION,
                ChargeCode.PROBABILITIES,
                Subject.reading(deviation.criterion().label()),
                deviation.probabilities(),
                "JCGM 106:2012");
    }

    private Finding risk(ChargeLevel level) {
        return new Finding(
                Severity.CAUTION,
                level == ChargeLevel.ON_TARGET ? ChargeCode.CONSUMERS_RISK : ChargeCode.PRODUCERS_RISK,
                Subject.reading(deviation.criterion().label()),
                List.of(
                        Figure.of("risk", 1 - deviation.probability(level), "1"),
                        Figure.of("accepted", 1 - rule.wanted(level), "1")),
                "JCGM 106:2012");
    }
}
