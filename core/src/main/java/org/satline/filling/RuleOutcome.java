package org.satline.filling;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Coded;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.PressureDifference;

/** What one fill rule says about one cylinder and one refrigerant. Immutable, thread-safe. */
public sealed interface RuleOutcome {
    /**
     * The rule that was applied.
     *
     * @return the rule
     */
    FillRule rule();

    /** Why a rule gives no limit. */
    enum Reason implements Coded {
        /** The rule is for portable tanks. */
        FOR_TANKS,
        /** The rule is not for portable tanks. */
        NOT_FOR_TANKS,
        /** The rule is for gases of critical temperature above 65 degC. */
        FOR_LOW_PRESSURE,
        /** The rule is for gases of critical temperature from -50 to 65 degC. */
        FOR_HIGH_PRESSURE,
        /** The rule is for gases of critical temperature below -50 degC. */
        FOR_COMPRESSED,
        /** There is no liquid at the temperature of the rule. */
        NO_LIQUID,
        /** The saturation line starts above the temperature of the rule. */
        BELOW_LINE,
        /** The gas has no normal boiling point. */
        NO_BOILING_POINT,
        /** The table does not name the gas. */
        GAS_NOT_NAMED,
        /** The table has a figure for the gas, so the formula does not apply. */
        GAS_NAMED,
        /** The table names this cylinder for the gas, so the pressure rule does not apply. */
        CYLINDER_NAMED,
        /** The last row of the table is for gas that does not burn. */
        FLAMMABLE_NOT_NAMED,
        /** The row of the table gives no percentage. */
        NO_PERCENTAGE,
        /** The gas is no liquefied petroleum gas. */
        NO_PETROLEUM_GAS,
        /** The specific gravity is outside the table. */
        GRAVITY_OUTSIDE,
        /** No mass rating is stamped. */
        NO_RATING,
        /** A stamp is not given. */
        STAMP_NOT_GIVEN,
        /** The cylinder is none of those that the table names for the gas. */
        CYLINDER_NOT_NAMED,
        /** The test pressure is below the least one of the table. */
        TEST_PRESSURE_LOW
    }

    /**
     * The rule gives a largest mass.
     *
     * @param rule the rule
     * @param maximumContents the largest contents
     * @param cautions what to know about this limit
     * @param steps the derivation
     */
    record MassLimit(FillRule rule, Mass maximumContents, List<Finding> cautions, List<Step> steps)
            implements RuleOutcome {
        /** {@inheritDoc} */
        public MassLimit {
            Parts.required("rule maximumContents", rule, maximumContents);
            cautions = Parts.list("cautions", cautions);
            steps = Parts.list("steps", steps);
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
            steps = Parts.list("steps", steps);
        }

        /**
         * Whether the rule is kept.
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
     * @param figures the numbers and words that belong to the reason
     */
    record NotApplicable(FillRule rule, Reason reason, List<Figure> figures) implements RuleOutcome {
        /** {@inheritDoc} */
        public NotApplicable {
            Parts.required("rule reason", rule, reason);
            figures = Parts.list("figures", figures);
        }
    }

    /**
     * The rule applies but could not be tested.
     *
     * @param rule the rule
     * @param reason why
     * @param missing the stamp that would make it possible, where it is a stamp
     * @param figures the numbers and words that belong to the reason
     */
    record NotTested(FillRule rule, Reason reason, Optional<Stamp> missing, List<Figure> figures)
            implements RuleOutcome {
        /** {@inheritDoc} */
        public NotTested {
            Parts.required("rule reason missing", rule, reason, missing);
            figures = Parts.list("figures", figures);
        }

        /** A stamp is missing. */
        static NotTested without(FillRule rule, Stamp stamp) {
            return new NotTested(
                    rule, Reason.STAMP_NOT_GIVEN, Optional.of(stamp), List.of(Figure.of("stamp", stamp.field())));
        }
    }

    /**
     * The law names the cylinders for this gas and this is none of them, or its mark is too low: it must not be filled.
     *
     * @param rule the rule
     * @param reason why
     * @param figures what the rule asks for and what the cylinder is
     */
    record Forbidden(FillRule rule, Reason reason, List<Figure> figures) implements RuleOutcome {
        /** {@inheritDoc} */
        public Forbidden {
            Parts.required("rule reason", rule, reason);
            figures = Parts.list("figures", figures);
        }
    }

    /**
     * How much it allows, to find the outcome that allows least.
     *
     * @return kilograms or pascals, below every number where it forbids
     */
    default double allows() {
        if (this instanceof Forbidden) {
            return Double.NEGATIVE_INFINITY;
        }
        if (this instanceof PressureTest test) {
            return test.margin().pascals();
        }
        return this instanceof MassLimit limit ? limit.maximumContents().kilograms() : Double.POSITIVE_INFINITY;
    }
}
