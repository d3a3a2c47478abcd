package org.satline.cylinder;

import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;

/** How a transfer is weighed. Immutable, thread-safe. */
public sealed interface Scale {
    /**
     * The gross weight as it was last weighed: now, or before the scale was zeroed.
     *
     * @return one weighing
     */
    Reading<Mass> weighed();

    /**
     * The gross weight now.
     *
     * @return kg; below zero only where the readings contradict each other
     */
    double grossNowKg();

    /**
     * Expanded uncertainty of the gross weight now, k = 2. With a zeroed scale it is that of two weighings, taken as independent
     * (JCGM 100, 5.1.2).
     *
     * @return U, kg
     */
    double expandedUncertaintyKg();

    /**
     * The scale shows the running gross weight.
     *
     * @param gross the gross weight now
     */
    record RunningGross(Reading<Mass> gross) implements Scale {
        /** {@inheritDoc} */
        public RunningGross {
            Parts.required("gross", gross);
        }

        @Override
        public Reading<Mass> weighed() {
            return gross;
        }

        @Override
        public double grossNowKg() {
            return gross.value().kilograms();
        }

        @Override
        public double expandedUncertaintyKg() {
            return gross.expandedUncertainty();
        }
    }

    /**
     * The scale was zeroed after hook-up and shows what has come in since.
     *
     * @param grossBefore the gross weight found before the hoses were connected
     * @param transferred what the scale shows since it was zeroed; negative for a cylinder that gives
     */
    record ZeroedAfterHookUp(Reading<Mass> grossBefore, Reading<MassDifference> transferred) implements Scale {
        /** {@inheritDoc} */
        public ZeroedAfterHookUp {
            Parts.required("grossBefore transferred", grossBefore, transferred);
        }

        @Override
        public Reading<Mass> weighed() {
            return grossBefore;
        }

        @Override
        public double grossNowKg() {
            return grossBefore.value().kilograms() + transferred.value().kilograms();
        }

        @Override
        public double expandedUncertaintyKg() {
            return Math.hypot(grossBefore.expandedUncertainty(), transferred.expandedUncertainty());
        }
    }
}
