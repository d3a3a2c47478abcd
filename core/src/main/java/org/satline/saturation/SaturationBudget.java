package org.satline.saturation;

import java.util.List;
import java.util.Objects;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;

/**
 * A saturation pressure or temperature with its uncertainty, split by origin. Immutable and thread-safe.
 *
 * @param property which quantity: one of the bubble and dew pressures and temperatures
 * @param value its value, Pa or K as {@link SaturationProperty#unit()} says
 * @param standardUncertainty combined standard uncertainty, in the same unit
 * @param contributions what it consists of; the composition tolerances count with a common factor, see {@link SaturationUncertainty}
 * @param steps how it was found
 */
public record SaturationBudget(
        SaturationProperty property,
        double value,
        double standardUncertainty,
        List<UncertaintyContribution> contributions,
        List<Step> steps) {
    /** Coverage factor of expanded uncertainties: about 95 % of a normal distribution (JCGM 100:2008, 6.3.3). */
    public static final double COVERAGE_FACTOR = 2;

    /** {@inheritDoc} */
    public SaturationBudget {
        Parts.numbers("value standardUncertainty", value, standardUncertainty);
        Objects.requireNonNull(property, "property");
        contributions = Parts.list("contributions", contributions);
        steps = Parts.list("steps", steps);
    }

    /**
     * Returns the expanded uncertainty.
     *
     * @return {@link #COVERAGE_FACTOR} standard uncertainties, Pa or K
     */
    public double expandedUncertainty() {
        return COVERAGE_FACTOR * standardUncertainty;
    }

    /**
     * Returns the combined standard uncertainty of one kind of cause.
     *
     * @param origin the kind
     * @return standard uncertainty, Pa or K; 0 where nothing of that kind contributes
     */
    public double standardUncertainty(UncertaintyContribution.Origin origin) {
        double squares = 0;
        for (UncertaintyContribution c : contributions) {
            squares += c.origin() == origin ? c.standardUncertainty() * c.standardUncertainty() : 0;
        }
        return Math.sqrt(squares);
    }
}
