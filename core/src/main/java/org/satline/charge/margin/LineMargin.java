package org.satline.charge.margin;

import java.util.List;
import org.satline.explanation.Step;
import org.satline.measurement.ReportedValue;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/**
 * Superheat or subcooling with its uncertainty. Immutable, thread-safe. {@link Margins} computes both.
 *
 * @param criterion which of the two
 * @param value superheat above the dew point or subcooling below the bubble point
 * @param saturation the dew point or bubble point at the pressure
 * @param budget uncertainty of the value, K
 * @param steps how it was found
 */
public record LineMargin(
        Criterion criterion,
        TemperatureDifference value,
        Temperature saturation,
        UncertaintyBudget budget,
        List<Step> steps) {
    /** {@inheritDoc} */
    public LineMargin {
        Parts.required("criterion value saturation budget", criterion, value, saturation, budget);
        steps = Parts.list("steps", steps);
    }

    /**
     * Combined standard uncertainty.
     *
     * @return u, K
     */
    public double standardUncertaintyK() {
        return budget.combined();
    }

    /**
     * The value with its expanded uncertainty, correctly rounded.
     *
     * @return value and U (k = 2), K
     */
    public ReportedValue reported() {
        return ReportedValue.of(value.kelvins(), budget.combined(), "K");
    }
}
