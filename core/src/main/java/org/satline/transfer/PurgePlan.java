package org.satline.transfer;

import java.util.List;
import java.util.Objects;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.safety.Caution;

/** How to free a hose of air before a transfer, or why it cannot be purged. Made by {@link PurgePlanner}. Immutable, thread-safe. */
public sealed interface PurgePlan {
    /**
     * Returns what to know.
     *
     * @return cautions
     */
    List<Caution> cautions();

    /**
     * The hose can be purged.
     *
     * @param from the side whose gas sweeps the hose
     * @param turned whether the hose has to be turned round first
     * @param released an estimate of the refrigerant that is released
     * @param actions the moves, in order
     * @param cautions what to know
     * @param steps how the release was estimated
     */
    record Purge(
            HoseSide from,
            boolean turned,
            Mass released,
            List<PurgeAction> actions,
            List<Caution> cautions,
            List<Step> steps)
            implements PurgePlan {
        /** {@inheritDoc} */
        public Purge {
            Parts.required("from released", from, released);
            actions = List.copyOf(actions);
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }

        /**
         * Returns the joint that is left loose while the hose is swept.
         *
         * @return the side opposite to the one that purges
         */
        public HoseSide looseJoint() {
            return from.other();
        }
    }

    /**
     * No purge is possible with this hose and these pressures.
     *
     * @param reasons one for each way that was tried
     * @param instead what to do instead
     * @param cautions what to know
     */
    record Impossible(List<String> reasons, String instead, List<Caution> cautions) implements PurgePlan {
        /** {@inheritDoc} */
        public Impossible {
            reasons = List.copyOf(reasons);
            Objects.requireNonNull(instead, "instead");
            cautions = List.copyOf(cautions);
        }
    }
}
