package org.satline.step;

import java.util.Locale;
import org.satline.charge.belief.ChargeEstimate;
import org.satline.charge.margin.MeteringDevice;

/**
 * How far the judged quantity of a unit is expected to move with its charge, before any step has shown it. Immutable, thread-safe.
 *
 * @param kelvins response to the whole charge, K; above 0
 * @param relativeDoubt relative standard deviation of that response; in ]0, 1]
 * @param levelling share by which the response is larger well below the target and smaller well above it; in [0, 0.5]
 */
record ExpectedResponse(double kelvins, double relativeDoubt, double levelling) {
    /** {@inheritDoc} */
    public ExpectedResponse {
        if (!(kelvins > 0
                && kelvins < 1e4
                && relativeDoubt > 0
                && relativeDoubt <= 1
                && levelling >= 0
                && levelling <= 0.5)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "response %s K (allowed ]0, 10000[), relative doubt %s (allowed ]0, 1]) and levelling %s (allowed [0, 0.5]) are not usable",
                    kelvins,
                    relativeDoubt,
                    levelling));
        }
    }

    /**
     * Returns what is expected of a unit that nothing was fitted on: 33.5 K for the whole charge, doubt 0.33, for subcooling behind an
     * expansion valve, which levels off with charge by a tenth; 39 K, doubt 0.6, for superheat at a fixed orifice. Our choice, no source:
     * chosen so that both the simulated systems ({@code org.satline.simulation}: 35 to 50 K and 65 to 90 K at the target, whatever the
     * rated subcooling) and a second, unlike plant that answers half as steeply at a fixed orifice are brought to target in few steps. The
     * typical constants of {@link ChargeEstimate}, at a rated subcooling of 5.6 K, say 31 K for subcooling, and for superheat between 38 K,
     * where subcooling takes half the effect, and 77 K, where it takes none.
     *
     * @param metering metering device
     * @return the expected response
     */
    static ExpectedResponse typical(MeteringDevice metering) {
        return metering == MeteringDevice.EXPANSION_VALVE
                ? new ExpectedResponse(33.5, 0.33, 0.1)
                : new ExpectedResponse(39, 0.6, 0);
    }

    /**
     * Returns what constants fitted on the unit say, with a relative doubt of 0.15. With an expansion valve superheat stays and subcooling
     * takes the whole effect k_ch. With a fixed orifice superheat moves by k_ch / (2 k_sh/k_sc) where subcooling takes half the effect, and
     * by k_ch / (k_sh/k_sc) where it takes none; expected is the geometric mean of the two.
     *
     * @param metering metering device
     * @param constants constants of {@link ChargeEstimate}, fitted on this unit; their ratio above 0 for a fixed orifice
     * @return the expected response
     */
    static ExpectedResponse fitted(MeteringDevice metering, ChargeEstimate.Constants constants) {
        boolean valve = metering == MeteringDevice.EXPANSION_VALVE;
        if (!constants.fitted() || (!valve && constants.ratio() == 0)) {
            throw new IllegalArgumentException(
                    constants
                            + " are not usable here: give constants fitted on this unit, with a ratio above 0 for a fixed orifice, or take the typical response");
        }
        double share = valve ? 1 : Math.sqrt(2) * constants.ratio();
        return new ExpectedResponse(constants.kelvinsPerFraction() / share, 0.15, 0);
    }

    /** Response to the whole charge, K, at a deviation in tolerances, towards more charge positive; it changes evenly across the band. */
    double kelvins(double tolerances) {
        return kelvins * (1 - levelling * Math.max(-1, Math.min(1, tolerances)));
    }
}
