package org.satline.cylinder;

import java.util.List;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;

/** How much a cylinder may still take. Made only from a fill that is allowed and a weighing. Immutable, thread-safe. */
public sealed interface Room {
    /**
     * What is inside by the scale.
     *
     * @return the contents
     */
    Mass contents();

    /**
     * The derivation.
     *
     * @return the steps, in order
     */
    List<Step> steps();

    /**
     * There is room.
     *
     * @param contents what is inside by the scale
     * @param room what may still be moved, the margin for the scale and the contents of the hoses already taken off
     * @param neverPass the reading of this scale that must never be passed, gross or since it was zeroed
     * @param cautions what to know while it is filled
     * @param steps the derivation
     */
    record Left(Mass contents, Mass room, MassDifference neverPass, List<Finding> cautions, List<Step> steps)
            implements Room {
        /** {@inheritDoc} */
        public Left {
            Parts.required("contents room neverPass", contents, room, neverPass);
            cautions = Parts.list("cautions", cautions);
            steps = Parts.list("steps", steps);
        }
    }

    /**
     * Not over the limit beyond the doubt of the scale, but no room that this scale and hose could resolve: stop now.
     *
     * @param contents what is inside by the scale
     * @param steps the derivation
     */
    record Full(Mass contents, List<Step> steps) implements Room {
        /** {@inheritDoc} */
        public Full {
            Parts.required("contents", contents);
            steps = Parts.list("steps", steps);
        }
    }

    /**
     * Over the limit already, beyond the doubt of the scale.
     *
     * @param contents what is inside by the scale
     * @param excess by how much it is over the limit
     * @param steps the derivation
     */
    record Overfilled(Mass contents, Mass excess, List<Step> steps) implements Room {
        /** {@inheritDoc} */
        public Overfilled {
            Parts.required("contents excess", contents, excess);
            steps = Parts.list("steps", steps);
        }
    }
}
