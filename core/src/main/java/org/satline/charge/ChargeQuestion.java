package org.satline.charge;

import java.util.Optional;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;

/**
 * What a charge check needs to know beside the readings. Immutable, thread-safe.
 *
 * @param metering what meters the refrigerant
 * @param makersTarget the maker's target of the quantity that the metering device is judged by, where there is one
 * @param tolerance half-width of the band around the target; empty for the published one
 */
public record ChargeQuestion(
        MeteringDevice metering,
        Optional<TemperatureDifference> makersTarget,
        Optional<TemperatureDifference> tolerance) {
    /** {@inheritDoc} */
    public ChargeQuestion {
        Parts.required("metering makersTarget tolerance", metering, makersTarget, tolerance);
        makersTarget.ifPresent(target -> {
            if (!(target.kelvins() >= 0 && target.kelvins() <= 50)) {
                throw new IllegalArgumentException(
                        "target " + metering.judgedBy().label() + " " + target
                                + " is outside [0, 50] K; give the maker's figure");
            }
        });
    }

    /**
     * A question with published tolerance.
     *
     * @param metering what meters the refrigerant
     * @param makersTarget the maker's target, where there is one
     * @return the question
     */
    public static ChargeQuestion of(MeteringDevice metering, Optional<TemperatureDifference> makersTarget) {
        return new ChargeQuestion(metering, makersTarget, Optional.empty());
    }

    /** Half-width of the band around the target: the caller's own, else the published one. */
    TemperatureDifference band() {
        return tolerance.orElseGet(() -> PublishedLimits.tolerance(metering.judgedBy()));
    }

    /**
     * Returns the published half-width of the band around the target for the installer: 5 degF of superheat, 3 degF of subcooling
     * (California Energy Code, RA3.2, 2008).
     *
     * @param criterion superheat or subcooling
     * @return the tolerance
     */
    public static TemperatureDifference publishedTolerance(Criterion criterion) {
        return PublishedLimits.tolerance(criterion);
    }
}
