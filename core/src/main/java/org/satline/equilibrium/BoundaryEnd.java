package org.satline.equilibrium;

import org.satline.quantity.Parts;

/**
 * Where a bubble or dew line ends.
 *
 * @param kind what ends it
 * @param temperatureK temperature there, K
 * @param pressurePa pressure there, Pa
 */
public record BoundaryEnd(Kind kind, double temperatureK, double pressurePa) {
    /** {@inheritDoc} */
    public BoundaryEnd {
        Parts.required("kind", kind);
        Parts.numbers("temperatureK pressurePa", temperatureK, pressurePa);
    }

    /** What ends a line. */
    public enum Kind {
        /** Both phases become one. */
        CRITICAL_POINT("critical point"),
        /** The largest temperature of the phase boundary comes before its critical point. */
        LARGEST_TEMPERATURE("largest temperature of the two-phase region"),
        /** The largest pressure of the phase boundary comes before its critical point. */
        LARGEST_PRESSURE("largest pressure of the two-phase region"),
        /** The line could not be followed farther; its true end lies beyond. */
        LAST_POINT_FOUND("last point that the equation allows");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * Returns words to print.
         *
         * @return the kind in lower case
         */
        public String words() {
            return words;
        }
    }
}
