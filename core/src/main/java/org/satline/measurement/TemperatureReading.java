package org.satline.measurement;

import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;

/**
 * A temperature as read, with its uncertainty. Immutable, thread-safe.
 *
 * @param value the reading
 * @param budget its uncertainty, K
 */
public record TemperatureReading(Temperature value, UncertaintyBudget budget) {
    /** {@inheritDoc} */
    public TemperatureReading {
        Parts.required("value budget", value, budget);
    }

    /**
     * A reading taken as free of error.
     *
     * @param value the reading
     * @return the reading with an empty budget
     */
    public static TemperatureReading exact(Temperature value) {
        return new TemperatureReading(value, UncertaintyBudget.none());
    }

    /**
     * A reading with one stated standard uncertainty.
     *
     * @param value the reading
     * @param standardUncertaintyK u, K; finite, not negative
     * @param origin what the error belongs to; readings that share an origin share the error
     * @return the reading
     */
    public static TemperatureReading of(Temperature value, double standardUncertaintyK, String origin) {
        return new TemperatureReading(value, UncertaintyBudget.of(origin, standardUncertaintyK));
    }

    /**
     * The same reading with one more source of error.
     *
     * @param origin what the error belongs to
     * @param standardUncertaintyK u, K; finite, not negative
     * @return the reading
     */
    public TemperatureReading withError(String origin, double standardUncertaintyK) {
        return new TemperatureReading(value, budget.plus(UncertaintyBudget.of(origin, standardUncertaintyK)));
    }

    /**
     * Combined standard uncertainty.
     *
     * @return u, K
     */
    public double standardUncertaintyK() {
        return budget.combined();
    }
}
