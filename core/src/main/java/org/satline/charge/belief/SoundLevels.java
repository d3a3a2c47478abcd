package org.satline.charge.belief;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.MeteringDevice;

/**
 * Levels of a charge while nothing else is wrong: the deviation with its uncertainty against what the field knows
 * beforehand, many systems right within a little and
 * the others off by anything up to the farthest. Normal times normal, and normal times even (JCGM 106:2012, 6.3).
 *
 * @param low probability of too little
 * @param high probability of too much
 */
record SoundLevels(double low, double high) {
    private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);
    /** Stands in for exact instruments, K. */
    private static final double LEAST_K = 1e-3;

    static SoundLevels of(MeteringDevice metering, Deviation deviation) {
        double towards = deviation.value().kelvins() * deviation.criterion().directionWithCharge();
        // a reading printed on the edge of the band is inside it, whatever the last digit of a unit conversion does
        double band = deviation.tolerance().kelvins() + 1e-9;
        double u = Math.max(LEAST_K, deviation.standardUncertaintyK());
        double response = Priors.responseK(metering);
        double spread = Priors.value("spread of right") * response;
        double whole = Math.hypot(spread, u);
        double right = Priors.value("right") * STANDARD.density(towards / whole) / whole;
        double centre = towards * spread * spread / (whole * whole);
        double width = spread * u / whole;
        double perKelvin = 1 / (Priors.value("farthest charge error") * response);
        double over = Priors.value("over") * perKelvin;
        double under = Priors.value("under") * perKelvin;
        double low = right * below((-band - centre) / width) + under * below((-band - towards) / u);
        double high = right * below((centre - band) / width) + over * below((towards - band) / u);
        double on = right * (1 - below((-band - centre) / width) - below((centre - band) / width))
                + over * (below((band - towards) / u) - below(-towards / u))
                + under * (below(-towards / u) - below((-band - towards) / u));
        double sum = low + high + Math.max(0, on);
        return new SoundLevels(low / sum, high / sum);
    }

    private static double below(double x) {
        return STANDARD.cumulativeProbability(x);
    }
}
