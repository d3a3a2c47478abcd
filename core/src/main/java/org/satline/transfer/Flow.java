package org.satline.transfer;

import java.util.List;
import java.util.Objects;
import org.satline.explanation.Step;
import org.satline.quantity.PressureDifference;
import org.satline.safety.Caution;

/** What would happen if two points were connected. Immutable, thread-safe. */
public sealed interface Flow {
    /**
     * Returns what to know before a valve is opened.
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
     * It flows one way.
     *
     * @param from the point of higher pressure
     * @param to the point of lower pressure
     * @param medium what leaves the first point
     * @param driving the pressure difference, above zero
     * @param expandedUncertainty of the difference, k = 2
     * @param warnings what is wrong with this direction; empty where it is the wanted one
     * @param cautions what to know, the warnings included
     * @param steps the derivation
     */
    record OneWay(
            ConnectionPoint from,
            ConnectionPoint to,
            Medium medium,
            PressureDifference driving,
            PressureDifference expandedUncertainty,
            List<FlowWarning> warnings,
            List<Caution> cautions,
            List<Step> steps)
            implements Flow {
        /**
         * Checks that no part is missing.
         *
         * @param from the point of higher pressure
         * @param to the point of lower pressure
         * @param medium what leaves the first point
         * @param driving the pressure difference
         * @param expandedUncertainty of the difference
         * @param warnings what is wrong with this direction
         * @param cautions what to know
         * @param steps the derivation
         */
        public OneWay {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
            Objects.requireNonNull(medium, "medium");
            Objects.requireNonNull(driving, "driving");
            Objects.requireNonNull(expandedUncertainty, "expandedUncertainty");
            warnings = List.copyOf(warnings);
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The difference lies within its uncertainty: it may flow either way.
     *
     * @param first one point
     * @param second the other
     * @param difference pressure of the first less that of the second
     * @param expandedUncertainty of the difference, k = 2
     * @param cautions what to know
     * @param steps the derivation
     */
    record TooCloseToCall(
            ConnectionPoint first,
            ConnectionPoint second,
            PressureDifference difference,
            PressureDifference expandedUncertainty,
            List<Caution> cautions,
            List<Step> steps)
            implements Flow {
        /**
         * Checks that no part is missing.
         *
         * @param first one point
         * @param second the other
         * @param difference pressure of the first less that of the second
         * @param expandedUncertainty of the difference
         * @param cautions what to know
         * @param steps the derivation
         */
        public TooCloseToCall {
            Objects.requireNonNull(first, "first");
            Objects.requireNonNull(second, "second");
            Objects.requireNonNull(difference, "difference");
            Objects.requireNonNull(expandedUncertainty, "expandedUncertainty");
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }
}
