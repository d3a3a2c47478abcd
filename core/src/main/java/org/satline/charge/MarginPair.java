package org.satline.charge;

import java.util.List;
import java.util.Optional;
import org.satline.charge.ChargeEstimate.Constants;
import org.satline.quantity.TemperatureDifference;

/**
 * Superheat and subcooling taken together. After Li and Braun (virtual refrigerant charge sensor, see {@link ChargeEstimate}) faults other
 * than the charge move both so that {@code SC - (k_sh/k_sc) SH} hardly moves, within the published 10 % of the charge; an error of the
 * charge moves it in proportion. The signs of Rossi and Braun (1997) for the fixed orifice say the same: alike for every other fault,
 * opposite for the charge. Foreign gas adds to subcooling as counted from the pressure and is left out.
 *
 * @param superheat residual of the superheat
 * @param subcooling residual of the subcooling
 */
record MarginPair(Residual superheat, Residual subcooling) {
    /** With the usual subcooling of 10 degF; common practice, no source. */
    private static final Constants TYPICAL =
            Constants.typical(TemperatureDifference.ofFahrenheitDegrees(10).kelvins());
    /** Charge error that counts as typical, a fraction of the charge; our choice. */
    private static final double TYPICAL_ERROR = 0.25;

    static Optional<MarginPair> of(List<Residual> residuals) {
        return find(residuals, Symptom.SUPERHEAT)
                .flatMap(superheat ->
                        find(residuals, Symptom.SUBCOOLING).map(subcooling -> new MarginPair(superheat, subcooling)));
    }

    private static Optional<Residual> find(List<Residual> residuals, Symptom symptom) {
        return residuals.stream().filter(r -> r.symptom() == symptom).findFirst();
    }

    static boolean covers(Fault fault) {
        return fault != Fault.NON_CONDENSABLE_GAS;
    }

    /** Likelihood of the subcooling given the superheat under a fault, 1/K. */
    double likelihood(Fault fault, String subcoolingSigns) {
        double shift = subcooling.kelvins() - TYPICAL.ratio() * superheat.kelvins();
        double reading =
                Math.hypot(subcooling.standardUncertaintyK(), TYPICAL.ratio() * superheat.standardUncertaintyK());
        double published = ChargeEstimate.PUBLISHED_LIMIT / Math.sqrt(3) * TYPICAL.kelvinsPerFraction();
        double ratioDoubt = ChargeEstimate.CONSTANT_DOUBT * TYPICAL.ratio() * superheat.kelvins();
        double u = Math.hypot(reading, Math.hypot(published, ratioDoubt));
        double density = fault.ofCharge()
                ? Residual.oneSided(
                        fault == Fault.OVERCHARGE ? shift : -shift, TYPICAL_ERROR * TYPICAL.kelvinsPerFraction(), u)
                : Residual.normal(shift, u);
        return density * subcooling.agreement(subcoolingSigns);
    }
}
