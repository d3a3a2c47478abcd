package org.satline.measurement;

import java.util.Optional;
import org.satline.quantity.Parts;
import org.satline.quantity.Quantity;

/**
 * A value as measured, with its uncertainty and what the instrument showed. Immutable, thread-safe.
 *
 * <p>Uncertainties are in the SI unit of the value, {@link Quantity#siUnit()}: Pa, K, kg.
 *
 * @param <Q> what was measured; pressures are absolute once the atmosphere is known
 * @param value the value
 * @param budget where its uncertainty comes from, in the SI unit of the value
 * @param shown what the instrument showed, where one was read
 */
public record Reading<Q extends Quantity<Q>>(Q value, UncertaintyBudget budget, Optional<Shown> shown) {
    /** {@inheritDoc} */
    public Reading {
        Parts.required("value budget shown", value, budget, shown);
    }

    /**
     * A reading taken as free of error.
     *
     * @param <Q> what was measured
     * @param value the value
     * @return the reading with an empty budget
     */
    public static <Q extends Quantity<Q>> Reading<Q> exact(Q value) {
        return new Reading<>(value, UncertaintyBudget.none(), Optional.empty());
    }

    /**
     * A reading with one stated standard uncertainty.
     *
     * @param <Q> what was measured
     * @param value the value
     * @param standardUncertaintySi u, in the SI unit of the value; finite, not negative
     * @param origin what the error belongs to; readings that share an origin share the error
     * @return the reading
     * @throws IllegalArgumentException if the uncertainty is negative or not finite
     */
    public static <Q extends Quantity<Q>> Reading<Q> of(Q value, double standardUncertaintySi, String origin) {
        return new Reading<>(value, UncertaintyBudget.of(origin, standardUncertaintySi), Optional.empty());
    }

    /**
     * A reading with one stated expanded uncertainty, k = 2.
     *
     * @param <Q> what was measured
     * @param value the value
     * @param expandedUncertaintySi U, in the SI unit of the value; finite, not negative
     * @param origin what the error belongs to; readings that share an origin share the error
     * @return the reading
     * @throws IllegalArgumentException if the uncertainty is negative or not finite
     */
    public static <Q extends Quantity<Q>> Reading<Q> ofExpanded(Q value, double expandedUncertaintySi, String origin) {
        return new Reading<>(value, UncertaintyBudget.ofExpanded(origin, expandedUncertaintySi), Optional.empty());
    }

    /**
     * The same reading with one more source of error.
     *
     * @param origin what the error belongs to
     * @param standardUncertaintySi u, in the SI unit of the value; finite, not negative
     * @return the reading
     * @throws IllegalArgumentException if the uncertainty is negative or not finite
     */
    public Reading<Q> withError(String origin, double standardUncertaintySi) {
        return new Reading<>(value, budget.plus(UncertaintyBudget.of(origin, standardUncertaintySi)), shown);
    }

    /**
     * The same reading with what was seen on the instrument.
     *
     * @param instrument name of the instrument
     * @param asShown what it showed, such as a gauge pressure
     * @return the reading
     */
    public Reading<Q> shownBy(String instrument, Quantity<?> asShown) {
        return new Reading<>(value, budget, Optional.of(new Shown(instrument, asShown)));
    }

    /**
     * Combined standard uncertainty.
     *
     * @return u, in the SI unit of the value
     */
    public double standardUncertainty() {
        return budget.combined();
    }

    /**
     * Expanded uncertainty, k = 2.
     *
     * @return U, in the SI unit of the value
     */
    public double expandedUncertainty() {
        return budget.expanded();
    }
}
