package org.satline.charge;

import org.satline.charge.margin.Criterion;

/**
 * The published limits that a screen needs, read once.
 *
 * @param superheatToleranceK half-width of the band of superheat, K
 * @param subcoolingToleranceK half-width of the band of subcooling, K
 * @param leastOutdoorF coldest outdoor air, degF
 * @param leastValveSuperheatK least superheat at which an expansion valve is held to control, K
 * @param mostValveSuperheatK most
 */
record ScreenLimits(
        double superheatToleranceK,
        double subcoolingToleranceK,
        double leastOutdoorF,
        double leastValveSuperheatK,
        double mostValveSuperheatK) {
    static ScreenLimits published() {
        return new ScreenLimits(
                PublishedLimits.tolerance(Criterion.SUPERHEAT).kelvins(),
                PublishedLimits.tolerance(Criterion.SUBCOOLING).kelvins(),
                PublishedLimits.low("outdoor air"),
                PublishedLimits.leastValveSuperheatK(),
                PublishedLimits.mostValveSuperheatK());
    }

    double toleranceK(Criterion criterion) {
        return criterion == Criterion.SUPERHEAT ? superheatToleranceK : subcoolingToleranceK;
    }
}
