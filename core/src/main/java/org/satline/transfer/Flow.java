package org.satline.transfer;

import java.util.List;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;
import org.satline.quantity.PressureDifference;
import org.satline.transfer.hookup.Medium;

/** What would happen if two points were connected. Immutable, thread-safe. */
public sealed interface Flow {
    /**
     * Returns the derivation.
     *
     * @return the steps, in order
     */
    List<Step> steps();

    /**
     * It flows one way.
     *
     * @param from the point of higher pressure
     * @param to the point of lower pressure
     * @param medium what leaves the first point
     * @param driving the pressure difference, above zero; with a recovery machine between them it may be zero or below
     * @param expandedUncertainty of the difference, k = 2
     * @param warnings what is wrong with this direction; empty where it is the wanted one
     * @param steps the derivation
     */
    record OneWay(
            ConnectionPoint from,
            ConnectionPoint to,
            Medium medium,
            PressureDifference driving,
            PressureDifference expandedUncertainty,
            List<TransferCode> warnings,
            List<Step> steps)
            implements Flow {
        /** {@inheritDoc} */
        public OneWay {
            Parts.required("from to medium driving", from, to, medium, driving);
            Parts.required("expandedUncertainty", expandedUncertainty);
            warnings = Parts.list("warnings", warnings);
            steps = Parts.list("steps", steps);
        }
    }

    /**
     * The difference lies within its uncertainty: it may flow either way.
     *
     * @param first one point
     * @param second the other
     * @param difference pressure of the first less that of the second
     * @param expandedUncertainty of the difference, k = 2
     * @param steps the derivation
     */
    record TooCloseToCall(
            ConnectionPoint first,
            ConnectionPoint second,
            PressureDifference difference,
            PressureDifference expandedUncertainty,
            List<Step> steps)
            implements Flow {
        /** {@inheritDoc} */
        public TooCloseToCall {
            Parts.required("first second difference", first, second, difference);
            Parts.required("expandedUncertainty", expandedUncertainty);
            steps = Parts.list("steps", steps);
        }
    }
}
