package org.satline.audit.cause;

import java.util.List;
import org.satline.explanation.Coded;
import org.satline.explanation.Figure;
import org.satline.quantity.Parts;

/**
 * A mistake that a calculator can make. Immutable, thread-safe.
 *
 * @param kind what kind of mistake
 * @param code which one
 * @param figures what fits best, such as a unit or an amount; mostly none
 */
public record Mistake(LikelyCause.Kind kind, Code code, List<Figure> figures) {
    /** The mistakes that are tried. */
    public enum Code implements Coded {
        /** The answer is a gauge pressure with an absolute unit. */
        GAUGE_CALLED_ABSOLUTE,
        /** The same, counted from the atmosphere at sea level. */
        SEA_LEVEL_GAUGE_CALLED_ABSOLUTE,
        /** The answer is an absolute pressure with a gauge unit. */
        ABSOLUTE_CALLED_GAUGE,
        /** The pressure of the question was taken for a gauge pressure. */
        ASKED_AS_GAUGE,
        /** An atmosphere was taken off the pressure of the question. */
        ASKED_LESS_ATMOSPHERE,
        /** The gauge pressure of the answer counts from sea level. */
        SEA_LEVEL_ANSWER,
        /** The pressure of the question was made from a gauge reading at sea level. */
        SEA_LEVEL_QUESTION,
        /** Dew for bubble, vapour for liquid, or the reverse. */
        OTHER_LINE,
        /** The glide has the wrong sign. */
        GLIDE_SIGN,
        /** The answer is the mean of bubble and dew. */
        MIDDLE_LINE,
        /** The Celsius number of the question was used as Fahrenheit. */
        CELSIUS_AS_FAHRENHEIT,
        /** The Fahrenheit number of the question was used as Celsius. */
        FAHRENHEIT_AS_CELSIUS,
        /** The difference was converted as if it were a temperature. */
        DIFFERENCE_AS_TEMPERATURE,
        /** The number is in the unit that the figure {@code unit} names. */
        OTHER_UNIT,
        /** The temperature of the question was used too low. */
        USED_TOO_LOW,
        /** The temperature of the question was used too high. */
        USED_TOO_HIGH,
        /** The temperature of the answer is too low. */
        GIVEN_TOO_LOW,
        /** The temperature of the answer is too high. */
        GIVEN_TOO_HIGH,
        /** The answer counts from the state that the figure {@code state} names. */
        OTHER_ZERO,
        /** The answer counts from another zero, off by the figure {@code amount}. */
        UNKNOWN_ZERO,
        /** The answers are those of the figure {@code designation}. */
        OTHER_REFRIGERANT,
        /** The gauge counts from the figure {@code pressure} in place of the local atmosphere. */
        ROUND_ATMOSPHERE,
        /** The question was made with the figure {@code pressure} in place of the local atmosphere. */
        ROUND_ATMOSPHERE_ASKED,
        /** The 32 of the Fahrenheit scale is missing in the answer. */
        ANSWER_LACKS_32,
        /** The 32 of the Fahrenheit scale is missing in the temperature of the question. */
        QUESTION_LACKS_32,
        /** The answer is one over the number, in the unit that the figure {@code unit} names. */
        RECIPROCAL,
        /** The point, or a comma taken for one, stands elsewhere: off by the figure {@code factor}. */
        DECIMAL_PLACE,
        /** The column of the figure {@code quantity} stands here, in the figure {@code unit}. */
        OTHER_COLUMN,
        /** Each answer is that of the row before. */
        ROW_BEFORE,
        /** Each answer is that of the row after. */
        ROW_AFTER,
        /** The figure {@code number} stands in every row. */
        STUCK,
        /** A straight line between the rows of a table, the figure {@code spacing} apart. */
        STRAIGHT_LINE,
        /** The digits were cut off where they should have been rounded. */
        DIGITS_CUT,
        /** A fitted formula that runs away at the ends of the range. */
        RUNS_AWAY
    }

    /** {@inheritDoc} */
    public Mistake {
        Parts.required("kind code", kind, code);
        figures = Parts.list("figures", figures);
    }
}
