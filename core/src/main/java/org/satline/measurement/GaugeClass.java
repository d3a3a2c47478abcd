package org.satline.measurement;

import org.satline.quantity.Parts;

/**
 * Accuracy class of a dial gauge. Immutable, thread-safe. {@link #named(String)} finds the published ones.
 *
 * @param name name of the class
 * @param middlePercent permitted error in the middle half of the scale, per cent of span
 * @param outerPercent permitted error in the two outer quarters, per cent of span
 * @param source where the figures come from
 */
public record GaugeClass(String name, double middlePercent, double outerPercent, String source) {
    /** {@inheritDoc} */
    public GaugeClass {
        Parts.required("name source", name, source);
        if (!(middlePercent > 0 && middlePercent <= outerPercent && outerPercent <= 100)) {
            throw new IllegalArgumentException("gauge class " + name + " permits " + middlePercent + " % and "
                    + outerPercent + " % of span, expected 0 < middle <= outer <= 100");
        }
    }

    /**
     * A published class by name.
     *
     * @param name for example {@code en-837-1.6} or {@code asme-b}
     * @return the class
     * @throws IllegalArgumentException if no class has that name; the message lists the names
     */
    public static GaugeClass named(String name) {
        return PublishedClasses.gauge(name);
    }
}
