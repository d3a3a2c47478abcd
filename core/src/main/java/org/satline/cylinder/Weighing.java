package org.satline.cylinder;

import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;

/**
 * How a cylinder is weighed, with what the scale shows: the only place where contents are computed from a scale. Immutable,
 * thread-safe.
 */
public sealed interface Weighing {
    /** New and evacuated cylinders weigh their stamped tare within this share; common practice, no source. */
    double TARE_SCATTER = 0.01;

    /**
     * What hung on the cylinder when its gross weight was read, such as hoses.
     *
     * @return its mass
     */
    Mass hanging();

    /**
     * Mass inside now: gross less tare less what hangs on it.
     *
     * @param tare the tare of the cylinder
     * @return the contents; below zero where the gross weight is below the tare
     */
    Reading<MassDifference> contents(Mass tare);

    /**
     * Mass inside before anything of this visit went in or out, as far as the scale tells.
     *
     * @param tare the tare of the cylinder
     * @return the contents; those now with a scale that shows the gross weight
     */
    Reading<MassDifference> contentsBefore(Mass tare);

    /**
     * What this scale will show after a step: a gross weight, or a difference where it was zeroed.
     *
     * @param into what goes in by then; negative for a cylinder that gives
     * @return the reading
     */
    MassDifference showsAfter(MassDifference into);

    /**
     * How far from its tare a cylinder counts as empty: 1 % of the tare, the usual scatter of stamped tares (common practice, no
     * source), and twice the expanded uncertainty of the weighing.
     *
     * @param tare the tare of the cylinder
     * @return kg
     */
    default double toleranceKg(Mass tare) {
        return TARE_SCATTER * tare.kilograms() + 2 * contents(tare).expandedUncertainty();
    }

    /**
     * Whether the cylinder weighs, or weighed, less than its tare by more than that.
     *
     * @param tare the tare of the cylinder
     * @return true where the weight or the tare is wrong
     */
    default boolean isBelowTare(Mass tare) {
        double least = Math.min(
                contentsBefore(tare).value().kilograms(), contents(tare).value().kilograms());
        return least < -toleranceKg(tare);
    }

    /**
     * The scale shows the gross weight.
     *
     * @param shown the gross weight now
     * @param hanging what hangs on the cylinder
     */
    record Gross(Reading<Mass> shown, Mass hanging) implements Weighing {
        /** {@inheritDoc} */
        public Gross {
            Parts.required("shown hanging", shown, hanging);
        }

        /**
         * Nothing hangs on the cylinder.
         *
         * @param shown the gross weight now
         */
        public Gross(Reading<Mass> shown) {
            this(shown, Mass.ZERO);
        }

        @Override
        public Reading<MassDifference> contents(Mass tare) {
            return less(shown, tare.plus(hanging));
        }

        @Override
        public Reading<MassDifference> contentsBefore(Mass tare) {
            return contents(tare);
        }

        @Override
        public MassDifference showsAfter(MassDifference into) {
            return shown.value().differenceFrom(Mass.ZERO).plus(into);
        }
    }

    /**
     * The scale was zeroed after hook-up and shows what has come in since.
     *
     * @param grossBefore the gross weight read before it was zeroed
     * @param shown what the scale shows since; negative for a cylinder that gives
     * @param hanging what hung on the cylinder when {@code grossBefore} was read
     */
    record SinceZero(Reading<Mass> grossBefore, Reading<MassDifference> shown, Mass hanging) implements Weighing {
        /** {@inheritDoc} */
        public SinceZero {
            Parts.required("grossBefore shown hanging", grossBefore, shown, hanging);
        }

        /**
         * Nothing hung on the cylinder when it was weighed.
         *
         * @param grossBefore the gross weight read before the scale was zeroed
         * @param shown what the scale shows since
         */
        public SinceZero(Reading<Mass> grossBefore, Reading<MassDifference> shown) {
            this(grossBefore, shown, Mass.ZERO);
        }

        @Override
        public Reading<MassDifference> contents(Mass tare) {
            // two weighings, independent (JCGM 100, 5.1.2)
            return Reading.of(
                    contentsBefore(tare).value().plus(shown.value()),
                    Math.hypot(grossBefore.standardUncertainty(), shown.standardUncertainty()),
                    "scale");
        }

        @Override
        public Reading<MassDifference> contentsBefore(Mass tare) {
            return less(grossBefore, tare.plus(hanging));
        }

        @Override
        public MassDifference showsAfter(MassDifference into) {
            return shown.value().plus(into);
        }
    }

    private static Reading<MassDifference> less(Reading<Mass> gross, Mass dead) {
        return Reading.of(gross.value().differenceFrom(dead), gross.standardUncertainty(), "scale");
    }
}
