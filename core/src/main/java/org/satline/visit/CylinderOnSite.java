package org.satline.visit;

import java.util.List;
import java.util.Optional;
import org.satline.cylinder.ClosedVessel;
import org.satline.cylinder.ContentsReading;
import org.satline.cylinder.CylinderStamps;
import org.satline.cylinder.Jurisdiction;
import org.satline.cylinder.Scale;
import org.satline.duty.Holder.Provenance;
import org.satline.equilibrium.FluidModel;
import org.satline.quantity.Density;
import org.satline.quantity.Mass;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.PointKind;

/**
 * The cylinder that is hooked up. Immutable, thread-safe.
 *
 * @param name in words
 * @param valve the valve to which the hose leads; it tells a recovery cylinder from a source cylinder
 * @param stamps its stamps
 * @param holding what it holds already; nothing where it is new or evacuated
 * @param temperature its temperature at rest
 * @param temperatureUncertainty expanded uncertainty of that temperature, k = 2
 * @param pressure its pressure where a gauge shows it; needed where it holds nothing
 * @param pressureUncertainty expanded uncertainty of that pressure, k = 2
 * @param scale how it is weighed, where it stands on a scale
 * @param hoseContents what the hoses hold that will end in the cylinder
 * @param jurisdiction the set of fill rules
 * @param warmest the warmest temperature that it may see
 * @param atRest whether pressure and temperature were read at rest, valves shut and of one temperature throughout
 * @param owner whose it is, where stated
 * @param provenance where its contents come from, where stated
 * @param hoses the hoses between it and the system, as they hang now
 */
