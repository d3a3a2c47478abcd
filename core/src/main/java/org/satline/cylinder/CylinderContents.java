package org.satline.cylinder;

import java.util.List;
import java.util.Objects;
import org.satline.saturation.SaturationCurve;

/** What is, or will be, in the cylinder: known, one of a few candidates, or not known at all. Immutable, thread-safe. */
public sealed interface CylinderContents {
    /**
     * The refrigerant is known.
     *
     * @param curve its saturation curve
     */
    record Known(SaturationCurve curve) implements CylinderContents {
        /**
         * Checks that the curve is given.
         *
         * @param curve its saturation curve
         */
        public Known {
            Objects.requireNonNull(curve, "curve");
        }
    }

    /**
     * It is one of these, unmixed; every limit is then taken from the strictest of them.
     *
     * @param candidates the saturation curves of the refrigerants it may be, at least one
     */
    record OneOf(List<SaturationCurve> candidates) implements CylinderContents {
        /**
         * Checks that there is a candidate.
         *
         * @param candidates the saturation curves of the refrigerants it may be
         */
        public OneOf {
            candidates = List.copyOf(candidates);
            if (candidates.isEmpty()) {
                throw new IllegalArgumentException(
                        "no candidate refrigerant is named; name at least one, or say that it is unknown");
            }
        }
    }

    /** Nothing is known: no limit can be given. */
    record Unknown() implements CylinderContents {}

    /**
     * Returns the refrigerants that have to be reckoned with.
     *
     * @return the curves, empty if unknown
     */
    default List<SaturationCurve> candidateCurves() {
        if (this instanceof Known known) {
            return List.of(known.curve());
        }
        return this instanceof OneOf oneOf ? oneOf.candidates() : List.of();
    }
}
