package org.satline.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.belief.ChargeBelief;
import org.satline.charge.belief.Fault;
import org.satline.charge.belief.FaultLikelihood;
import org.satline.charge.belief.Weighed;
import org.satline.charge.belief.WeighedChoice;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.DecidingInstrument;
import org.satline.charge.margin.DecisionRule;
import org.satline.charge.margin.Deviation;
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
import org.satline.refrigerant.DataVersion;

/**
 * The last part of judging: from a deviation, the conditions and what all readings together say to one outcome. A
 * condition that is not met comes first, then readings
 * that contradict each other beyond their doubt, then the choice that is expected to cost least.
 */
record Decision(
        ChargeCase it,
        DecisionRule rule,
        Margins margins,
        Deviation deviation,
        List<Gate> gates,
        Weighed weighed,
        List<Step> steps) {
    /** Quantile of the one-sided 95 % (JCGM 106:2012): a contradiction beyond it is one in truth. */
    private static final double ONE_SIDED = 1.645;
    /** Probability from which a fault beside the charge is told; our choice. */
    private static final double WORTH_TELLING = 0.05;

    private static final String PRIORS_SOURCE = "all readings weighed together; priors and their basis: priors.csv";
    private static final String LOSSES_SOURCE = "expected loss; losses and their basis: losses.csv";

    Judgement made() {
        Optional<Judgement> closed = new NotMet(it, evidence(List.of())).judgement();
        if (closed.isPresent()) {
            return closed.get();
        }
        List<Finding> unknownMode = modeNotKnown();
        if (!unknownMode.isEmpty()) {
            return undecided(Optional.empty(), Optional.empty(), unknownMode);
        }
        Optional<Contradiction> contradiction = Contradiction.between(
                        margins, it.question().metering(), deviation)
                .filter(this::stands);
        return contradiction.map(this::contradicted).orElseGet(this::cheapest);
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

    /**
     * Within the doubt of its readings a contradiction is none, but for a valve that floods as read: there liquid may
     * reach the compressor. A valve that floods because the
     * system is grossly overfull contradicts nothing.
     */
    private boolean stands(Contradiction contradiction) {
        if (contradiction.finding().code() == ChargeCode.VALVE_FLOODS) {
            return !NotMet.floodedByCharge(evidence(List.of()));
        }
        return contradiction.excessK() > ONE_SIDED * otherDoubtK();
    }

    private double otherDoubtK() {
        Criterion other =
                it.question().metering().judgedBy() == Criterion.SUPERHEAT ? Criterion.SUBCOOLING : Criterion.SUPERHEAT;
        return margins.get(other).map(LineMargin::standardUncertaintyK).orElse(0.0);
    }

    private Judgement contradicted(Contradiction contradiction) {
        List<Finding> findings = new ArrayList<>(List.of(contradiction.finding(), against(), belief()));
        Optional<FaultLikelihood> best = likeliestOther();
        boolean level = rule.decide(deviation).isPresent();
        if (best.isPresent() && level && contradiction.excessK() > ONE_SIDED * otherDoubtK()) {
            findings.add(of(ChargeCode.FAULT_LIKELIER, Severity.FORBIDS, best.get()));
            return otherFault(best.get(), findings);
        }
        return undecided(Optional.empty(), Optional.empty(), findings);
    }

    private Optional<FaultLikelihood> likeliestOther() {
        return weighed.belief()
                .likeliestOther()
                .map(fault -> new FaultLikelihood(fault, weighed.belief().probability(fault)));
    }

    private Judgement cheapest() {
        List<Finding> findings = new ArrayList<>(List.of(against()));
        if (deviation.standardUncertaintyK() > 0) {
            findings.add(probabilities());
        }
        findings.add(belief());
        WeighedChoice chosen = weighed.choices().get(0);
        nextBest(chosen).ifPresent(findings::add);
        weighed.wouldChange()
                .ifPresent(path ->
                        findings.add(Finding.of(Severity.CAUTION, ChargeCode.WOULD_CHANGE, Subject.reading(path))));
        if (!weighed.explained() && !plainlyShort()) {
            findings.add(Finding.of(
                    Severity.FORBIDS,
                    ChargeCode.UNEXPLAINED,
                    Subject.reading(deviation.criterion().label())));
            return undecided(Optional.empty(), Optional.empty(), findings);
        }
        return switch (chosen.choice()) {
            case STEP_IN -> step(ChargeLevel.LOW, findings);
            case STEP_OUT -> step(ChargeLevel.HIGH, findings);
            case DONE -> step(ChargeLevel.ON_TARGET, findings);
            case READ_BETTER ->
                goodAsRead()
                        ? level(ChargeLevel.ON_TARGET, findings)
                        : heldByUnreadGates()
                                .map(level -> level(level, findings))
                                .orElseGet(() -> better(findings));
            case MEND_FIRST -> {
                FaultLikelihood fault = likeliestOther().orElseThrow();
                findings.add(of(ChargeCode.FAULT_LIKELIER, Severity.FORBIDS, fault));
                yield otherFault(fault, findings);
            }
        };
    }

    /** Inside the band as read, and likeliest there: a step that these instruments resolve would not make it better. */
    private boolean goodAsRead() {
        return deviation.level() == ChargeLevel.ON_TARGET
                && deviation.likeliest() == ChargeLevel.ON_TARGET
                && weighed.belief().likeliest() == ChargeLevel.ON_TARGET;
    }

    /** Shorter than any system of the table, and plainly so: what then comes first is the leak. */
    private boolean plainlyShort() {
        return weighed.belief().low() >= rule.wanted(ChargeLevel.LOW)
                && deviation.probability(ChargeLevel.LOW) >= rule.wanted(ChargeLevel.LOW);
    }

    /**
     * Nothing moves against a judged quantity that is told by these instruments. What is only likely needs both
     * margins: a weak condenser fan takes 11 to 15 K of superheat from a capillary and
     * hardly any subcooling (two student
     * laboratories), so that superheat alone looks like too much refrigerant.
     */
    private Judgement step(ChargeLevel level, List<Finding> findings) {
        boolean inside = deviation.level() == ChargeLevel.ON_TARGET && deviation.likeliest() == ChargeLevel.ON_TARGET;
        boolean against = rule.decide(deviation).filter(told -> told != level).isPresent()
                || (inside && level != ChargeLevel.ON_TARGET);
        boolean sure = weighed.belief().probability(level) >= rule.wanted(level);
        boolean alone = level != ChargeLevel.ON_TARGET && bySuperheatAlone() && !sure;
        return against || alone ? better(findings) : level(level, findings);
    }

    private boolean bySuperheatAlone() {
        return deviation.criterion() == Criterion.SUPERHEAT
                && margins.subcooling().isEmpty();
    }

    /**
     * A condition that was merely not read blocks moving by itself; it does not take away a level that these
     * instruments tell.
     */
    private Optional<ChargeLevel> heldByUnreadGates() {
        return rule.decide(deviation)
                .filter(level -> !bySuperheatAlone()
                        && gates.stream().anyMatch(Gate::blocksUnread)
                        && level == weighed.belief().likeliest());
    }

    private Judgement level(ChargeLevel level, List<Finding> findings) {
        double probability = weighed.belief().probability(level);
        boolean sure = probability >= rule.wanted(level);
        if (rule.decide(deviation).equals(Optional.of(level))) {
            findings.add(risk(level, deviation.probability(level)));
        }
        boolean enough = level == ChargeLevel.ON_TARGET
                && deviation.probability(ChargeLevel.ON_TARGET) < rule.wanted(ChargeLevel.ON_TARGET);
        if (enough) {
            findings.add(doubt(Severity.CAUTION, ChargeCode.GOOD_ENOUGH, DecidingInstrument.of(deviation, rule)));
        }
        if (level != ChargeLevel.ON_TARGET && !sure) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    ChargeCode.SMALL_STEP_DECIDES,
                    Subject.reading(deviation.criterion().label()),
                    List.of(Figure.of("probability", probability, "1")),
                    LOSSES_SOURCE));
        }
        likeliestOther()
                .filter(each -> each.probability() >= WORTH_TELLING)
                .ifPresent(each -> findings.add(of(ChargeCode.FAULT_NOT_RULED_OUT, Severity.CAUTION, each)));
        return new Judgement.Decided(level, probability, enough, evidence(findings));
    }

    /**
     * Neither a step nor a fault is likely enough: better instruments where they are the reason, the fault that is
     * not ruled out where that is.
     */
    private Judgement better(List<Finding> findings) {
        ChargeLevel likeliest = weighed.belief().likeliest();
        if (rule.decide(deviation).isPresent()) {
            likeliestOther()
                    .ifPresent(each -> findings.add(of(ChargeCode.FAULT_NOT_RULED_OUT, Severity.FORBIDS, each)));
            return undecided(Optional.of(likeliest), Optional.empty(), findings);
        }
        DecidingInstrument deciding = DecidingInstrument.of(deviation, rule);
        findings.add(doubt(
                Severity.FORBIDS, deciding.attainable() ? ChargeCode.NOT_DECIDED : ChargeCode.EDGE_OF_BAND, deciding));
        return undecided(Optional.of(likeliest), Optional.of(deciding), findings);
    }

    private static Finding doubt(Severity severity, ChargeCode code, DecidingInstrument deciding) {
        return new Finding(
                severity,
                code,
                new Subject(Subject.Kind.INSTRUMENT, String.join(" + ", deciding.origins())),
                List.of(Figure.of("share", deciding.largestShare(), "1")),
                "JCGM 106:2012");
    }

    private Optional<Finding> nextBest(WeighedChoice chosen) {
        return weighed.choices().stream()
                .skip(1)
                .filter(each -> each.choice() != chosen.choice())
                .findFirst()
                .map(next -> new Finding(
                        Severity.CAUTION,
                        ChargeCode.NEXT_BEST,
                        new Subject(
                                Subject.Kind.SYSTEM,
                                next.fault()
                                        .map(Fault::label)
                                        .orElse(next.choice().word())),
                        List.of(
                                Figure.of("choice", next.choice().word()),
                                Figure.of("loss", next.expectedLoss(), "1"),
                                Figure.of("least", chosen.expectedLoss(), "1")),
                        LOSSES_SOURCE));
    }

    private Judgement otherFault(FaultLikelihood fault, List<Finding> findings) {
        return new Judgement.OtherFault(fault.fault(), fault.probability(), evidence(findings));
    }

    private Judgement undecided(
            Optional<ChargeLevel> likeliest, Optional<DecidingInstrument> deciding, List<Finding> findings) {
        return new Judgement.Undecided(likeliest, deciding, evidence(findings));
    }

    private Judgement.Evidence evidence(List<Finding> findings) {
        return new Judgement.Evidence(
                margins, Optional.of(deviation), gates, weighed, findings, steps, DataVersion.current());
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

    /** Of the judged quantity alone. */
    private Finding probabilities() {
        return new Finding(
                Severity.CAUTION,
                ChargeCode.PROBABILITIES,
                Subject.reading(deviation.criterion().label()),
                deviation.probabilities(),
                "JCGM 106:2012");
    }

    /** Of the charge itself, by all readings. */
    private Finding belief() {
        ChargeBelief belief = weighed.belief();
        return new Finding(
                Severity.CAUTION,
                ChargeCode.BELIEF,
                Subject.reading(deviation.criterion().label()),
                List.of(
                        Figure.of("low", belief.low(), "1"),
                        Figure.of("onTarget", belief.onTarget(), "1"),
                        Figure.of("high", belief.high(), "1")),
                PRIORS_SOURCE);
    }

    private Finding risk(ChargeLevel level, double probability) {
        return new Finding(
                Severity.CAUTION,
                level == ChargeLevel.ON_TARGET ? ChargeCode.CONSUMERS_RISK : ChargeCode.PRODUCERS_RISK,
                Subject.reading(deviation.criterion().label()),
                List.of(Figure.of("risk", 1 - probability, "1"), Figure.of("accepted", 1 - rule.wanted(level), "1")),
                "JCGM 106:2012");
    }
}
