package org.satline.cylinder;

import java.util.List;
import java.util.Objects;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;
import org.satline.quantity.PressureDifference;
import org.satline.safety.Caution;

/** What pressure and temperature say about the contents of a cylinder. Made by {@link ContentsCheck}. Immutable, thread-safe. */
public sealed interface ContentsFinding {
    /**
     * Returns what to know and do.
     *
     * @return cautions
     */
    List<Caution> cautions();

    /**
     * Returns the derivation.
     *
     * @return the steps
     */
    List<Step> steps();

    /**
     * A refrigerant whose saturation pressure fits the reading.
     *
     * @param designation the refrigerant
     * @param off how far the reading lies outside its band from dew to bubble pressure, zero inside
     * @param standardDeviations the same over the standard uncertainty of the comparison
     */
    record Candidate(String designation, PressureDifference off, double standardDeviations) {
        /** {@inheritDoc} */
        public Candidate {
            Parts.required("designation off", designation, off);
        }
    }

    /**
     * Consistent with the label.
     *
     * @param alsoFitting other refrigerants that this gauge and thermometer cannot tell from it, best first
     * @param nonCondensablesResolvable whether 1.5 % of non-condensables (AHRI 700) would have shown on this gauge
     * @param cautions what to know
     * @param steps the derivation
     */
    record Consistent(
            List<Candidate> alsoFitting, boolean nonCondensablesResolvable, List<Caution> cautions, List<Step> steps)
            implements ContentsFinding {
        /** {@inheritDoc} */
        public Consistent {
            alsoFitting = List.copyOf(alsoFitting);
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The pressure is too high for the label, and no other candidate fits better.
     *
     * @param moleFraction estimated mole fraction of non-condensable gas in the vapour, by Dalton's law
     * @param expandedUncertainty of that fraction, k = 2
     * @param limitResolvable whether this gauge could resolve the 1.5 % of AHRI 700 at all
     * @param cautions what to know
     * @param steps the derivation
     */
    record NonCondensablesSuspected(
            double moleFraction,
            double expandedUncertainty,
            boolean limitResolvable,
            List<Caution> cautions,
            List<Step> steps)
            implements ContentsFinding {
        /** {@inheritDoc} */
        public NonCondensablesSuspected {
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The label does not fit, and others do.
     *
     * @param candidates the refrigerants that fit, best first
     * @param cautions what to know
     * @param steps the derivation
     */
    record AnotherMoreLikely(List<Candidate> candidates, List<Caution> cautions, List<Step> steps)
            implements ContentsFinding {
        /** {@inheritDoc} */
        public AnotherMoreLikely {
            candidates = List.copyOf(candidates);
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }

    /**
     * Pressure below saturation: no liquid is left, there is superheated vapour only, and pressure says nothing about purity.
     *
     * @param cautions what to know
     * @param steps the derivation
     */
    record LiquidGone(List<Caution> cautions, List<Step> steps) implements ContentsFinding {
        /** {@inheritDoc} */
        public LiquidGone {
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The cylinder has not settled, or the reading fits nothing as a settled one: nothing can be said.
     *
     * @param reason why
     * @param cautions what to do
     * @param steps the derivation
     */
    record NotSettled(String reason, List<Caution> cautions, List<Step> steps) implements ContentsFinding {
        /** {@inheritDoc} */
        public NotSettled {
            Objects.requireNonNull(reason, "reason");
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }
}
