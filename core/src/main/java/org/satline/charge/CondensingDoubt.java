package org.satline.charge;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.satline.quantity.TemperatureDifference;

/**
 * Too much refrigerant raises the condensing temperature a little. Far above what too much refrigerant does, air in the system or a fouled condenser is the
 * first suspect, and both show as subcooling too: subcooling is counted from the pressure, which air raises.
 */
final class CondensingDoubt {
    static final String ADVICE =
            "take nothing out yet: clean the condenser and see that its fan runs, then, with the compressor off and all at one temperature, compare the "
                    + "pressure with saturation; a pressure above it means air or another gas, and the refrigerant has to be recovered and replaced";
    /** Standard uncertainties of the expected value beyond which it is no longer the charge: from some 22 K over the air on; common practice, no source. */
    private static final double BEYOND = 4;

    private CondensingDoubt() {}

    /** The doubt in words, where the level is high, condensing is far too hot, and the standing pressure has not cleared the refrigerant. */
    static Optional<String> of(ChargeLevel level, List<Gate> gates, List<Residual> residuals) {
        boolean high = level == ChargeLevel.HIGH;
        boolean cleared =
                gates.stream().anyMatch(gate -> gate.kind() == Gate.Kind.NAMEPLATE && gate.state() == Gate.State.OPEN);
        if (!high || cleared) {
            return Optional.empty();
        }
        return residuals.stream()
                .filter(residual -> residual.symptom() == Symptom.CONDENSING)
                .filter(residual -> residual.kelvins() > BEYOND * residual.standardUncertaintyK())
                .findFirst()
                .map(residual -> String.format(
                        Locale.ROOT,
                        "condensing is %.0f K (%.0f degF) hotter over the outdoor air than expected: non-condensable gas or a fouled condenser "
                                + "is the first suspect, and either makes subcooling look high",
                        residual.kelvins(),
                        TemperatureDifference.ofKelvins(residual.kelvins()).fahrenheitDegrees()));
    }
}
