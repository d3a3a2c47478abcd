package org.satline.cylinder;

import java.util.List;
import org.satline.explanation.Coded;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;
import org.satline.quantity.PressureDifference;

/**
 * What the pressure of a cylinder at rest says about its label. Immutable, thread-safe.
 *
 * @param outcome what follows
 * @param candidates other refrigerants that the pressure fits, the best first
 * @param nonCondensables mole fraction of gas in the vapour that does not condense, by Dalton's law; 0 unless it is suspected
 * @param expandedUncertainty of that fraction, k = 2
 * @param limitResolvable whether these instruments resolve the limit of non-condensable gas
 * @param cautions what to know
 * @param steps the derivation
 */
public record ContentsFinding(
        Outcome outcome,
        List<Candidate> candidates,
        double nonCondensables,
        double expandedUncertainty,
        boolean limitResolvable,
        List<Finding> cautions,
        List<Step> steps) {
    /** What a pressure says about a label. */
    public enum Outcome implements Coded {
        /** It fits the label. */
        CONSISTENT,
        /** It is above the label's, and gas that does not condense explains it. */
        NON_CONDENSABLES_SUSPECTED,
        /** It fits another refrigerant. */
        ANOTHER_MORE_LIKELY,
        /** No liquid is left, so that it says nothing. */
        LIQUID_GONE,
        /** It was not read at rest, or the liquid is colder than was read. */
        NOT_SETTLED
    }

    /**
     * A refrigerant that the pressure fits.
     *
     * @param designation the refrigerant
     * @param off how far the pressure is outside its band
     * @param standardDeviations the same in standard uncertainties
     */
    public record Candidate(String designation, PressureDifference off, double standardDeviations) {
        /** {@inheritDoc} */
        public Candidate {
            Parts.numbers("standardDeviations", standardDeviations);
            Parts.required("designation off", designation, off);
        }
    }

    /** {@inheritDoc} */
    public ContentsFinding {
        Parts.numbers("nonCondensables expandedUncertainty", nonCondensables, expandedUncertainty);
        Parts.required("outcome", outcome);
        candidates = Parts.list("candidates", candidates);
        cautions = Parts.list("cautions", cautions);
        steps = Parts.list("steps", steps);
    }

    /**
     * Whether it speaks against the label.
     *
     * @return false where it fits, and where no liquid is left
     */
    public boolean isDoubtful() {
        return outcome != Outcome.CONSISTENT && outcome != Outcome.LIQUID_GONE;
    }
}
