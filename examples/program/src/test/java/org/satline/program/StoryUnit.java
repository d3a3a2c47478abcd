package org.satline.program;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.SimulatedSystem;
import org.satline.simulation.SteadyState;
import org.satline.simulation.SystemDesign;
import org.satline.visit.file.FieldValue;

/** A simulated unit: what its gauges and clamps show answers to what is in it. Changes as refrigerant moves; for one thread. */
final class StoryUnit {
    private static final double TONS = 3;

    private final SimulatedSystem system;
    private final MeteringDevice metering;
    private final String refrigerant;
    private final AirConditions air;
    private double chargeKg;

    StoryUnit(String refrigerant, MeteringDevice metering, double share) {
        this.refrigerant = refrigerant;
        this.metering = metering;
        // mild and damp air leaves an orifice superheat to lose
        air = metering == MeteringDevice.EXPANSION_VALVE
                ? AirConditions.ofCelsius(32, 26, 18.5)
                : AirConditions.ofCelsius(25, 26, 20);
        system = SimulatedSystem.of(SystemDesign.typical(
                Catalogue.standard().find(refrigerant), metering, Power.ofTonsOfRefrigeration(TONS)));
        chargeKg = system.ratedCharge().kilograms() * share;
    }

    double ratedKg() {
        return system.ratedCharge().kilograms();
    }

    double chargeKg() {
        return chargeKg;
    }

    void takes(double kilograms) {
        chargeKg += kilograms;
    }

    private SteadyState at(double kilograms) {
        return system.steadyState(Mass.ofKilograms(kilograms), air, ImposedFault.none());
    }

    /** What stands on its plate. */
    FieldValue.Fields plate() {
        Map<String, FieldValue> plate = new LinkedHashMap<>();
        SteadyState right = at(ratedKg());
        plate.put("name", text("unit on the roof"));
        plate.put("refrigerant", text(refrigerant));
        plate.put("metering", text(metering == MeteringDevice.EXPANSION_VALVE ? "expansion-valve" : "fixed-orifice"));
        plate.put("fullCharge", text(shown("%.3f kg", ratedKg())));
        plate.put("owner", text("the bakery"));
        plate.put("mode", text("cooling"));
        boolean valve = metering == MeteringDevice.EXPANSION_VALVE;
        plate.put(
                valve ? "targetSubcooling" : "targetSuperheat",
                text(shown("%.1f degF", (valve ? right.subcooling() : right.superheat()).kelvins() * 1.8)));
        return new FieldValue.Fields(plate);
    }

    /** What is read on it now. */
    FieldValue.Fields readings() {
        SteadyState now = at(chargeKg);
        Map<String, FieldValue> readings = new LinkedHashMap<>();
        readings.put("suctionPressure", gauge(now.suctionPressure()));
        readings.put("suctionLine", degrees(now.suctionLine()));
        readings.put("liquidPressure", gauge(now.liquidPressure()));
        readings.put("liquidLine", degrees(now.liquidLine()));
        readings.put("supplyDryBulb", degrees(now.supplyDryBulb()));
        readings.put("returnDryBulb", degrees(air.returnDryBulb()));
        readings.put("returnWetBulb", degrees(air.returnWetBulb()));
        readings.put("outdoorAir", degrees(air.outdoor()));
        return new FieldValue.Fields(readings);
    }

    /** Saturation at rest, as the gauge of a cylinder with liquid shows it. */
    FieldValue saturation(double celsius) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find(refrigerant));
        return gauge(curve.bubblePressure(Temperature.ofCelsius(celsius)));
    }

    static FieldValue gauge(Pressure pressure) {
        return text(shown("%.1f psig", pressure.gauge(Atmosphere.standard()).psig()));
    }

    static FieldValue degrees(Temperature temperature) {
        return text(shown("%.1f degF", temperature.fahrenheit()));
    }

    static FieldValue text(String text) {
        return new FieldValue.Text(text);
    }

    static String shown(String form, double value) {
        return String.format(Locale.ROOT, form, value);
    }
}
