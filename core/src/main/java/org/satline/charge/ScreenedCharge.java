package org.satline.charge;

import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.charge.margin.ChargeLevel;
import org.satline.measurement.Place;
import org.satline.quantity.Parts;

/**
 * What a screen says about one row: numbers and a level of the readings by themselves, or why there is none. Immutable, thread-safe.
 *
 * <p>It is a sieve and no verdict: no fault was weighed against the charge. {@link ChargeJudge} judges the rows that stand out before
 * anybody touches them.
 */
public sealed interface ScreenedCharge {
    /**
     * Suction superheat.
     *
     * @return superheat, K; empty where it was not read or cannot be computed
     */
    OptionalDouble superheatK();

    /**
     * Liquid subcooling.
     *
     * @return subcooling, K; empty where it was not read or cannot be computed
     */
    OptionalDouble subcoolingK();

    /**
     * A row that was held against its target.
     *
     * @param superheatK superheat, K
     * @param subcoolingK subcooling, K
     * @param targetK target of the quantity that the metering device is judged by, K
     * @param deviationK measured less target, K
     * @param standardUncertaintyK standard uncertainty of the deviation, K
     * @param low probability that the charge is low
     * @param onTarget probability that it is on target
     * @param high probability that it is high
     * @param level the level by the accepted risks; empty where the readings leave it open
     */
    record Level(
            OptionalDouble superheatK,
            OptionalDouble subcoolingK,
            double targetK,
            double deviationK,
            double standardUncertaintyK,
            double low,
            double onTarget,
            double high,
            Optional<ChargeLevel> level)
            implements ScreenedCharge {
        /** {@inheritDoc} */
        public Level {
            Parts.required("superheatK subcoolingK level", superheatK, subcoolingK, level);
            Parts.numbers("targetK deviationK standardUncertaintyK", targetK, deviationK, standardUncertaintyK);
            Parts.numbers("low onTarget high", low, onTarget, high);
        }

        /**
         * The probability of a level.
         *
         * @param of which level
         * @return probability in [0, 1]
         */
        public double probability(ChargeLevel of) {
            return switch (of) {
                case LOW -> low;
                case ON_TARGET -> onTarget;
                case HIGH -> high;
            };
        }
    }

    /**
     * A row without a level.
     *
     * @param superheatK superheat, K
     * @param subcoolingK subcooling, K
     * @param reason why
     * @param at the reading that is at fault, where it is one
     */
    record NoLevel(OptionalDouble superheatK, OptionalDouble subcoolingK, ScreenReason reason, Optional<Place> at)
            implements ScreenedCharge {
        /** {@inheritDoc} */
        public NoLevel {
            Parts.required("superheatK subcoolingK reason at", superheatK, subcoolingK, reason, at);
        }
    }
}
