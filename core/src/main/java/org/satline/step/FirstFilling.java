package org.satline.step;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.measurement.Reading;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;

/**
 * Charge by weight of an evacuated system: the charge of the plate, more for a line set longer than the plate covers,
 * and what the scale under the source cylinder reads
 * when it is in. Immutable, thread-safe.
 *
 * @param weighIn what goes in, with its uncertainty from plate, line set and scale
 * @param scaleAtEnd what the scale under the source reads then
 * @param steps how it was found
 */
public record FirstFilling(Reading<Mass> weighIn, MassDifference scaleAtEnd, List<Step> steps) {
    /** A plate prints its charge to two or three digits: half of the last one at best; common practice, no source. */
    private static final double PLATE_LIMIT = 0.01;
    /**
     * Density and bore of a line are known within that share: temperature along it and the tolerance of the tube; our
     * choice.
     */
    private static final double LINE_LIMIT = 0.15;

    /** {@inheritDoc} */
    public FirstFilling {
        Parts.required("weighIn scaleAtEnd", weighIn, scaleAtEnd);
        steps = List.copyOf(steps);
    }

    /**
     * Works out a filling.
     *
     * @param plate charge of the plate; above 0
     * @param longerLine what a line set longer than the plate covers takes more
     * @param scale what the scale under the source cylinder reads before, with the standard uncertainty of a
     *     difference of two readings
     * @return the filling
     * @throws IllegalArgumentException if the plate states no charge, or more would go in than a scale that was
     *     not zeroed shows to be there
     */
    public static FirstFilling of(Mass plate, Optional<LineCharge> longerLine, Reading<Mass> scale) {
        if (!(plate.kilograms() > 0)) {
            throw new IllegalArgumentException(
                    "charge of the plate " + plate + " is not above 0; read it again, or take the maker's figure");
        }
        Mass more = longerLine.map(LineCharge::mass).orElse(Mass.ZERO);
        Mass sum = plate.plus(more);
        if (!(sum.kilograms() < scale.value().kilograms())) {
            throw new IllegalArgumentException("filling of " + sum + " is not below what stands on the scale, "
                    + scale.value() + "; take a fuller cylinder");
        }
        UncertaintyBudget budget = UncertaintyBudget.of("plate", PLATE_LIMIT * plate.kilograms() / Math.sqrt(3))
                .plus(UncertaintyBudget.of("line set", LINE_LIMIT * more.kilograms() / Math.sqrt(3)))
                .plus(scale.budget());
        Reading<Mass> weighIn = Reading.of(sum, budget.combined(), "charge by weight");
        MassDifference end = scale.value().differenceFrom(sum);
        Step step = new Step(
                "chargeByWeight",
                "m = m_plate + m_lines",
                List.of(
                        Figure.of("m_plate", plate),
                        Figure.of("m_lines", more),
                        Figure.of("u", Mass.ofKilograms(budget.combined()))),
                Figure.of("m", sum),
                "arithmetic; the maker's figure goes first");
        return new FirstFilling(weighIn, end, List.of(step));
    }
}
