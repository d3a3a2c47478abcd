package org.satline.charge.belief;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.margin.ChargeLevel;
import org.satline.quantity.Parts;

/**
 * What is believed of the charge itself, all other faults thought mended, and of each fault, from all readings
 * together. Immutable, thread-safe.
 *
 * @param low probability that the charge is too low, in [0, 1]
 * @param onTarget probability that it is within the tolerance; the three miss 1 by the probability of another
 *     refrigerant
 * @param high probability that it is too high
 * @param chargeError expected charge error as a share of the right charge, negative for too little
 * @param chargeErrorUncertainty its standard uncertainty
 * @param faults probability of each fault, whatever else is wrong too
 */
public record ChargeBelief(
        double low,
        double onTarget,
        double high,
        double chargeError,
        double chargeErrorUncertainty,
        Map<Fault, Double> faults) {
    /** {@inheritDoc} */
    public ChargeBelief {
        Parts.required("faults", faults);
        Parts.numbers("chargeError chargeErrorUncertainty", chargeError, chargeErrorUncertainty);
        Map<Fault, Double> all = new EnumMap<>(Fault.class);
        for (Fault fault : Fault.values()) {
            all.put(fault, Math.min(1, Math.max(0, faults.getOrDefault(fault, 0.0))));
        }
        faults = Collections.unmodifiableMap(all);
        if (!(low >= 0 && onTarget >= 0 && high >= 0 && low + onTarget + high <= 1 + 1e-6)) {
            throw new IllegalArgumentException("probabilities " + low + ", " + onTarget + " and " + high
                    + " of a charge are not usable; each must lie in [0, 1] and their sum too");
        }
    }

    /**
     * Probability of a level of the charge itself.
     *
     * @param level the level
     * @return in [0, 1]
     */
    public double probability(ChargeLevel level) {
        return switch (level) {
            case LOW -> low;
            case ON_TARGET -> onTarget;
            case HIGH -> high;
        };
    }

    /**
     * Probability of a fault.
     *
     * @param fault the fault
     * @return in [0, 1]
     */
    public double probability(Fault fault) {
        return faults.getOrDefault(fault, 0.0);
    }

    /**
     * Returns every fault.
     *
     * @return the likeliest first
     */
    public List<FaultLikelihood> ranked() {
        return faults.entrySet().stream()
                .map(each -> new FaultLikelihood(each.getKey(), each.getValue()))
                .sorted(Comparator.comparingDouble(FaultLikelihood::probability).reversed())
                .toList();
    }

    /**
     * Returns the likeliest of the three levels.
     *
     * @return the level
     */
    public ChargeLevel likeliest() {
        return low > onTarget && low >= high
                ? ChargeLevel.LOW
                : high > onTarget ? ChargeLevel.HIGH : ChargeLevel.ON_TARGET;
    }

    /**
     * Returns the likeliest fault that is no error of the charge.
     *
     * @return the fault
     */
    public Optional<Fault> likeliestOther() {
        return List.of(Fault.values()).stream()
                .filter(fault -> !fault.ofCharge())
                .max(Comparator.comparingDouble(this::probability));
    }
}
