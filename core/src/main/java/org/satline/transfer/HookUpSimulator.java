package org.satline.transfer;

import org.satline.quantity.Parts;

/** Plays acts on a hook-up. Knows nothing of how a plan is made. Immutable, thread-safe. */
public final class HookUpSimulator {
    private final HookUp hookUp;

    /**
     * Prepares a hook-up.
     *
     * @param hookUp its parts
     */
    public HookUpSimulator(HookUp hookUp) {
        Parts.required("hookUp", hookUp);
        this.hookUp = hookUp;
    }

    /**
     * What one act led to.
     *
     * @param act the act
     * @param state the state after it
     * @param effects what it did
     */
    public record Outcome(Act act, HookUpState state, Effects effects) {
        /** {@inheritDoc} */
        public Outcome {
            Parts.required("act state effects", act, state, effects);
        }
    }
}
