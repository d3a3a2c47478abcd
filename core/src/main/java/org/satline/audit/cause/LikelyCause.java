package org.satline.audit.cause;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Coded;
import org.satline.quantity.Parts;

/**
 * A mistake under which the rows come out right. It was tested by computing each row again as a calculator with that mistake would; a
 * coincidence cannot be ruled out. Immutable.
 *
 * @param refrigerant designation of the refrigerant of the rows
 * @param mistake the mistake, with what fits best
 * @param besides the other mistake where two were made in the same rows
 * @param explained rows that were outside and agree under it; where none is outside, rows that differ by more than their digits
 * @param candidates such rows to which it could apply: of this refrigerant, with a fitting quantity and unit
 * @param ids ids of the rows explained, in alphabetical order, the first {@link #MOST_IDS} of them
 * @param withinTolerance whether none of the rows to which it could apply is outside: the answers agree, yet all differ in its way
 * @param speaking rows that speak for it of those searched: those explained, and those within tolerance where it fits them all
 * @param coincidence about how likely it is that any of the mistakes tried fits so well by chance (Bonferroni): the number of mistakes
 *     tried that lead about as far as the answers lie, once more for each cause found before, times the larger of two chances: that a wrong
 *     curve has the level, slope and bends of the answers, each as well as it is known from so many rows; and the binomial chance that so
 *     many of the rows to which it could apply fit; at most 1
 * @param alternatives other explanations that fit the same rows of the sample that is searched, such as refrigerants that cannot be told
 *     apart
 */
public record LikelyCause(
        String refrigerant,
        Mistake mistake,
        Optional<Mistake> besides,
        int explained,
        int candidates,
        List<String> ids,
        boolean withinTolerance,
        int speaking,
        double coincidence,
        List<Mistake> alternatives) {
    /** How many ids are kept. */
    public static final int MOST_IDS = 1000;

    /** Kinds of mistakes, those that happen most first; of two that explain the same rows the first is named. */
    public enum Kind implements Coded {
        /** A gauge pressure taken for an absolute one, or the other way round. */
        GAUGE_OR_ABSOLUTE,
        /** Gauge pressures of a place above the sea counted from the atmosphere at sea level. */
        ALTITUDE_IGNORED,
        /** The value of the dew line given for the bubble line or the other way round. */
        BUBBLE_AND_DEW,
        /** A Celsius number used as Fahrenheit, or the like. */
        CELSIUS_OR_FAHRENHEIT,
        /** The number belongs to another unit of the same kind. */
        UNIT,
        /** 0 degC taken for 273 K. */
        CELSIUS_ZERO,
        /** One line in the middle between bubble and dew. */
        MEAN_LINE,
        /** Enthalpy or entropy counted from another zero. */
        REFERENCE_STATE,
        /** A number that is written otherwise than it is meant. */
        NUMBER_FORM,
        /** Numbers of another place of the table. */
        PLACE_IN_TABLE,
        /** Straight lines between the rows of a coarse table. */
        COARSE_TABLE,
        /** A formula that does not hold over the whole range. */
        FORMULA,
        /** The figures of another refrigerant. */
        OTHER_REFRIGERANT
    }

    /** {@inheritDoc} */
    public LikelyCause {
        Parts.required("refrigerant mistake besides", refrigerant, mistake, besides);
        Parts.numbers("coincidence", coincidence);
        ids = Parts.list("ids", ids);
        alternatives = Parts.list("alternatives", alternatives);
    }

    /**
     * What kind of mistake it is.
     *
     * @return that of the mistake
     */
    public Kind kind() {
        return mistake.kind();
    }
}
