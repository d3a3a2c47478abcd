package org.satline.transfer.hookup;

import java.util.List;
import org.satline.explanation.Coded;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.transfer.simulator.Invariant;

/** An order of acts that breaks no {@link Invariant}, or why there is none. Immutable, thread-safe. */
public sealed interface HookUpPlan {
    /** The acts of one task, phase by phase. */
    record Planned(List<Phase> phases) implements HookUpPlan {
        /**
         * Makes a plan.
         *
         * @param phases what is done, in order; empty where nothing is left to do
         */
        public Planned {
            phases = Parts.list("phases", phases);
        }

        /**
         * Returns all acts.
         *
         * @return in order
         */
        public List<Act> acts() {
            return phases.stream().flatMap(phase -> phase.acts().stream()).toList();
        }
    }

    /**
     * There is no safe order of acts.
     *
     * @param reason why
     * @param parts what makes one possible, proved by planning with it: one part, or two that are needed together; empty where none was
     *     found
     */
    record NoPlan(PlanReason reason, List<PlanPart> parts) implements HookUpPlan {
        /** {@inheritDoc} */
        public NoPlan {
            Parts.required("reason", reason);
            parts = List.copyOf(parts);
        }
    }

    /**
     * A part of a plan that is done in one go.
     *
     * @param kind what it is for
     * @param acts at most {@link #MOST_ACTS}
     * @param vented estimate of the refrigerant lost to the air or the pump
     * @param notes what to heed meanwhile
     */
    record Phase(Kind kind, List<Act> acts, Mass vented, List<PlanNote> notes) {
        /** The most acts of one phase. */
        public static final int MOST_ACTS = 20;

        /** What a phase is for. */
        public enum Kind implements Coded {
            /** Hoses and manifold at the ports, free of air. */
            HOOK_UP,
            /** The hose to the cylinder, free of air. */
            PURGE,
            /** One step and its wait. */
            STEP,
            /** The hose to the cylinder emptied into the running system and taken off there. */
            LEAVE,
            /** Everything off. */
            TAKE_OFF
        }

        /** {@inheritDoc} */
        public Phase {
            Parts.required("kind vented", kind, vented);
            acts = Parts.list("acts", acts);
            notes = Parts.list("notes", notes);
            if (acts.size() > MOST_ACTS) {
                throw new IllegalArgumentException("a phase has " + acts.size() + " acts; at most " + MOST_ACTS
                        + " are allowed: plan in more phases");
            }
        }
    }
}
