package org.satline.visit;

import java.util.List;
import org.satline.explanation.Finding;
import org.satline.quantity.Parts;

/** What is done next, with the findings that decided it, the heaviest first. One action for one visit. Immutable, thread-safe. */
public sealed interface NextAction {
    /**
     * Which action.
     *
     * @return the kind
     */
    ActionKind kind();

    /**
     * What decided it.
     *
     * @return findings, the heaviest first
     */
    List<Finding> because();

    /**
     * Something is dangerous now.
     *
     * @param because dangers, at least one
     */
    record MakeSafe(List<Finding> because) implements NextAction {
        /** {@inheritDoc} */
        public MakeSafe {
            because = Parts.list("because", because);
            if (because.isEmpty()) {
                throw new IllegalArgumentException("nothing dangerous is named; name it");
            }
        }

        @Override
        public ActionKind kind() {
            return ActionKind.MAKE_SAFE;
        }
    }

    /**
     * Nothing moves yet.
     *
     * @param kind another fault first, read again, or prepare
     * @param because what decided it
     */
    record Hold(ActionKind kind, List<Finding> because) implements NextAction {
        /** {@inheritDoc} */
        public Hold {
            Parts.required("kind", kind);
            because = Parts.list("because", because);
            if (kind != ActionKind.MEND_FIRST && kind != ActionKind.READ_AGAIN && kind != ActionKind.PREPARE) {
                throw new IllegalArgumentException(kind + " is no reason to hold; take another form of the action");
            }
        }
    }

    /**
     * One step of refrigerant.
     *
     * @param kind out or in
     * @param step the step
     * @param because what decided it
     */
    record Move(ActionKind kind, StepOrder step, List<Finding> because) implements NextAction {
        /** {@inheritDoc} */
        public Move {
            Parts.required("kind step", kind, step);
            because = Parts.list("because", because);
            if (kind != ActionKind.TAKE_OUT && kind != ActionKind.PUT_IN) {
                throw new IllegalArgumentException(kind + " moves nothing; take another form of the action");
            }
        }
    }

    /**
     * The charge stays as it is.
     *
     * @param because what decided it, with the doubt that remains
     */
    record Done(List<Finding> because) implements NextAction {
        /** {@inheritDoc} */
        public Done {
            because = Parts.list("because", because);
        }

        @Override
        public ActionKind kind() {
            return ActionKind.DONE;
        }
    }

    /**
     * Tells whether refrigerant moves by it.
     *
     * @return true for a step out or in
     */
    default boolean movesNow() {
        return this instanceof Move;
    }
}
