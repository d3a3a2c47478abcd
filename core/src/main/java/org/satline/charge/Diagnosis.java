package org.satline.charge;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;

/** Outcome of a diagnosis: a level with known risks, an undecided answer, or a fault that is not the charge. */
public sealed interface Diagnosis {
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
     * Everything found on the way.
     *
     * @param margins superheat and subcooling
     * @param deviation measured less target, where there is a target
     * @param gates the conditions, in the order of work
     * @param faults all faults, most probable first; empty where nothing was read to compare
     * @param reasons why the outcome is what it is
     * @param advice what to do
     * @param steps derivation
     */
    record Evidence(
            Margins margins,
            Optional<Deviation> deviation,
            List<Gate> gates,
            List<FaultLikelihood> faults,
            List<String> reasons,
            String advice,
            List<Step> steps) {
        /** {@inheritDoc} */
        public Evidence {
            Parts.required("margins deviation", margins, deviation);
            gates = List.copyOf(gates);
            faults = List.copyOf(faults);
            reasons = List.copyOf(reasons);
            Objects.requireNonNull(advice, "advice");
            steps = List.copyOf(steps);
        }
    }

    /**
     * The charge is known with the risks of the decision rule.
     *
     * @param level low, on target or high
     * @param evidence what it rests on
     */
    record Decided(ChargeLevel level, Evidence evidence) implements Diagnosis {
        /** {@inheritDoc} */
        public Decided {
            Parts.required("level evidence", level, evidence);
        }

        @Override
        public String label() {
            return level.label();
        }
    }

    /**
     * These readings allow no level.
     *
     * @param deciding instrument that would decide it, where it is a matter of instruments
     * @param evidence what it rests on
     */
    record Undecided(Optional<DecidingInstrument> deciding, Evidence evidence) implements Diagnosis {
        /** {@inheritDoc} */
        public Undecided {
            Parts.required("deciding evidence", deciding, evidence);
        }

        @Override
        public String label() {
            return "undecided";
        }
    }

    /**
     * Another fault explains the readings better; the charge is left alone until it is mended.
     *
     * @param fault the fault to look for first
     * @param evidence what it rests on
     */
    record NotCharge(Fault fault, Evidence evidence) implements Diagnosis {
        /** {@inheritDoc} */
        public NotCharge {
            Parts.required("fault evidence", fault, evidence);
        }

        @Override
        public String label() {
            return "not-charge";
        }
    }
}
