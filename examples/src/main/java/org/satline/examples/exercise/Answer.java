package org.satline.examples.exercise;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Objects;

/** What the key says to one part of an exercise. */
sealed interface Answer {
    /** As the key prints it. */
    String text();

    /**
     * A number.
     *
     * @param value as computed, in the unit
     * @param decimals digits after the point that are printed
     * @param unit its unit, empty for a bare number
     * @param allowance how far an answer may be off that was read from the table by hand and rounded in between; 0 where it is a limit
     * @param rounding half up, or down for a limit that must not be exceeded
     */
    record Figure(double value, int decimals, String unit, double allowance, RoundingMode rounding) implements Answer {
        public Figure {
            Objects.requireNonNull(unit, "unit");
            Objects.requireNonNull(rounding, "rounding");
            if (!(Double.isFinite(value) && allowance >= 0)) {
                throw new IllegalArgumentException("answer " + value + " +/- " + allowance + " is no number");
            }
        }

        static Figure of(double value, int decimals, String unit, double allowance) {
            return new Figure(value, decimals, unit, allowance, RoundingMode.HALF_UP);
        }

        /** The printed number. */
        BigDecimal printed() {
            return BigDecimal.valueOf(value).setScale(decimals, rounding);
        }

        @Override
        public String text() {
            return printed().toPlainString() + (unit.isEmpty() ? "" : " " + unit);
        }

        /** Which answers are right as well. */
        String alsoRight() {
            double middle = printed().doubleValue();
            String form = "%." + decimals + "f to %." + decimals + "f";
            return String.format(Locale.ROOT, form, middle - allowance, middle + allowance);
        }
    }

    /**
     * A choice or an explanation.
     *
     * @param text the words
     */
    record Words(String text) implements Answer {
        public Words {
            Objects.requireNonNull(text, "text");
        }
    }
}
