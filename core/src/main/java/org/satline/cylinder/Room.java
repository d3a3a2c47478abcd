package org.satline.cylinder;

import java.util.List;
import java.util.Objects;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;
import org.satline.safety.Caution;

/** How much the cylinder may still take, and the reading of the scale at which to stop. Made by {@link RoomFinder}. Immutable. */
public sealed interface Room {
    /**
     * Returns what is inside by the scale.
     *
     * @return the contents
     */
    Mass contents();

    /**
     * Returns what to know.
     *
     * @return cautions, the loudest first
     */
    List<Caution> cautions();

    /**
     * Returns the derivation.
     *
     * @return the steps, in order
     */
    List<Step> steps();

    /**
     * There is room.
     *
     * @param contents what is inside by the scale
     * @param room what may still be moved, the margin for the scale and the contents of the hose already taken off
     * @param stopReading the reading of the scale at which to stop, since it was zeroed or gross
     * @param cautions what to know
     * @param steps the derivation
     */
    record Left(Mass contents, Mass room, MassDifference stopReading, List<Caution> cautions, List<Step> steps)
            implements Room {
        /** {@inheritDoc} */
        public Left {
            Parts.required("contents room stopReading", contents, room, stopReading);
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }

    /**
     * Within the limit, but no room that this scale and hose could resolve: stop now.
     *
     * @param contents what is inside by the scale
     * @param cautions what to know
     * @param steps the derivation
     */
    record Full(Mass contents, List<Caution> cautions, List<Step> steps) implements Room {
        /** {@inheritDoc} */
        public Full {
            Objects.requireNonNull(contents, "contents");
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }

    /**
     * Over the limit already.
     *
     * @param contents what is inside by the scale
     * @param excess by how much it is over the limit
     * @param cautions what to do
     * @param steps the derivation
     */
    record Overfilled(Mass contents, Mass excess, List<Caution> cautions, List<Step> steps) implements Room {
        /** {@inheritDoc} */
        public Overfilled {
            Parts.required("contents excess", contents, excess);
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The scale contradicts the stamps; nothing can be said.
     *
     * @param contents zero
     * @param refusal the contradiction
     * @param steps the derivation
     */
    record Contradiction(Mass contents, Refusal refusal, List<Step> steps) implements Room {
        /** {@inheritDoc} */
        public Contradiction {
            Parts.required("contents refusal", contents, refusal);
            steps = List.copyOf(steps);
        }

        @Override
        public List<Caution> cautions() {
            return List.of(new Caution(refusal.text(), refusal.basis()));
        }
    }
}
