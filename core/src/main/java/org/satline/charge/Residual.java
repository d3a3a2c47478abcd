package org.satline.charge;

import java.util.Locale;
import java.util.Objects;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Measured less fault-free value of one symptom. Immutable, thread-safe.
 *
 * @param symptom which quantity
 * @param kelvins measured less expected, K; finite
 * @param standardUncertaintyK uncertainty of reading and expectation together, K; not negative
 */
public record Residual(Symptom symptom, double kelvins, double standardUncertaintyK) {
    private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

    /** {@inheritDoc} */
    public Residual {
        Objects.requireNonNull(symptom, "symptom");
        if (!(Double.isFinite(kelvins) && standardUncertaintyK >= 0 && standardUncertaintyK < 1e6)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "residual %s K with u = %s K of %s is not usable",
                    kelvins,
                    standardUncertaintyK,
                    symptom));
        }
    }

    /**
     * Likelihood of the residual under the printed signs: a rise is half-normal with the typical size of the symptom, hardly any movement
     * is normal with the size that counts as none, both widened by the measurement. The first of two signs weighs double.
     */
    double likelihood(String signs) {
        double first = one(signs.charAt(0));
        return signs.length() == 1 ? first : (2 * first + one(signs.charAt(1))) / 3;
    }

    private double one(char sign) {
        double u = standardUncertaintyK;
        if (sign == '0') {
            return density(Math.hypot(symptom.noneK(), u));
        }
        if (sign == '?') {
            return density(Math.hypot(symptom.typicalK(), u));
        }
        return oneSided(sign == '+' ? kelvins : -kelvins, symptom.typicalK(), u);
    }

    /**
     * Probability that the departure itself has a printed sign; one half where the sign does not say. The first of two signs weighs double.
     */
    double agreement(String signs) {
        double first = agreement(signs.charAt(0));
        return signs.length() == 1 ? first : (2 * first + agreement(signs.charAt(1))) / 3;
    }

    private double agreement(char sign) {
        if (sign != '+' && sign != '-') {
            return 0.5;
        }
        double towards = sign == '+' ? kelvins : -kelvins;
        double u = standardUncertaintyK;
        return u > 0
                ? STANDARD.cumulativeProbability(towards * symptom.typicalK() / (u * Math.hypot(symptom.typicalK(), u)))
                : towards >= 0 ? 1 : 0;
    }

    /** Density of a departure that lies on one side, half-normal with a typical size, read with an uncertainty. */
    static double oneSided(double towards, double typical, double u) {
        double spread = Math.hypot(typical, u);
        double side = u > 0 ? STANDARD.cumulativeProbability(towards * typical / (u * spread)) : towards >= 0 ? 1 : 0;
        return 2 * normal(towards, spread) * side;
    }

    static double normal(double value, double spread) {
        return STANDARD.density(value / spread) / spread;
    }

    private double density(double spread) {
        return normal(kelvins, spread);
    }
}
