package org.satline.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;

/**
 * A condition that is not met lets no charge advice through; it names a fault only where the readings prove it.
 *
 * @param it what is judged
 * @param rest what the pressure at rest says
 * @param faults what may be wrong, ranked
 * @param evidence what is known without the conditions
 */
record NotMet(ChargeCase it, Optional<RestEvidence> rest, List<FaultLikelihood> faults, Judgement.Evidence evidence) {
    /** Expanded uncertainty (k = 2) up to which a superheat below the range of a valve is told as flooding, K; our choice. */
    private static final double TOLD_WITHIN_K = 4;

    /** What the first condition that is not met makes of it; empty where none stands in the way. */
    Optional<Judgement> judgement() {
        for (Gate gate : evidence.gates()) {
            if (gate.state() == Gate.State.NOT_MET && blocks(gate)) {
                return Optional.of(blocked(gate));
            }
        }
        return Optional.empty();
    }

    /** With a fixed orifice superheat pinned at zero is what too much refrigerant looks like; the level says so by itself. */
    private boolean blocks(Gate gate) {
        return gate.kind() != Gate.Kind.DRY_SUCTION || it.question().metering() == MeteringDevice.EXPANSION_VALVE;
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
            if (low > 0) {
                return otherFault(Fault.LOW_EVAPORATOR_AIRFLOW, low, findings);
            }
        } else if (gate.kind() == Gate.Kind.NAMEPLATE) {
            if (rest.filter(found -> found.excessK() > 0).isPresent()) {
                return otherFault(Fault.NON_CONDENSABLE_GAS, probabilityOfGas(), findings);
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

    private double probabilityOfGas() {
        return faults.stream()
                .filter(each -> each.fault() == Fault.NON_CONDENSABLE_GAS)
                .mapToDouble(FaultLikelihood::probability)
                .sum();
    }

    private Judgement otherFault(Fault fault, double probability, List<Finding> findings) {
        return new Judgement.OtherFault(fault, Math.min(1, probability), evidence.with(findings));
    }
}
