package org.satline.measurement;

import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;

/**
 * An absolute pressure as read, with its uncertainty. Immutable, thread-safe.
 *
 * @param value the reading
 * @param budget its uncertainty, Pa
 */
public record PressureReading(Pressure value, UncertaintyBudget budget) {
    /** {@inheritDoc} */
    public PressureReading {
        Parts.required("value budget", value, budget);
    }

    /**
     * A reading taken as free of error.
     *
     * @param value the reading
     * @return the reading with an empty budget
     */
    public static PressureReading exact(Pressure value) {
        return new PressureReading(value, UncertaintyBudget.none());
    }

    /**
     * A reading with one stated standard uncertainty.
     *
     * @param value the reading
     * @param standardUncertaintyPa u, Pa; finite, not negative
     * @param origin what the error belongs to; readings that share an origin share the error
     * @return the reading
     */
    public static PressureReading of(Pressure value, double standardUncertaintyPa, String origin) {
        return new PressureReading(value, UncertaintyBudget.of(origin, standardUncertaintyPa));
    }

    /**
     * The same reading with one more source of error.
     *
     * @param origin what the error belongs to
     * @param standardUncertaintyPa u, Pa; finite, not negative
     * @return the reading
     */
    public PressureReading withError(String origin, double standardUncertaintyPa) {
        return new PressureReading(value, budget.plus(UncertaintyBudget.of(origin, standardUncertaintyPa)));
    }

    /**
     * Combined standard uncertainty.
     *
     * @return u, Pa
     */
    public double standardUncertaintyPa() {
        return budget.combined();
    }
}
