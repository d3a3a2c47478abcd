package org.satline.program.exercise;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import org.satline.program.page.Printed;

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
     * @param rounding half up, or down for a limit that must not be exceeded: then nothing above the printed number is right
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
            return rounded(value, decimals, rounding);
        }

        /** Digits beyond the twelfth are dust of binary arithmetic: 0.95 x 21.6 is 20.52, not a hair less. */
        static BigDecimal rounded(double value, int decimals, RoundingMode rounding) {
            return new BigDecimal(value, new MathContext(12)).setScale(decimals, rounding);
        }

        /** The smallest answer that is right as well. */
        double lowest() {
            return printed().doubleValue() - allowance;
        }

        /** The largest answer that is right as well; of a limit none above the printed one, which is rounded down. */
        double highest() {
            return printed().doubleValue() + (rounding == RoundingMode.FLOOR ? 0 : allowance);
        }

        @Override
        public String text() {
            return printed().toPlainString() + (unit.isEmpty() ? "" : " " + unit);
        }

        /** Whether this, as printed, is no right answer where the other is right. */
        boolean tellsFrom(Figure right) {
            double shown = printed().doubleValue();
            return !(shown >= right.lowest() && shown <= right.highest());
        }

        /** Which answers are right as well. */
        String alsoRight() {
            String form = "%." + decimals + "f to %." + decimals + "f";
            return Printed.figure(form, lowest(), highest());
        }
    }

    /**
     * A choice or an explanation.
     *
     * @param text the words
     * @param others what else could be answered to the question, all of it wrong here; empty where the words are the student's own
     */
    record Words(String text, List<String> others) implements Answer {
        public Words {
            Objects.requireNonNull(text, "text");
            others = others.stream().filter(other -> !other.equals(text)).toList();
        }

        /** An explanation in the student's own words. */
        static Words own(String text) {
            return new Words(text, List.of());
        }

        /** One of the answers that the question allows. */
        static Words oneOf(String text, List<String> all) {
            return new Words(text, all);
        }
    }
}
