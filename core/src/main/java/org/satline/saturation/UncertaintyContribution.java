package org.satline.saturation;

import org.satline.quantity.Parts;

/**
 * One share of the uncertainty of a saturation pressure or temperature.
 *
 * @param origin what kind of cause it has
 * @param name what exactly contributes, such as {@code R-32 + R-125, fitted}
 * @param standardUncertainty its standard uncertainty, in the SI unit of the quantity (Pa or K), at least 0
 * @param basis the published statement or the evidence that the figure rests on
 */
public record UncertaintyContribution(Origin origin, String name, double standardUncertainty, String basis) {
    /** Kinds of causes. */
    public enum Origin {
        /** The equation of state of a substance. */
        EQUATION("equation of state"),
        /** The interaction of two substances in the mixture model. */
        PAIR("mixture model"),
        /** The published bubble or dew point of the blend, where the computed one is farther than 0.5 K from it. */
        PUBLISHED_POINT("published point"),
        /** The composition as formulated, within its published tolerances. */
        COMPOSITION("composition tolerance");

        private final String words;

        Origin(String words) {
            this.words = words;
        }

        /**
         * Returns words to print.
         *
         * @return the origin in lower case
         */
        public String words() {
            return words;
        }
    }

    /** {@inheritDoc} */
    public UncertaintyContribution {
        Parts.required("origin name basis", origin, name, basis);
        if (!(standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "standard uncertainty " + standardUncertainty + " is not finite and at least 0");
        }
    }
}
