package org.satline.charge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.satline.charge.belief.Fault;
import org.satline.charge.belief.FaultLikelihood;
import org.satline.charge.belief.Weighed;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.DecidingInstrument;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.Margins;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;
import org.satline.refrigerant.DataVersion;

/**
 * Outcome of judging a charge: a level with its probability, an undecided answer, or a fault that is not the charge. Immutable,
 * thread-safe.
 */
public sealed interface Judgement {
    /**
     * What the outcome rests on.
     *
     * @return the evidence
     */
    Evidence evidence();

    /**
     * Name of the outcome in files.
     *
     * @return {@code low}, {@code on-target}, {@code high}, {@code undecided} or {@code not-charge}
     */
    String label();

    /**
     * What an outcome rests on.
     *
     * @param margins superheat and subcooling
     * @param deviation measured less target, where both are known
     * @param gates the conditions of judging, in the order of work
     * @param weighed all readings weighed together
     * @param findings why the outcome is what it is, the heaviest first
     * @param steps how the numbers were found
     * @param data which figures of the library it was judged with
     */
    record Evidence(
            Margins margins,
            Optional<Deviation> deviation,
            List<Gate> gates,
            Weighed weighed,
            List<Finding> findings,
            List<Step> steps,
            DataVersion data) {
        /** {@inheritDoc} */
        public Evidence {
            Parts.required("findings", findings);
            Parts.required("margins deviation weighed data", margins, deviation, weighed, data);
            gates = Parts.list("gates", gates);
            findings = findings.stream()
                    .sorted(Comparator.comparing(Finding::severity))
                    .toList();
            steps = Parts.list("steps", steps);
        }

        /**
         * What may be wrong.
         *
         * @return every fault with its probability, the likeliest first
         */
        public List<FaultLikelihood> faults() {
            return weighed.belief().ranked();
        }

        /** The same with more findings. */
        Evidence with(List<Finding> more) {
            List<Finding> all = new ArrayList<>(findings);
            all.addAll(more);
            return new Evidence(margins, deviation, gates, weighed, all, steps, data);
        }
    }

    /**
     * A level.
     *
     * @param level the level
     * @param probability its probability with these instruments
     * @param goodEnough whether it is on target only as read: inside the band, and no step that these instruments resolve would better it
     * @param evidence what it rests on
     */
    record Decided(ChargeLevel level, double probability, boolean goodEnough, Evidence evidence) implements Judgement {
        /** {@inheritDoc} */
        public Decided {
            Parts.required("level evidence", level, evidence);
            checkProbability(probability);
        }

        @Override
        public String label() {
            return level.label();
        }
    }

    /**
     * No level.
     *
     * @param likeliest the likeliest level, where a deviation is known
     * @param deciding the instrument that would decide it, where the doubt of the readings is the reason
     * @param evidence what it rests on
     */
    record Undecided(Optional<ChargeLevel> likeliest, Optional<DecidingInstrument> deciding, Evidence evidence)
            implements Judgement {
        /** {@inheritDoc} */
        public Undecided {
            Parts.required("likeliest deciding evidence", likeliest, deciding, evidence);
        }

        @Override
        public String label() {
            return "undecided";
        }
    }

    /**
     * Another fault than the charge comes first.
     *
     * @param fault the fault
     * @param probability that it is there, in [0, 1]
     * @param evidence what it rests on
     */
    record OtherFault(Fault fault, double probability, Evidence evidence) implements Judgement {
        /** {@inheritDoc} */
        public OtherFault {
            Parts.required("fault evidence", fault, evidence);
            checkProbability(probability);
        }

        @Override
        public String label() {
            return "not-charge";
        }
    }

    private static void checkProbability(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability " + probability + " is outside [0, 1]");
        }
    }
}
