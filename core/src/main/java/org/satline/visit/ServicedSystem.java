package org.satline.visit;

import java.util.Objects;
import java.util.Optional;
import org.satline.charge.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Refrigerant;

/**
 * The system that is looked after. Immutable, thread-safe.
 *
 * @param name in words
 * @param refrigerant what the nameplate says is in it
 * @param metering what meters the refrigerant
 * @param targetSuperheat the maker's target, where there is one
 * @param targetSubcooling the maker's target, where there is one
 * @param fullCharge the charge by the nameplate, where it is known
 */
public record ServicedSystem(
        String name,
        Refrigerant refrigerant,
        MeteringDevice metering,
        Optional<TemperatureDifference> targetSuperheat,
        Optional<TemperatureDifference> targetSubcooling,
        Optional<Mass> fullCharge) {
    /**
     * Checks that no part is missing.
     *
     * @param name in words
     * @param refrigerant what the nameplate says is in it
     * @param metering what meters the refrigerant
     * @param targetSuperheat the maker's target, where there is one
     * @param targetSubcooling the maker's target, where there is one
     * @param fullCharge the charge by the nameplate, where it is known
     */
    public ServicedSystem {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(refrigerant, "refrigerant");
        Objects.requireNonNull(metering, "metering");
        Objects.requireNonNull(targetSuperheat, "targetSuperheat");
        Objects.requireNonNull(targetSubcooling, "targetSubcooling");
        Objects.requireNonNull(fullCharge, "fullCharge");
    }
}
