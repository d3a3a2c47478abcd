package org.satline.cylinder;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.satline.saturation.SaturationCurve;

/** What is, or will be, in the cylinder: known, one of a few candidates, or not known at all. Immutable, thread-safe. */
public sealed interface CylinderContents {
    /**
     * The refrigerant is known.
     *
     * @param curve its saturation curve
     */
    record Known(SaturationCurve curve) implements CylinderContents {
        /** {@inheritDoc} */
        public Known {
            Objects.requireNonNull(curve, "curve");
        }

        /**
         * Equality of refrigerant and engine; curves themselves are made anew each time.
         *
         * @param other the object to compare with
         * @return whether both are the same contents
         */
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Known known && named(known.curve).equals(named(curve));
        }

        /**
         * Hash code that goes with equality.
         *
         * @return hash code
         */
        @Override
        public int hashCode() {
            return named(curve).hashCode();
        }
    }

    /**
     * It is one of these, unmixed; every limit is then taken from the strictest of them.
     *
     * @param candidates the saturation curves of the refrigerants it may be, at least one
     */
    record OneOf(List<SaturationCurve> candidates) implements CylinderContents {
        /** {@inheritDoc} */
        public OneOf {
            candidates = List.copyOf(candidates);
            if (candidates.isEmpty()) {
                throw new IllegalArgumentException(
                        "no candidate refrigerant is named; name at least one, or say that it is unknown");
            }
        }

        /**
         * Equality of refrigerants and engines, in order; curves themselves are made anew each time.
         *
         * @param other the object to compare with
         * @return whether both are the same contents
         */
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof OneOf oneOf && oneOf.names().equals(names());
        }

        /**
         * Hash code that goes with equality.
         *
         * @return hash code
         */
        @Override
        public int hashCode() {
            return names().hashCode();
        }

        private List<List<Object>> names() {
            return candidates.stream().map(CylinderContents::named).toList();
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

    private static List<Object> named(SaturationCurve curve) {
        return List.of(curve.refrigerant(), curve.engine());
    }
}
