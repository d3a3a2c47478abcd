package org.satline.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;

/**
 * How the simulated unit is set. Immutable.
 *
 * @param designation its refrigerant
 * @param metering its metering device
 * @param knobs where each knob stands
 */
record UnitSetting(String designation, MeteringDevice metering, Map<Knob, Double> knobs) {
    /** Found in air conditioners; each has an equation and a table. */
    static final List<String> REFRIGERANTS = List.of("R-410A", "R-32", "R-454B", "R-407C", "R-22", "R-134a", "R-290");

    private static final List<Knob> FAULTS =
            List.of(Knob.AIRFLOW, Knob.CONDENSER, Knob.RESTRICTION, Knob.LEAKAGE, Knob.FOREIGN_GAS);

    UnitSetting {
        knobs = Map.copyOf(knobs);
    }

    /** Charged right, nothing wrong, at the rating point. */
    static UnitSetting usual(String designation, MeteringDevice metering) {
        Map<Knob, Double> knobs = new EnumMap<>(Knob.class);
        for (Knob knob : Knob.values()) {
            knobs.put(knob, (double) knob.usual);
        }
        return new UnitSetting(designation, metering, knobs);
    }

    double at(Knob knob) {
        return knobs.getOrDefault(knob, (double) knob.usual);
    }

    UnitSetting with(Knob knob, double value) {
        Map<Knob, Double> changed = new EnumMap<>(Knob.class);
        changed.putAll(knobs);
        changed.put(knob, value);
        return new UnitSetting(designation, metering, changed);
    }

    /** Same weather, charged right, nothing wrong. */
    UnitSetting sound() {
        return usual(designation, metering).with(Knob.OUTDOOR, at(Knob.OUTDOOR));
    }

    /** Return air as at the rating point. */
    AirConditions air() {
        AirConditions rated = AirConditions.rated();
        return new AirConditions(Temperature.ofCelsius(at(Knob.OUTDOOR)), rated.returnDryBulb(), rated.returnWetBulb());
    }

    ImposedFault fault() {
        return new ImposedFault(
                1 - at(Knob.CONDENSER) / 100,
                1 - at(Knob.AIRFLOW) / 100,
                PressureDifference.ofKilopascals(at(Knob.RESTRICTION)),
                at(Knob.LEAKAGE) / 100,
                Pressure.ofKilopascals(at(Knob.FOREIGN_GAS)));
    }

    /**
     * A unit with something to find: of a hundred, 45 with the charge off by 10 to 35 %, 40 with one fault, 15 with nothing wrong (our
     * choice). Same number and try, same unit.
     */
    UnitSetting drawn(int number, int attempt) {
        SplittableRandom random = new SplittableRandom(1000L * number + attempt);
        UnitSetting drawn = usual(designation, metering).with(Knob.OUTDOOR, random.nextInt(24, 43));
        int kind = random.nextInt(100);
        if (kind < 45) {
            int off = random.nextInt(10, 36);
            return drawn.with(Knob.CHARGE, random.nextInt(2) == 0 ? 100.0 - off : 100.0 + off);
        } else if (kind < 85) {
            Knob fault = FAULTS.get(random.nextInt(FAULTS.size()));
            int steps = (fault.most - fault.least) / fault.step;
            int moved = random.nextInt(steps / 3, steps + 1) * fault.step;
            return drawn.with(fault, fault.usual == fault.least ? fault.least + moved : fault.most - moved);
        }
        return drawn;
    }

    /** What is not as usual. */
    List<Knob> changed() {
        List<Knob> changed = new ArrayList<>();
        for (Knob knob : Knob.values()) {
            if (knob != Knob.OUTDOOR && at(knob) != knob.usual) {
                changed.add(knob);
            }
        }
        return changed;
    }
}
