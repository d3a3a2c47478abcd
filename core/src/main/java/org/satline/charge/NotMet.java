package org.satline.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.belief.Fault;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;

/**
 * A condition that is not met lets no charge advice through; it names a fault only where the readings speak for it
 * more than against.
 *
 * @param it what is judged
 * @param evidence what is known without the conditions
 */
record NotMet(ChargeCase it, Judgement.Evidence evidence) {
    /**
     * Expanded uncertainty (k = 2) up to which a superheat below the range of a valve is told as flooding, K; our
     * choice.
     */
    private static final double TOLD_WITHIN_K = 4;
    /** Probability from which a fault is named; our choice. */
    private static final double NAMED = 0.5;
    /** One-sided risk of 5 % (JCGM 106:2012). */
    private static final double SURE = 0.95;

    /** What the first condition that is not met makes of it; empty where none stands in the way. */
    Optional<Judgement> judgement() {
        for (Gate gate : evidence.gates()) {
            if (gate.state() == Gate.State.NOT_MET && blocks(gate)) {
                return Optional.of(blocked(gate));
            }
        }
        return Optional.empty();
    }

    /**
     * Superheat pinned at zero is what too much refrigerant looks like: at a fixed orifice, where the level says so
     * by itself, and at a valve that is so grossly overfull
     * that nothing else explains it.
     */
    private boolean blocks(Gate gate) {
        if (gate.kind() != Gate.Kind.DRY_SUCTION) {
            return true;
        }
        return it.question().metering() == MeteringDevice.EXPANSION_VALVE && !floodedByCharge(evidence);
    }

    /** Whether a flooded evaporator is put down to too much refrigerant beyond reasonable doubt. */
    static boolean floodedByCharge(Judgement.Evidence evidence) {
        return evidence.weighed().belief().high() >= SURE
                && evidence.deviation()
                        .filter(deviation -> deviation.probability(ChargeLevel.HIGH) >= SURE)
                        .isPresent();
    }

    private Judgement blocked(Gate gate) {
        List<Finding> findings = new ArrayList<>(List.of(new Finding(
                Severity.FORBIDS,
                ChargeCode.GATE_NOT_MET,
                Subject.reading(gate.kind().word()),
                gate.figures(),
                PublishedLimits.SOURCE)));
        if (gate.kind() == Gate.Kind.AIRFLOW) {
            double low = Airflows.probabilityOfLow(it.readings(), it.conditions());
            if (low >= NAMED) {
                return otherFault(Fault.LOW_EVAPORATOR_AIRFLOW, low, findings);
            }
        } else if (gate.kind() == Gate.Kind.NAMEPLATE) {
            Fault likelier = above() && probability(Fault.NON_CONDENSABLE_GAS) >= probability(Fault.ANOTHER_REFRIGERANT)
                    ? Fault.NON_CONDENSABLE_GAS
                    : Fault.ANOTHER_REFRIGERANT;
            if (probability(likelier) >= NAMED) {
                return otherFault(likelier, probability(likelier), findings);
            }
        } else if (gate.kind() == Gate.Kind.DRY_SUCTION) {
            evidence.margins()
                    .superheat()
                    .filter(superheat -> superheat.budget().expanded() <= TOLD_WITHIN_K)
                    .flatMap(Contradiction::flooding)
                    .ifPresent(flooding -> findings.add(flooding.finding()));
        }
        return new Judgement.Undecided(Optional.empty(), Optional.empty(), evidence.with(findings));
    }

    /** Foreign gas adds to the pressure at rest and never takes from it. */
    private boolean above() {
        return it.rest().filter(rest -> rest.excessK() > 0).isPresent();
    }

    private double probability(Fault fault) {
        return evidence.weighed().belief().probability(fault);
    }

    private Judgement otherFault(Fault fault, double probability, List<Finding> findings) {
        return new Judgement.OtherFault(fault, Math.min(1, probability), evidence.with(findings));
    }
}
