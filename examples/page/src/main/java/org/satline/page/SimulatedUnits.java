package org.satline.page;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;
import org.satline.program.ask.FieldTree;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.simulation.NoSteadyStateException;
import org.satline.simulation.SimulatedSystem;
import org.satline.simulation.SteadyState;
import org.satline.simulation.SystemDesign;
import org.satline.simulation.WorkingFluid;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.VisitFile;

/**
 * Simulated units as they are set, and what the library says of their readings. Keeps what is costly to make; for the one thread of a
 * page.
 */
final class SimulatedUnits {
    private static final Power CAPACITY = Power.ofTonsOfRefrigeration(2);
    /** A plate prints a target within these; outside them the target is left to the chart of the library. */
    private static final double LEAST_TARGET_K = 2;

    private static final double LARGEST_TARGET_K = 20;

    private static final Map<Place, String> FIELDS = Map.of(
            Place.SUCTION_LINE, "suctionLine",
            Place.LIQUID_LINE, "liquidLine",
            Place.RETURN_DRY_BULB, "returnDryBulb",
            Place.RETURN_WET_BULB, "returnWetBulb",
            Place.SUPPLY_DRY_BULB, "supplyDryBulb",
            Place.OUTDOOR_AIR, "outdoorAir");

    private final FieldValue.Fields kit;
    private final Map<String, WorkingFluid> fluids = new HashMap<>();
    private final Map<String, SimulatedSystem> systems = new HashMap<>();

    SimulatedUnits(FieldValue.Fields kit) {
        this.kit = kit;
    }

    /** The unit: made once for each refrigerant and metering device, which takes a moment. */
    SimulatedSystem system(UnitSetting setting) {
        return systems.computeIfAbsent(
                setting.designation() + " " + setting.metering().label(), key -> built(setting));
    }

    private SimulatedSystem built(UnitSetting setting) {
        WorkingFluid fluid = fluids.computeIfAbsent(
                setting.designation(),
                name -> WorkingFluid.of(Catalogue.standard().find(name)));
        return SimulatedSystem.of(SystemDesign.typical(fluid.refrigerant(), setting.metering(), CAPACITY), fluid);
    }

    /** What it settles to; nothing where no such unit would run. */
    Optional<SteadyState> state(UnitSetting setting) {
        SimulatedSystem system = system(setting);
        try {
            Mass charge = Mass.ofKilograms(system.ratedCharge().kilograms() * setting.at(Knob.CHARGE) / 100);
            return Optional.of(system.steadyState(charge, setting.air(), setting.fault()));
        } catch (NoSteadyStateException none) {
            return Optional.empty();
        }
    }

    /** What the library says of the readings, as instruments show them: whole kilopascals, tenths of a degree. */
    VisitReport report(UnitSetting setting, SteadyState state) {
        return VisitReporter.report(VisitFile.read(visit(setting, state)));
    }

    /** The readings as a visit at sea level, half an hour after the start, with the usual kit. */
    FieldValue.Fields visit(UnitSetting setting, SteadyState state) {
        SimulatedSystem system = system(setting);
        FieldValue.Fields fields = kit;
        fields = FieldTree.put(fields, "site.altitude", "0 m");
        fields = FieldTree.put(fields, "system.refrigerant", setting.designation());
        fields = FieldTree.put(fields, "system.metering", setting.metering().label());
        fields = FieldTree.put(
                fields,
                "system.fullCharge",
                format("%.2f kg", system.ratedCharge().kilograms()));
        Optional<TemperatureDifference> target = target(setting);
        if (target.isPresent()) {
            fields = FieldTree.put(
                    fields,
                    targetField(setting.metering()),
                    format("%.1f K", target.get().kelvins()));
        }
        SystemReadings exact = state.exactReadings(setting.air());
        fields = FieldTree.put(fields, "readings.suctionPressure", gauge(state.suctionPressure()));
        fields = FieldTree.put(fields, "readings.liquidPressure", gauge(state.liquidPressure()));
        for (Map.Entry<Place, String> each : FIELDS.entrySet()) {
            Temperature read = exact.temperature(each.getKey()).orElseThrow().value();
            fields = FieldTree.put(fields, "readings." + each.getValue(), format("%.1f degC", read.celsius()));
        }
        fields = FieldTree.put(fields, "conditions.running", "30 min");
        return FieldTree.put(fields, "conditions.settled", new FieldValue.Flag(true));
    }

    /** What the same unit shows in this weather while it is charged right and nothing is wrong, as its maker would print it. */
    Optional<TemperatureDifference> target(UnitSetting setting) {
        return state(setting.sound())
                .map(sound ->
                        setting.metering() == MeteringDevice.EXPANSION_VALVE ? sound.subcooling() : sound.superheat())
                .filter(target -> target.kelvins() >= LEAST_TARGET_K && target.kelvins() <= LARGEST_TARGET_K);
    }

    static String targetField(MeteringDevice metering) {
        return metering == MeteringDevice.EXPANSION_VALVE ? "system.targetSubcooling" : "system.targetSuperheat";
    }

    private static String gauge(Pressure pressure) {
        double shown = pressure.pascals() - Atmosphere.standard().pressure().pascals();
        return format("%.0f kPa gauge", shown / 1000);
    }

    private static String format(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }
}
