package org.satline.visit;

import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
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
 * @param fullCharge the charge by the nameplate, where it is known; above 0 and at most 5000 kg
 * @param owner the owner, where stated
 * @param lineSet its line set where that is longer than the charge on the plate covers
 * @param mode how it ran
 * @param build how it is built and held
 */
public record ServicedSystem(
        String name,
        Refrigerant refrigerant,
        MeteringDevice metering,
        Optional<TemperatureDifference> targetSuperheat,
        Optional<TemperatureDifference> targetSubcooling,
        Optional<Mass> fullCharge,
        Optional<String> owner,
        Optional<LineSet> lineSet,
        SystemMode mode,
        SystemBuild build) {
    private static final double LARGEST_CHARGE_KG = 5000;

    /** {@inheritDoc} */
    public ServicedSystem {
        Parts.required("name refrigerant metering targetSuperheat", name, refrigerant, metering, targetSuperheat);
        Parts.required("targetSubcooling fullCharge", targetSubcooling, fullCharge);
        Parts.required("owner lineSet mode build", owner, lineSet, mode, build);
        fullCharge.ifPresent(mass -> {
            if (!(mass.kilograms() > 0 && mass.kilograms() <= LARGEST_CHARGE_KG)) {
                throw new IllegalArgumentException(
                        "full charge " + mass + " is outside (0, 5000] kg; take it from the nameplate");
            }
        });
    }

    /**
     * A system whose owner and line set do not matter.
     *
     * @param name in words
     * @param refrigerant what the nameplate says is in it
     * @param metering what meters the refrigerant
     * @param targetSuperheat the maker's target, where there is one
     * @param targetSubcooling the maker's target, where there is one
     * @param fullCharge the charge by the nameplate, where it is known
     */
    public ServicedSystem(
            String name,
            Refrigerant refrigerant,
            MeteringDevice metering,
            Optional<TemperatureDifference> targetSuperheat,
            Optional<TemperatureDifference> targetSubcooling,
            Optional<Mass> fullCharge) {
        this(
                name,
                refrigerant,
                metering,
                targetSuperheat,
                targetSubcooling,
                fullCharge,
                Optional.empty(),
                Optional.empty(),
                SystemMode.COOLING,
                SystemBuild.plain());
    }
}
