package org.satline.equation;

import java.util.Optional;
import org.satline.quantity.Parts;

/**
 * Interaction of two substances in the mixture model: parameters of the reducing functions, the departure function and where they come
 * from.
 *
 * @param first designation of the substance i
 * @param second designation of the substance j
 * @param betaT beta of the reducing temperature, dimensionless
 * @param gammaT gamma of the reducing temperature, dimensionless
 * @param betaV beta of the reducing volume, dimensionless
 * @param gammaV gamma of the reducing volume, dimensionless
 * @param departureFactor F, dimensionless; 0 where there is no departure function
 * @param departureName name of the departure function, empty where there is none
 * @param status how the figures were obtained
 * @param source citation, or the rule that stands in
 * @param evidence for adjusted pairs what they were fitted to and checked on; else a remark; may be empty
 */
public record PairInteraction(
        String first,
        String second,
        double betaT,
        double gammaT,
        double betaV,
        double gammaV,
        double departureFactor,
        Optional<String> departureName,
        PairStatus status,
        String source,
        String evidence) {
    static final String DEFAULT_RULE = "Lorentz-Berthelot combining rule: all beta and gamma 1, no departure function";

    /** {@inheritDoc} */
    public PairInteraction {
        Parts.required("first second departureName status source", first, second, departureName, status, source);
        Parts.required("evidence", evidence);
        Parts.numbers("betaT gammaT betaV gammaV departureFactor", betaT, gammaT, betaV, gammaV, departureFactor);
    }

    static PairInteraction defaulted(String first, String second) {
        return new PairInteraction(
                first, second, 1, 1, 1, 1, 0, Optional.empty(), PairStatus.DEFAULTED, DEFAULT_RULE, "none");
    }

    /** The same pair named the other way round: beta turns into its reciprocal, gamma stays. */
    PairInteraction swapped() {
        return new PairInteraction(
                second,
                first,
                1 / betaT,
                gammaT,
                1 / betaV,
                gammaV,
                departureFactor,
                departureName,
                status,
                source,
                evidence);
    }

    static String key(String first, String second) {
        return first.compareTo(second) < 0 ? first + '+' + second : second + '+' + first;
    }
}
