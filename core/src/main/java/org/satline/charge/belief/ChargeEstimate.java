package org.satline.charge.belief;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.satline.charge.margin.LineMargin;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;

/**
 * Charge error as a fraction of the full charge, from superheat and subcooling at a steady state. Immutable, thread-safe.
 *
 * <p>After the virtual refrigerant charge sensor of Li and Braun:
 * {@code (m - m_rated) / m_rated = [(SC - SC_rated) - (k_sh/k_sc)(SH - SH_rated)] / k_ch}. Typical constants from memory; a published
 * evaluation reports estimates within 10 % of the charge. For a system short of signal (subcooling or superheat at zero) the fraction is
 * only a bound.
 *
 * @param fraction (m - m_rated) / m_rated; negative is short of refrigerant
 * @param standardUncertainty standard uncertainty of the fraction: readings, typical constants and published error together
 * @param step derivation
 */
public record ChargeEstimate(double fraction, double standardUncertainty, Step step) {
    /** k_sh / k_sc, typical, from memory. */
    private static final double TYPICAL_RATIO = 1 / 2.5;
    /** Published evaluation: within 10 % of the charge, taken as limits. */
    static final double PUBLISHED_LIMIT = 0.10;
    /** Relative doubt of typical constants for a unit on which they were not fitted; our choice. */
    static final double CONSTANT_DOUBT = 0.3;

    private static final String SOURCE_FITTED =
            "virtual refrigerant charge sensor after Li and Braun, structure; constants fitted on this unit";
    private static final String SOURCE_TYPICAL =
            "virtual refrigerant charge sensor after Li and Braun, structure and typical constants from memory";

    /** {@inheritDoc} */
    public ChargeEstimate {
        Objects.requireNonNull(step, "step");
        if (!(Double.isFinite(fraction) && standardUncertainty >= 0 && standardUncertainty < 1e6)) {
            throw new IllegalArgumentException(
                    "charge error " + fraction + " with u = " + standardUncertainty + " is not usable");
        }
    }

    /**
     * Constants of a unit.
     *
     * @param ratio k_sh / k_sc
     * @param kelvinsPerFraction k_ch, K for the whole charge; above 0
     * @param fitted whether they were fitted on this unit
     */
    public record Constants(double ratio, double kelvinsPerFraction, boolean fitted) {
        /** {@inheritDoc} */
        public Constants {
            if (!(ratio >= 0 && ratio <= 10 && kelvinsPerFraction > 0 && kelvinsPerFraction < 1e4)) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "constants k_sh/k_sc = %s (allowed [0, 10]) and k_ch = %s K (allowed ]0, 10000[) are not usable",
                        ratio,
                        kelvinsPerFraction));
            }
        }

        /**
         * Returns typical constants: k_sh/k_sc = 1/2.5, k_ch = SC_rated / ((1 - 0.75) 0.73), from memory.
         *
         * @param ratedSubcoolingK rated subcooling, K; above 0
         * @return the constants
         */
        public static Constants typical(double ratedSubcoolingK) {
            if (!(ratedSubcoolingK > 0 && ratedSubcoolingK <= 50)) {
                throw new IllegalArgumentException(
                        "rated subcooling " + ratedSubcoolingK + " K is outside ]0, 50] K; give the maker's figure");
            }
            return new Constants(TYPICAL_RATIO, ratedSubcoolingK / ((1 - 0.75) * 0.73), false);
        }
    }

    /**
     * Estimates the charge error.
     *
     * @param superheat measured superheat
     * @param ratedSuperheatK superheat at the right charge under these conditions, K
     * @param subcooling measured subcooling
     * @param ratedSubcoolingK subcooling at the right charge, K
     * @param constants constants of the unit, or typical ones
     * @return the estimate
     */
    public static ChargeEstimate of(
            LineMargin superheat,
            double ratedSuperheatK,
            LineMargin subcooling,
            double ratedSubcoolingK,
            Constants constants) {
        Parts.required("superheat subcooling constants", superheat, subcooling, constants);
        double numerator = (subcooling.value().kelvins() - ratedSubcoolingK)
                - constants.ratio() * (superheat.value().kelvins() - ratedSuperheatK);
        double fraction = numerator / constants.kelvinsPerFraction();
        UncertaintyBudget readings = subcooling
                .budget()
                .minus(superheat.budget().scaled(constants.ratio()))
                .scaled(1 / constants.kelvinsPerFraction());
        double model = PUBLISHED_LIMIT / Math.sqrt(3);
        double constantPart = constants.fitted() ? 0 : CONSTANT_DOUBT * fraction;
        double u = Math.sqrt(readings.combined() * readings.combined() + model * model + constantPart * constantPart);
        Step step = new Step(
                "chargeError",
                "(m - m_rated)/m_rated = [(SC - SC_rated) - (k_sh/k_sc)(SH - SH_rated)] / k_ch",
                List.of(
                        Figure.of("SC", subcooling.value()),
                        Figure.of("SC_rated", TemperatureDifference.ofKelvins(ratedSubcoolingK)),
                        Figure.of("k_sh/k_sc", constants.ratio(), "1"),
                        Figure.of("SH", superheat.value()),
                        Figure.of("SH_rated", TemperatureDifference.ofKelvins(ratedSuperheatK)),
                        Figure.of("k_ch", constants.kelvinsPerFraction(), "K"),
                        Figure.of("u", u, "1")),
                Figure.of("chargeError", fraction, "1"),
                constants.fitted() ? SOURCE_FITTED : SOURCE_TYPICAL);
        return new ChargeEstimate(fraction, u, step);
    }
}
