package org.satline.transfer.hookup;

import java.util.Optional;
import org.satline.explanation.Coded;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;

/**
 * What a plan is asked for. Immutable, thread-safe.
 *
 * @param kind what is to be done
 * @param cylinder the name of the cylinder that is used; for a change-over, of the one that comes next; not read at the end of a job
 * @param amount how much one step moves, where a step is asked and it is known
 */
public record PlanTask(Kind kind, String cylinder, Optional<Mass> amount) {
    /** What is to be done. */
    public enum Kind implements Coded {
        /** Hook up and purge until the hose is ready for taking out to a receiver, or for putting in from a source. */
        CONNECT_AND_PURGE,
        /** Take one step out, stop, and stand as the wait needs. */
        STEP_OUT,
        /** Put one step in, stop, and stand as the wait needs. */
        STEP_IN,
        /** Take the hose from the cylinder it is on to another one. */
        CHANGE_OVER,
        /** Take everything off. */
        END_OF_JOB
    }

    /** {@inheritDoc} */
    public PlanTask {
        Parts.required("kind cylinder amount", kind, cylinder, amount);
    }

    /**
     * A task without an amount.
     *
     * @param kind what is to be done
     * @param cylinder the cylinder
     * @return the task
     */
    public static PlanTask of(Kind kind, String cylinder) {
        return new PlanTask(kind, cylinder, Optional.empty());
    }

    /**
     * The same task for one step of that size.
     *
     * @param most how much
     * @return the task
     */
    public PlanTask until(Mass most) {
        return new PlanTask(kind, cylinder, Optional.of(most));
    }
}
