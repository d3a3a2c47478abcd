package org.satline.cylinder;

import java.util.List;
import java.util.OptionalDouble;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.PressureDifference;
import org.satline.safety.Caution;

/** What one fill rule says about one cylinder and one refrigerant. Immutable, thread-safe. */
public sealed interface RuleOutcome {
    /**
     * Returns the rule that was applied.
     *
     * @return the rule
     */
    FillRule rule();

    /**
     * Returns the derivation.
     *
     * @return the steps, in order
     */
    List<Step> steps();

    /**
     * The rule gives a largest mass.
     *
     * @param rule the rule
     * @param maximumContents the largest contents
     * @param maximumGross the largest gross weight, tare included
     * @param cautions what to know about this limit
     * @param steps the derivation
     */
    record MassLimit(FillRule rule, Mass maximumContents, Mass maximumGross, List<Caution> cautions, List<Step> steps)
            implements RuleOutcome {
        /** {@inheritDoc} */
        public MassLimit {
            Parts.required("rule maximumContents maximumGross", rule, maximumContents, maximumGross);
            cautions = List.copyOf(cautions);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The rule compares pressures.
     *
     * @param rule the rule
     * @param margin allowed pressure less the pressure found; below zero where the rule is broken
     * @param steps the derivation
     */
    record PressureTest(FillRule rule, PressureDifference margin, List<Step> steps) implements RuleOutcome {
        /** {@inheritDoc} */
        public PressureTest {
            Parts.required("rule margin", rule, margin);
            steps = List.copyOf(steps);
        }

        /**
         * Tells whether the rule is kept.
         *
         * @return true where the margin is not below zero
         */
        public boolean passed() {
            return margin.pascals() >= 0;
        }
    }

    /**
     * The rule has nothing to say here.
     *
     * @param rule the rule
     * @param reason why
     * @param steps what was found on the way
     */
    record NotApplicable(FillRule rule, String reason, List<Step> steps) implements RuleOutcome {
        /** {@inheritDoc} */
        public NotApplicable {
            Parts.required("rule reason", rule, reason);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The rule applies but could not be tested.
     *
     * @param rule the rule
     * @param missing what is missing, and where to find it
     * @param steps what was found on the way
     */
    record NotTested(FillRule rule, String missing, List<Step> steps) implements RuleOutcome {
        /** {@inheritDoc} */
        public NotTested {
            Parts.required("rule missing", rule, missing);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The law names the cylinders for this gas and this is none of them, or its mark is too low: it must not be filled.
     *
     * @param rule the rule
     * @param reason what the rule asks for and what the cylinder is
     * @param steps what was found on the way
     */
    record Forbidden(FillRule rule, String reason, List<Step> steps) implements RuleOutcome {
        /** {@inheritDoc} */
        public Forbidden {
            Parts.required("rule reason", rule, reason);
            steps = List.copyOf(steps);
        }
    }

    /**
     * Returns the largest contents in kilograms where the rule gives one.
     *
     * @return kg, or nothing
     */
    default OptionalDouble maximumKilograms() {
        return this instanceof MassLimit limit
                ? OptionalDouble.of(limit.maximumContents().kilograms())
                : OptionalDouble.empty();
    }
}