public record CylinderOnSite(
        String name,
        PointKind valve,
        CylinderStamps stamps,
        Optional<Refrigerant> holding,
        Temperature temperature,
        TemperatureDifference temperatureUncertainty,
        Optional<Pressure> pressure,
        PressureDifference pressureUncertainty,
        Optional<Scale> scale,
        Mass hoseContents,
        Jurisdiction jurisdiction,
        Temperature warmest,
        boolean atRest,
        Optional<String> owner,
        Optional<Provenance> provenance,
        List<HoseOnSite> hoses) {
    /** {@inheritDoc} */
    public CylinderOnSite {
        Parts.required("name valve stamps holding temperature", name, valve, stamps, holding, temperature);
        Parts.required("temperatureUncertainty pressure", temperatureUncertainty, pressure);
        Parts.required("pressureUncertainty scale hoseContents", pressureUncertainty, scale, hoseContents);
        Parts.required("jurisdiction warmest owner provenance", jurisdiction, warmest, owner, provenance);
        hoses = List.copyOf(hoses);
        if (holding.isEmpty() && pressure.isEmpty()) {
            throw new IllegalArgumentException(
                    "the cylinder holds nothing, so its pressure does not follow from its temperature; state its pressure");
        }
        if (!isReceiver(valve) && !isSource(valve)) {
            throw new IllegalArgumentException("the " + valve + " is no valve of a cylinder; name one");
        }
    }

    /**
     * A cylinder read at rest, of which neither owner nor provenance nor hoses are stated.
     *
     * @param name in words
     * @param valve the valve to which the hose leads
     * @param stamps its stamps
     * @param holding what it holds already
     * @param temperature its temperature at rest
     * @param temperatureUncertainty expanded uncertainty of that temperature, k = 2
     * @param pressure its pressure where a gauge shows it
     * @param pressureUncertainty expanded uncertainty of that pressure, k = 2
     * @param scale how it is weighed, where it stands on a scale
     * @param hoseContents what the hoses hold that will end in the cylinder
     * @param jurisdiction the set of fill rules
     * @param warmest the warmest temperature that it may see
     */
    public CylinderOnSite(
            String name,
            PointKind valve,
            CylinderStamps stamps,
            Optional<Refrigerant> holding,
            Temperature temperature,
            TemperatureDifference temperatureUncertainty,
            Optional<Pressure> pressure,
            PressureDifference pressureUncertainty,
            Optional<Scale> scale,
            Mass hoseContents,
            Jurisdiction jurisdiction,
            Temperature warmest) {
        this(
                name,
                valve,
                stamps,
                holding,
                temperature,
                temperatureUncertainty,
                pressure,
                pressureUncertainty,
                scale,
                hoseContents,
                jurisdiction,
                warmest,
                /* atRest= */ true,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /**
     * Returns the mass inside by weighing: gross less tare. Hoses that hang on the cylinder are weighed with it.
     *
     * @return kg; nothing without a scale, or where the weight does not exceed the tare
     */
    Optional<Mass> weighedContents() {
        return insideKg().filter(inside -> inside > 0).map(Mass::ofKilograms);
    }

    /** Whether its temperature is on the saturation line of what it holds; above the line's warm end there is neither liquid nor vapour. */
    boolean isOn(SaturationCurve curve) {
        return temperature.kelvins() >= curve.minTemperatureK() && temperature.kelvins() <= curve.maxTemperatureK();
    }

    /** The pressure inside: by gauge, else by saturation, else that of the weighed contents in their volume; nothing where none of these tells it. */
    Optional<Pressure> pressureInside(SaturationCurve curve) {
        return pressure.or(() -> isOn(curve)
                ? Optional.of(curve.bubblePressure(temperature))
                : weighedContents().flatMap(mass -> pressureOf(curve.refrigerant(), mass)));
    }

    private Optional<Pressure> pressureOf(Refrigerant held, Mass contents) {
        try {
            return Optional.of(ClosedVessel.of(FluidModel.of(held), stamps.volume(), contents)
                    .at(temperature)
                    .pressure());
        } catch (OutOfValidityException e) {
            return Optional.empty(); // beyond the pressures of the equation, or beside the critical point
        }
    }

    /** What to hold the contents against: the pressure with the temperature, and the weight of what is inside now. */
    ContentsReading contentsReading(Pressure inside) {
        return new ContentsReading(
                inside,
                pressureUncertainty.abs(),
                temperature,
                temperatureUncertainty.abs(),
                atRest,
                weighedContents()
                        .map(mass -> Density.ofKilogramsPerCubicMetre(
                                mass.kilograms() / stamps.volume().cubicMetres())));
    }

    /** Gross less tare now, below zero where the weight is below the tare; nothing without a scale. */
    Optional<Double> insideKg() {
        return grossKg().map(gross -> gross - stamps.tare().kilograms());
    }

    /** Gross less tare before anything of this visit went in or out, as far as the scale tells; nothing without a scale. */
    Optional<Double> insideBeforeKg() {
        return scale.map(found -> found instanceof Scale.ZeroedAfterHookUp zeroed
                        ? zeroed.grossBefore().kilograms()
                        : grossNowKg(found))
                .map(gross -> gross - stamps.tare().kilograms());
    }

    /** The gross weight now; nothing without a scale. */
    Optional<Double> grossKg() {
        return scale.map(CylinderOnSite::grossNowKg);
    }

    /** Expanded uncertainty of the gross weight, k = 2: with a zeroed scale of two weighings, independent (JCGM 100, 5.1.2); 0 without a scale. */
    double weighingUncertaintyKg() {
        return scale.map(found -> found.expandedUncertainty().kilograms()
                        * (found instanceof Scale.ZeroedAfterHookUp ? Math.sqrt(2) : 1))
                .orElse(0.0);
    }

    private static double grossNowKg(Scale scale) {
        return scale instanceof Scale.ZeroedAfterHookUp zeroed
                ? zeroed.grossBefore().kilograms() + zeroed.transferred().kilograms()
                : ((Scale.RunningGross) scale).reading().kilograms();
    }

    /**
     * Tells whether refrigerant is to go into it.
     *
     * @return true for a recovery cylinder, false for a source cylinder
     */
    public boolean receives() {
        return isReceiver(valve);
    }

    private static boolean isReceiver(PointKind valve) {
        return valve == PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE || valve == PointKind.RECOVERY_CYLINDER_LIQUID_VALVE;
    }

    private static boolean isSource(PointKind valve) {
        return valve == PointKind.SOURCE_CYLINDER_VAPOUR_VALVE || valve == PointKind.SOURCE_CYLINDER_LIQUID_VALVE;
    }
}
